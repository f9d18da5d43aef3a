import { wrap180 } from '../units/angle';
import { namedIn, refused, type Judged } from './judgement';
import type { NumericItem } from './item';
import { readNumber } from './read-number';

/**
 * However near to the key a named slip happens to lead: it shows an idea that has not been understood,
 * and may not pass for mastery.
 */
const mostForASlip = 0.5;

const awayFrom = (item: NumericItem, a: number, b: number): number =>
  Math.abs(item.wrapsAt360 === true ? wrap180(a - b) : a - b);

/** Full and zero of the band in the answer's own unit. */
export function bandOf({ key, tolerance }: Pick<NumericItem, 'key' | 'tolerance'>) {
  const scale = tolerance.mode === 'relative' ? Math.abs(key) : 1;
  return { full: tolerance.full * scale, zero: tolerance.zero * scale };
}

/** A number within its band; a known slip is named. */
export function judgeNumeric(item: NumericItem, text: string): Judged {
  if (text.trim() === '') return refused('no-answer');
  const given = readNumber(text, item.unit);
  if (given === null) return refused('not-a-number');
  const { full, zero } = bandOf(item);
  const off = awayFrom(item, given, item.key);
  // A bound that cannot be written exactly in binary must not cost the mark.
  const slack = 1e-9 * Math.max(1, Math.abs(item.key));
  const byDistance = off <= full + slack ? 1 : Math.max(0, (zero - off) / (zero - full));
  const slip = byDistance === 1 ? undefined : nearestSlip(item, given, full + slack);
  const mark = slip === undefined ? byDistance : Math.min(byDistance, mostForASlip);
  return {
    ok: true,
    judgement: {
      mark,
      said: [slip?.reason ?? howFar(item, mark, given - item.key, off)],
      misconceptions: slip === undefined ? [] : namedIn([slip]),
      right: `${inFigures(item.key, full)} ${item.unit}.`,
    },
  };
}

/** The known slip that leads to an answer: of several so close together, the one that is closest. */
function nearestSlip(item: NumericItem, given: number, withinUnits: number) {
  const [nearest] = item.slips
    .map((slip) => ({ slip, off: awayFrom(item, given, slip.gives) }))
    .filter(({ off }) => off <= withinUnits)
    .sort((a, b) => a.off - b.off);
  return nearest?.slip;
}

/** As many decimals as the band makes sense of. */
export function inFigures(value: number, full: number): string {
  const decimals = full >= 0.5 ? 0 : Math.min(4, Math.ceil(-Math.log10(full === 0 ? 1 : full)));
  // A whole key of a narrow band needs no zeros behind it.
  return String(Number(value.toFixed(Math.max(decimals, 0)))).replace('-', '−');
}

function howFar(item: NumericItem, mark: number, difference: number, off: number): string {
  if (mark === 1) return 'That is near enough.';
  const { full } = bandOf(item);
  const way = item.wrapsAt360 === true ? 'away' : difference > 0 ? 'too much' : 'too little';
  return `${mark > 0 ? 'Close' : 'Not yet'}: ${inFigures(off, full)} ${item.unit} ${way}.`;
}
