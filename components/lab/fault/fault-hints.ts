import type { Evidence, Landing } from '@/lib/faults/evidence';
import type { AlignmentOutcome } from '@/lib/pointing/pointing-model';
import type { Look } from '@/lib/variants/fault-variant';
import { missDeg } from './evidence/landing-words';
import { lookWords } from './evidence/look-words';
import type { FaultView } from './fault-view';

/**
 * Three hints, each telling more than the one before. They come from what has been seen so far, so
 * that none tells what a look would have cost, and they speak of kinds of trouble, never of the answer.
 */
export function faultHints(
  view: Pick<FaultView, 'evidence'>,
  seen: readonly Look[],
): readonly string[] {
  const { evidence } = view;
  const seenOnly = <L extends Look>(look: L): Partial<Evidence>[L] =>
    seen.includes(look) ? evidence[look] : undefined;
  const slews = [seenOnly('first'), seenOnly('second')].filter((landing) => landing !== undefined);
  const outcome = seenOnly('outcome');
  const later = seenOnly('later') ?? [];
  return [
    whereToLook(seen),
    outcome === undefined ? patternHint(slews) : outcomeHint(outcome),
    sizeHint([...slews, ...later]),
  ];
}

function whereToLook(seen: readonly Look[]): string {
  if (seen.includes('first') && seen.includes('second'))
    return 'Compare the two slews: the same side, the same height? A turn about the upright axis, a lean, and a turn of the whole sky about its pole each leave a pattern of their own.';
  if (seen.includes('card'))
    return 'Hold the settings card against what is certain of the evening, line by line. If every line is right, the trouble lies at the telescope.';
  return `Sort first, search afterwards: was it off before the alignment, or only after it? “${lookWords.first.title}” and “${lookWords.outcome.title}” tell.`;
}

function outcomeHint(outcome: AlignmentOutcome): string {
  switch (outcome.kind) {
    case 'agree':
      return 'The two stars agree. Whatever only turned or tipped the whole sky is absorbed by that. If go-tos still miss, something came after it or between the stars, or a small error went into both.';
    case 'disagree':
    case 'absurd-zero':
      return 'The angle that the tube swung through does not fit the angle between the two stars. So one of the two was not what it was called, or something gave way in between.';
    case 'base-on-its-side':
      return 'The angle fits, but not the way the base would stand. Look at how far it would lean: a little, a lot, or right over?';
    case 'undetermined':
      return 'Two stars leave something open when they are one and the same, stand right opposite, or have the same azimuth.';
  }
}

function patternHint(slews: readonly Landing[]): string {
  const [first, second] = slews;
  if (first === undefined || second === undefined)
    return 'One slew alone cannot tell a turn from a lean. A second one in quite another direction can.';
  const alike =
    Math.sign(first.rightDeg) === Math.sign(second.rightDeg) &&
    Math.sign(first.upDeg) === Math.sign(second.upDeg);
  return alike
    ? 'Both slews went to the same side and the same way in height. What does the same everywhere? And what should differ between two parts of the sky?'
    : 'The two slews went different ways. A lean and a turn about the pole do that; a wrong zero of height does not.';
}

/** An hour of turning is 15.04°, a day's change 0.99°: see the design, clock and place. */
function sizeHint(landings: readonly Landing[]): string {
  const most = Math.max(0, ...landings.map(missDeg));
  if (landings.length === 0)
    return 'Mind the size of things: an hour of the clock turns the sky 15°, a day of the calendar 1°, play in gears is arcminutes. Ask for one slew to have a size at all.';
  if (most > 20)
    return 'Misses of more than 20° are too large for a lean or a needle. Think of what can turn the sky by hours, or of what was called by another name.';
  if (most > 4)
    return 'Several degrees: an hour of the clock turns the sky 15° where the sky turns fastest, a day of the calendar only 1°, and a needle can point many degrees beside north.';
  if (most > 0.6)
    return 'A degree or so: a day of the calendar turns the sky 1°; a tripod, a tube or a finder can easily be off by as much.';
  return 'Arcminutes only. The clock and the place would show far more. Think of gears, of the finder, and of how stars were brought to the middle.';
}
