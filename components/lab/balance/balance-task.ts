import type { Moves } from '@/lib/balance/tube-bench';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { degText, mmText, torqueText } from './balance-words';

/** What is to be done, in a few sentences. */
export function taskInWords(variant: BalanceVariant): string {
  const { template, range, holdingTorqueNm, bar } = variant;
  const clutch = `The altitude clutch, set as it should be, holds ${torqueText(holdingTorqueNm)}.`;
  const bound = `The bar lets the clamp grip from ${mmText(bar.leastMm)} to ${mmText(bar.mostMm)}.`;
  switch (template) {
    case 'first-balance':
      return `Slide the tube so that it stays where it is put, from level to straight up. Leave some to spare: a nudge must not start it. ${clutch} ${bound}`;
    case 'phone-joins':
      return `The tube is balanced. Tonight a phone goes on the eyepiece. Put it on, and balance the tube anew from level to straight up. ${clutch} ${bound}`;
    case 'short-bar':
      return `Everything used tonight is on, and the bar is too short to balance it by sliding alone. Find what helps, and make the tube hold from level to straight up. ${clutch} ${bound}`;
    case 'raised':
      return `The tube was balanced level. Tonight’s targets stand between ${degText(range.lowDeg)} and ${degText(range.highDeg)}: find the place where it holds over all of that, with something to spare. ${clutch} ${bound}`;
    case 'two-edges':
      return `Nobody knows what this tube weighs. With the tube level, find the two places where one end or the other just begins to sink. Tell the balance point, and leave the tube so that it holds from level to straight up. ${bound}`;
  }
}

/** What is asked before anything is touched. */
export function foresightQuestion(variant: BalanceVariant): string {
  switch (variant.template) {
    case 'phone-joins':
      return 'The phone is on, the tube level, nothing else changed. You let go. What happens?';
    case 'short-bar':
      return 'The tube is slid as far as helps, and level. You let go. What happens?';
    case 'raised':
      return `You raise the tube to ${degText(variant.range.highDeg)} as it is now, and let go. What happens?`;
    case 'first-balance':
    case 'two-edges':
      return 'The tube is level, as it is now. You let go. What happens?';
  }
}

export const readingQuestion = ({ template }: BalanceVariant): string =>
  template === 'phone-joins'
    ? 'With the phone on, the balance point is at … mm of the tape'
    : 'The balance point is at … mm of the tape';

export const foresightChoices: readonly { value: Moves; label: string }[] = [
  { value: 'front', label: 'The front sinks' },
  { value: 'back', label: 'The back sinks' },
  { value: 'holds', label: 'It stays where it is' },
];
