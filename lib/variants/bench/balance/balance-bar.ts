import { togetherAsOne, type PlacedMass } from '../../../balance/centre-of-mass';
import { bestForwardMm, type AltitudeRange } from '../../../balance/holding';
import type { PartOnTube } from '../../../balance/tube-bench';
import type { Random } from '../../random';
import type { BalanceTemplate, BalanceVariant } from './balance-variant';

type BarDraw = {
  tube: PlacedMass;
  parts: readonly PartOnTube[];
  range: AltitudeRange;
  on: readonly string[];
  needed: readonly string[];
  travelMm: number;
  armMm: number;
};

/** Where on the tube the bar is screwed, so that the clamp reaches what the task is about. */
export function drawBar(
  template: BalanceTemplate,
  draw: BarDraw,
  random: Random,
): BalanceVariant['bar'] {
  const { tube, parts, range, travelMm, armMm } = draw;
  const bestWith = (ids: readonly string[]): number => {
    const all = togetherAsOne([tube, ...parts.filter(({ id }) => ids.includes(id))]);
    return all.alongMm + bestForwardMm(all.aboveAxisMm, range);
  };
  if (template === 'short-bar') {
    const [unaided, aided] = [bestWith(draw.needed), bestWith(draw.on)];
    const beyondMm = random.between(1.5, 2.2) * armMm;
    const leastMm = aided < unaided ? unaided - beyondMm - travelMm : unaided + beyondMm;
    return bar(leastMm, travelMm);
  }
  return bar(bestWith(draw.on) - random.between(0.2, 0.8) * travelMm, travelMm);
}

function bar(leastMm: number, travelMm: number): BalanceVariant['bar'] {
  const least = Math.round(leastMm);
  return { leastMm: least, mostMm: least + travelMm };
}
