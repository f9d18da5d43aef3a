import type { Random } from '../../variants/random';
import { apartDeg, goodPair, honestMount, outcomeOf } from '../align-on-two-stars/aligning';
import {
  chartWords,
  skyChart,
  type ChartMark,
  type ChartPlace,
} from '../align-on-two-stars/sky-chart';
import { pickOne } from '../../variants/pick-one';
import type { ItemDraw } from '../item-family';

type Riddle = {
  a: ChartPlace;
  b: ChartPlace;
  lights: readonly (ChartPlace & { label: string; fromA: number })[];
};

/** How far the lights stand from the second star, and from each other at least; degrees. */
type Spread = { from: number; to: number; clear: number };
export const closeBy: Spread = { from: 10, to: 18, clear: 10 };
/** So that the rings on them stay apart on the chart. */
export const wellApart: Spread = { from: 15, to: 26, clear: 15 };

/** A pair, and three lights beside the second star, each at its own distance from the first. */
function lightsAround(random: Random, { from, to, clear: clearDeg }: Spread): Riddle {
  for (;;) {
    const [a, b] = goodPair(random);
    const lights = ['C', 'D', 'E'].map((label) => {
      const angle = random.between(0, 2 * Math.PI);
      const far = random.between(from, to);
      const place = {
        azimuthDeg: Math.round(
          (b.azimuthDeg +
            (far * Math.cos(angle)) / Math.cos((b.altitudeDeg * Math.PI) / 180) +
            360) %
            360,
        ),
        altitudeDeg: Math.round(b.altitudeDeg + far * Math.sin(angle)),
      };
      return { ...place, label, fromA: apartDeg(a, place) };
    });
    const all = [apartDeg(a, b), ...lights.map(({ fromA }) => fromA)].sort((x, y) => x - y);
    const spread = all.slice(1).every((one, i) => one - (all[i] ?? 0) > 2.2);
    const clear = lights.every((one, i) =>
      [b, ...lights.slice(0, i)].every((other) => apartDeg(one, other) > clearDeg),
    );
    if (spread && clear && lights.every(({ altitudeDeg }) => altitudeDeg > 12 && altitudeDeg < 78))
      return { a, b, lights };
  }
}

/** A light centred for B, and what a mount with a fixed zero says of it. */
export function asked({ random, world }: ItemDraw, spread: Spread) {
  const { a, b, lights } = lightsAround(random, spread);
  const centred = pickOne(random, lights);
  const truth = honestMount(random, { zeroDeg: 0.02, tiltDeg: 0.2 });
  const outcome = outcomeOf('fixed-zero', truth, [
    { named: a, centred: a },
    { named: b, centred },
  ]);
  const kit = pickOne(random, world.kits);
  const due = apartDeg(a, b);
  return { kit, a, b, lights, centred, outcome, due };
}

export const chartOf = ({ a, b, lights }: Riddle) =>
  chartOfMarks([{ ...a, label: 'A' }, { ...b, label: 'B' }, ...lights]);

/** To point at: the lights have no letters, and the pair has figures, as the rings bring letters. */
export const chartToPointAt = ({ a, b, lights }: Riddle) =>
  chartOfMarks([
    { ...a, label: '1' },
    { ...b, label: '2' },
    ...lights.map(({ azimuthDeg, altitudeDeg }) => ({ azimuthDeg, altitudeDeg })),
  ]);

const chartOfMarks = (marks: readonly ChartMark[]) =>
  skyChart({ marks, alternative: chartWords(marks) });
