import { expectedSquareAt, pairErrorModel } from '../../pointing/pair-error-model';
import { radiansToArcminutes } from '../../units/angle';
import type { Random } from '../../variants/random';
import type { ItemKit } from '../item-family';
import { apartDeg, goodPair, somePlace } from './aligning';
import type { ChartPlace } from './sky-chart';
import { angleText, placeText } from './words';
import { pickOne } from '../../variants/pick-one';

export type Candidate = ChartPlace & { errorArcmin: number };
type Setting = { pair: readonly [ChartPlace, ChartPlace]; candidates: readonly Candidate[] };

/**
 * Candidates for a third star, worst expected error first; the first clearly stands out: where a slip at
 * the two stars shows most. Both by the small-error model of the pair.
 */
export function settingFor(random: Random, kit: ItemKit): Setting {
  for (;;) {
    const pair = goodPair(random);
    const model = pairErrorModel(kit.telescope, ...pair);
    if (model === null) continue;
    const near = pickOne(random, pair);
    const close: ChartPlace = {
      azimuthDeg: (near.azimuthDeg + pickOne(random, [-10, 10]) + 360) % 360,
      altitudeDeg: Math.min(70, near.altitudeDeg + 5),
    };
    const places = [close, somePlace(random), somePlace(random), somePlace(random)];
    const weighed = places
      .map((place) => ({
        ...place,
        errorArcmin: radiansToArcminutes(Math.sqrt(expectedSquareAt(model, place))),
      }))
      .sort((a, b) => b.errorArcmin - a.errorArcmin);
    const [worst, next] = weighed;
    const apart = weighed.every((one, i) =>
      [...pair, ...weighed.slice(0, i)].every((other) => apartDeg(one, other) > 8),
    );
    const names = new Set([...weighed, ...pair].map(placeText));
    if (worst === undefined || next === undefined || !apart || names.size < 6) continue;
    if (worst.errorArcmin < 1.35 * next.errorArcmin) continue;
    return { pair, candidates: weighed };
  }
}

export const expectText = ({ errorArcmin }: Candidate): string => `about ${angleText(errorArcmin)}`;
export const pairText = ([a, b]: Setting['pair']): string =>
  `one ${placeText(a)}, one ${placeText(b)}`;
