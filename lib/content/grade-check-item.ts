import { readNumber } from '../items/read-number';
import { wrap180 } from '../units/angle';
import type { CheckItem, CheckItemFace, ChoiceItem, NumericItem } from './check-item';
import type { Reckoning } from './reckoning';

/** What a learner is told at once: never only right or wrong. */
export type CheckFeedback = {
  verdict: 'right' | 'near' | 'wrong';
  /** 0–1; shown to nobody, since nothing in a lesson counts. */
  mark: number;
  /** About the learner's own answer. */
  said: string;
  /** The right answer and how one gets there; withheld until it is right or asked for. */
  answer: string | null;
};

export type CheckRefusal = { code: 'no-answer' | 'not-a-number' | 'unknown-option' };

export type CheckOutcome =
  { ok: true; feedback: CheckFeedback } | { ok: false; refusal: CheckRefusal };

/** What of an item goes to the page, its numbers filled in. */
export function faceOf(item: CheckItem, reckoning: Reckoning): CheckItemFace {
  const { id, kind } = item;
  const prompt = reckoning.fill(item.prompt);
  return kind === 'numeric'
    ? { id, kind, prompt, unit: item.unit }
    : {
        id,
        kind,
        prompt,
        options: item.options.map((option) => ({
          id: option.id,
          text: reckoning.fill(option.text),
        })),
      };
}

/**
 * Marks one answer as it came from the form. `reveal` asks for the solution as well.
 * A numeric answer may carry a decimal comma, a typed minus, and the unit asked for, but no other unit.
 */
export function gradeCheckItem(
  item: CheckItem,
  answer: string,
  reckoning: Reckoning,
  reveal = false,
): CheckOutcome {
  if (answer.trim() === '') return { ok: false, refusal: { code: 'no-answer' } };
  return item.kind === 'choice'
    ? gradeChoice(item, answer, reckoning, reveal)
    : gradeNumeric(item, answer, reckoning, reveal);
}

function gradeChoice(
  item: ChoiceItem,
  answer: string,
  reckoning: Reckoning,
  reveal: boolean,
): CheckOutcome {
  const chosen = item.options.find((option) => option.id === answer);
  const key = item.options.find((option) => option.id === item.key);
  if (chosen === undefined || key === undefined) {
    return { ok: false, refusal: { code: 'unknown-option' } };
  }
  const right = chosen === key;
  return {
    ok: true,
    feedback: {
      verdict: right ? 'right' : 'wrong',
      mark: right ? 1 : 0,
      said: reckoning.fill(chosen.reason),
      answer:
        reveal && !right ? reckoning.fill(`${key.text.replace(/\.$/, '')}. ${key.reason}`) : null,
    },
  };
}

const valueOf = (value: number | string, reckoning: Reckoning) =>
  typeof value === 'number' ? value : reckoning.number(value);

/** How far apart two answers to an item are. */
function distance(item: NumericItem, a: number, b: number): number {
  return Math.abs(item.wrapsAt360 ? wrap180(a - b) : a - b);
}

function gradeNumeric(
  item: NumericItem,
  answer: string,
  reckoning: Reckoning,
  reveal: boolean,
): CheckOutcome {
  const given = readNumber(answer, item.unit);
  if (given === null) return { ok: false, refusal: { code: 'not-a-number' } };
  const key = valueOf(item.key, reckoning);
  const off = distance(item, given, key);
  const mark = Math.min(
    1,
    Math.max(0, (item.zeroBeyond - off) / (item.zeroBeyond - item.fullWithin)),
  );
  const verdict = mark === 1 ? 'right' : mark > 0 ? 'near' : 'wrong';
  const slip = verdict === 'right' ? undefined : nearestSlip(item, given, reckoning);
  const solution = `${shown(key)} ${item.unit}. ${item.reason}`;
  return {
    ok: true,
    feedback: {
      verdict,
      mark,
      said: reckoning.fill(slip?.reason ?? howFar(verdict, given - key, off, item)),
      answer: verdict === 'right' || reveal ? reckoning.fill(solution) : null,
    },
  };
}

/** The known slip that leads to an answer: of several so close together, the one that is closest. */
function nearestSlip(item: NumericItem, given: number, reckoning: Reckoning) {
  const [nearest] = item.slips
    .map((slip) => ({ slip, off: distance(item, given, valueOf(slip.gives, reckoning)) }))
    .filter(({ off }) => off <= item.fullWithin)
    .sort((a, b) => a.off - b.off);
  return nearest?.slip;
}

/** At most one decimal, and no ".0". */
const shown = (value: number) => String(Math.round(value * 10) / 10);

function howFar(
  verdict: CheckFeedback['verdict'],
  difference: number,
  off: number,
  item: NumericItem,
): string {
  if (verdict === 'right') return 'That is near enough.';
  const way = item.wrapsAt360 ? '' : difference > 0 ? ' too much' : ' too little';
  const amount = `${shown(off)} ${item.unit}`;
  return verdict === 'near'
    ? `Close: ${amount}${way === '' ? ' away' : way}.`
    : `Not yet: ${amount}${way === '' ? ' away' : way}.`;
}
