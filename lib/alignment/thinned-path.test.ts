import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directionFromAzAlt, type Vector3 } from '../units/vector';
import { thinned } from './thinned-path';

const arcmin = Math.PI / 180 / 60;
/** To and fro between two azimuths while it rises: no point lies on the line between its neighbours. */
const toAndFro = (count: number): Vector3[] =>
  Array.from({ length: count }, (_, i) =>
    directionFromAzAlt(i % 2 === 0 ? 100 : 110, (60 * i) / count),
  );

describe('a way over the sky that is thinned', () => {
  it('looks at each sample no more often than it keeps points, whatever the way', () => {
    for (const count of [10, 100, 1000]) {
      let looks = 0;
      const counted = (direction: Vector3): Vector3 => {
        looks += 1;
        return direction;
      };
      const kept = thinned(toAndFro(count), counted, { most: 50, distance: arcmin });
      expect(kept).toHaveLength(Math.min(count, 50));
      // With the two ends of each stretch, of which there are no more than two a point.
      expect(looks).toBeLessThanOrEqual(50 * (count + 4));
    }
  });

  it('keeps both ends, the order, and no more than was asked for', () => {
    const place = fc.tuple(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 0, max: 80 }));
    fc.assert(
      fc.property(
        fc.array(place, { maxLength: 40 }),
        fc.integer({ min: 2, max: 12 }),
        (places, most) => {
          const way = places.map(([azimuth, altitude]) => directionFromAzAlt(azimuth, altitude));
          const kept = thinned(way, (direction) => direction, { most, distance: arcmin });
          expect(kept.length).toBeLessThanOrEqual(Math.max(most, Math.min(way.length, 1)));
          expect(kept[0]).toBe(way[0]);
          expect(kept.at(-1)).toBe(way.at(-1));
          const indices = kept.map((direction) => way.indexOf(direction));
          expect(indices).toEqual([...indices].sort((a, b) => a - b));
        },
      ),
    );
  });

  it('brings back what lies farthest from the line first, and gives up what lies on it', () => {
    // On the equator of the frame: a chord, and what rises above its middle.
    const place = (azimuth: number, altitude: number) => directionFromAzAlt(azimuth, altitude);
    const [low, high] = [place(179, 1), place(181, 3)];
    const way = [place(178, 0), low, place(180, 0), high, place(182, 0)];
    const kept = (most: number, distance = arcmin) =>
      thinned(way, (direction) => direction, { most, distance });
    expect(kept(2)).toEqual([way[0], way[4]]);
    expect(kept(3)).toEqual([way[0], high, way[4]]);
    expect(kept(99)).toEqual(way);
    // 1° is left out where 70′ may be.
    expect(kept(99, 70 * arcmin)).toEqual([way[0], place(180, 0), high, way[4]]);
    const level = [178, 178.5, 179].map((azimuth) => place(azimuth, 0));
    expect(thinned(level, (direction) => direction, { most: 9, distance: arcmin })).toHaveLength(2);
  });
});
