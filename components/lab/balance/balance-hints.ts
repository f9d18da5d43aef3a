import { wholeTube } from '@/lib/balance/tube-in-clamp';
import { bestForwardMm } from '@/lib/balance/holding';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { degText, mmText } from './balance-words';

/** Three hints, each telling more; the last one is the sum itself, for this very tube. */
export function balanceHints(variant: BalanceVariant): readonly string[] {
  const { template, needed, range } = variant;
  const tube = wholeTube(variant, needed);
  const sum = `Everything used tonight weighs ${tube.massKg.toFixed(2)} kg, and the sum of mass × place is ${(tube.massKg * tube.alongMm).toFixed(0)} kg·mm.`;
  switch (template) {
    case 'first-balance':
      return [
        'Whatever lies farther from the clamp counts for more: mass times distance. The heavier end sinks.',
        'The balance point is the mean of all places, each weighted by its mass: multiply each mass by its place, add up, divide by the whole mass.',
        `${sum} Divide the one by the other, and slide the tube until the clamp grips there.`,
      ];
    case 'phone-joins':
      return [
        'The side on which weight is added sinks. The tube then has to move the other way through the clamp.',
        'The balance point moves by m (x − x₀) / (M + m): what is added counts in the whole mass, too.',
        `With the phone on: ${sum}`,
      ];
    case 'short-bar':
      return [
        'Slide the tube as far as it helps and let go: one end still sinks. Then look for something that weighs down the other end.',
        'The strap weight can sit at either end. At the heavy end it only makes things worse. With it on, the balance point moves back onto the bar.',
        `Without the weight: ${sum} Compare the place that gives with where the bar ends, then add the weight to the sum.`,
      ];
    case 'raised':
      return [
        'Level, only the place along the tube counts. Raised, the height of the centre of mass above the axis counts more and more.',
        'Slid right, the pull is nothing in the middle of the range and small at both ends, one way at the low end and the other way at the high one. Let go at both ends and compare.',
        `The centre of mass lies ${mmText(Math.abs(tube.aboveAxisMm))} ${tube.aboveAxisMm > 0 ? 'above' : 'below'} the axis. From the level balance point slide by that times tan ${degText((range.lowDeg + range.highDeg) / 2)}, about ${mmText(Math.abs(bestForwardMm(tube.aboveAxisMm, range)))}, ${tube.aboveAxisMm > 0 ? 'forward' : 'back'}.`,
      ];
    case 'two-edges':
      return [
        'The clutch hides small errors: around the balance point there is a stretch where the tube holds. It reaches equally far both ways.',
        'With the tube level, slide it back by a few millimetres at a time until the back just sinks, and read the tape. Then forward until the front just sinks.',
        'The balance point is halfway between the two readings.',
      ];
  }
}
