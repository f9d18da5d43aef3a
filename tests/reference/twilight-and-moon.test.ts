import { AstroTime, Body, Equator, Horizon, Observer, SearchAltitude } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { moonRiseAndSet } from '@/lib/sky/moon-rise-set';
import { duskAndDawn, type NightTimes } from '@/lib/sky/twilight';

/*
 * Twilights and Moon by astronomy-engine used in another way than lib/sky does: its own search for an
 * altitude, where ours bisects between noon and midnight; and the Moon's limb looked for by steps and
 * halving, where ours takes the library's rise and set.
 */
const sites = [
  ['60° north', { latitudeDeg: 60, longitudeDeg: 10.75, elevationM: 0 }, 'Europe/Oslo'],
  ['the equator', { latitudeDeg: -0.22, longitudeDeg: -78.5, elevationM: 0 }, 'America/Guayaquil'],
  ['43° south', { latitudeDeg: -42.88, longitudeDeg: 147.33, elevationM: 0 }, 'Australia/Hobart'],
] as const;
const dates = ['2026-03-02', '2026-09-14', '2026-12-05'] as const;

const ms = (instant: string | null | undefined): number => Date.parse(instant ?? '');
const hourMs = 3_600_000;

describe.each(sites)('at %s', (_, place, timeZone) => {
  const observer = new Observer(place.latitudeDeg, place.longitudeDeg, 0);

  it.each(dates)(
    'the twilights of %s are where the library’s own search finds them',
    (localDate) => {
      const night = duskAndDawn({ place, localDate, timeZone });
      const searched: [keyof NightTimes, number, number][] = [
        ['civilDusk', -6, -1],
        ['nauticalDusk', -12, -1],
        ['astronomicalDusk', -18, -1],
        ['astronomicalDawn', -18, 1],
        ['nauticalDawn', -12, 1],
        ['civilDawn', -6, 1],
      ];
      for (const [name, altitude, direction] of searched) {
        const from = new Date(ms(night.sunset));
        const found = SearchAltitude(
          Body.Sun,
          observer,
          direction,
          new AstroTime(from),
          1,
          altitude,
        );
        // The library stops its search within a second; ours within a millisecond.
        expect(Math.abs(ms(night[name]) - (found?.date.getTime() ?? NaN)), name).toBeLessThan(1000);
      }
    },
  );

  it.each(dates)('the Moon of %s passes the horizon when its upper limb does', (localDate) => {
    const from = Date.parse(`${localDate}T00:00:00Z`);
    const to = from + 48 * hourMs;
    // 34′ of refraction (the almanacs' own constant), and half the Moon's width at its distance.
    const limbAboveDeg = (at: number): number => {
      const time = new AstroTime(new Date(at));
      const { ra, dec, dist } = Equator(Body.Moon, time, observer, true, true);
      const halfWidthDeg = (Math.asin(1737.4 / (dist * 149_597_870.7)) * 180) / Math.PI;
      return Horizon(time, observer, ra, dec).altitude + 34 / 60 + halfWidthDeg;
    };
    const seen: { kind: 'rise' | 'set'; at: number }[] = [];
    for (let at = from; at < to; at += hourMs / 4) {
      let [before, after] = [at, Math.min(to, at + hourMs / 4)];
      if (limbAboveDeg(before) > 0 === limbAboveDeg(after) > 0) continue;
      const kind = limbAboveDeg(after) > 0 ? 'rise' : 'set';
      while (after - before > 100) {
        const middle = (before + after) / 2;
        if (limbAboveDeg(middle) > 0 === (kind === 'rise')) after = middle;
        else before = middle;
      }
      seen.push({ kind, at: after });
    }
    const passages = moonRiseAndSet({ place, from: new Date(from), to: new Date(to) });
    expect(seen.length).toBeGreaterThan(2);
    expect(passages.map(({ kind }) => kind)).toEqual(seen.map(({ kind }) => kind));
    // The library takes the Moon's mean radius for its equatorial one and stops within a second.
    passages.forEach(({ instant }, index) => {
      expect(Math.abs(ms(instant) - (seen[index]?.at ?? NaN)), instant).toBeLessThan(5000);
    });
  });
});

/*
 * Almanac days, from memory. An almanac gives whole minutes (half a minute either way), and for a town as
 * a whole, which stretches a quarter of a degree or a minute of the turning sky: one minute and a half.
 */
const almanacMinutes = 1.5;
const minutesApart = (instant: string | null | undefined, almanac: string): number =>
  Math.abs(ms(instant) - Date.parse(almanac)) / 60_000;

describe('almanac days, from memory', () => {
  it('London on 21 December 2026: the Sun sets at 15:53 and has risen at 08:03', () => {
    const place = { latitudeDeg: 51.5074, longitudeDeg: -0.1278, elevationM: 0 };
    const night = (localDate: string) =>
      duskAndDawn({ place, localDate, timeZone: 'Europe/London' });
    const { sunset } = night('2026-12-21');
    expect(minutesApart(sunset, '2026-12-21T15:53:00Z')).toBeLessThan(almanacMinutes);
    const { sunrise } = night('2026-12-20');
    expect(minutesApart(sunrise, '2026-12-21T08:03:00Z')).toBeLessThan(almanacMinutes);
  });

  it('New York on 21 June 2026: the Sun rises at 05:25 and sets at 20:31 by the clock there', () => {
    const place = { latitudeDeg: 40.7128, longitudeDeg: -74.006, elevationM: 0 };
    const night = (localDate: string) =>
      duskAndDawn({ place, localDate, timeZone: 'America/New_York' });
    expect(minutesApart(night('2026-06-21').sunset, '2026-06-22T00:31:00Z')).toBeLessThan(
      almanacMinutes,
    );
    expect(minutesApart(night('2026-06-20').sunrise, '2026-06-21T09:25:00Z')).toBeLessThan(
      almanacMinutes,
    );
  });

  it('London on 27 July 2018: the Moon of the long eclipse rises at 20:49 by the clock there', () => {
    const place = { latitudeDeg: 51.5074, longitudeDeg: -0.1278, elevationM: 0 };
    const [rise] = moonRiseAndSet({
      place,
      from: new Date('2018-07-27T12:00:00Z'),
      to: new Date('2018-07-28T00:00:00Z'),
    });
    expect(rise?.kind).toBe('rise');
    expect(minutesApart(rise?.instant, '2018-07-27T19:49:00Z')).toBeLessThan(almanacMinutes);
  });
});
