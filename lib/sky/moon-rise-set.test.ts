import { describe, expect, it } from 'vitest';
import { skyFrameAt } from './frame-at';
import { moonRiseAndSet } from './moon-rise-set';

const hour = 3_600_000;
const sites = [
  ['Greenwich', { latitudeDeg: 51.4769, longitudeDeg: 0, elevationM: 0 }],
  ['Quito', { latitudeDeg: -0.18, longitudeDeg: -78.47, elevationM: 0 }],
  ['Hobart', { latitudeDeg: -42.88, longitudeDeg: 147.33, elevationM: 0 }],
] as const;

describe('the Moon', () => {
  it.each(sites)(
    'over %s changes sides of the horizon at each passage, and at no other time',
    (_, place) => {
      const from = new Date('2026-12-01T00:00:00Z');
      const to = new Date('2026-12-05T00:00:00Z');
      const passages = moonRiseAndSet({ place, from, to });
      // Found another way: by looking at the true altitude of its middle every ten minutes. At a passage
      // it lies 34′ of refraction and some 15′ of half-width below level, less than an hour from zero.
      const isUp = (ms: number): boolean =>
        skyFrameAt({ instant: new Date(ms), place }).moon.trueAltitudeDeg > -(34 + 15.5) / 60;
      const seen: { kind: string; ms: number }[] = [];
      for (let ms = from.getTime(); ms < to.getTime(); ms += hour / 6) {
        if (isUp(ms) !== isUp(ms + hour / 6)) seen.push({ kind: isUp(ms) ? 'set' : 'rise', ms });
      }
      expect(passages.map(({ kind }) => kind)).toEqual(seen.map(({ kind }) => kind));
      passages.forEach(({ instant }, i) => {
        expect(Math.abs(Date.parse(instant) - (seen[i]?.ms ?? 0)), instant).toBeLessThan(hour / 6);
      });
    },
  );

  // Full Moon of 24 December 2026 (almanac, from memory): it rises about when the Sun sets.
  it('rises near sunset on the day it is full', () => {
    const [, place] = sites[0];
    const day = { from: new Date('2026-12-24T12:00:00Z'), to: new Date('2026-12-24T20:00:00Z') };
    const [passage] = moonRiseAndSet({ place, ...day });
    expect(passage?.kind).toBe('rise');
    // Sunset at Greenwich on 24 December is at 15:56 by the almanac, from memory.
    const minutes = (Date.parse(passage?.instant ?? '') - Date.parse('2026-12-24T15:56Z')) / 60_000;
    expect(Math.abs(minutes)).toBeLessThan(60);
  });
});
