import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { declinationAt } from '@/lib/clock/declination';
import { directionOnHourCircle } from '@/lib/clock/hour-angle';
import { wrap180 } from '@/lib/units/angle';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { momentWords } from './moment-words';
import { needlePlaces } from './needle-places';
import { needleWords } from './needle-words';
import { greenwichSiderealDeg, starsAt, sunAltitudeDeg } from './sky-of-a-moment';
import { startingMs, toldRight } from './starts';
import { wrongClockFacts } from './wrong-clock-facts';
import { wrongClockWords } from './wrong-clock-words';

/** A table of tests/reference/data: rows by column name. */
function rowsOf(file: string): Record<string, string>[] {
  const text = readFileSync(path.join('tests/reference/data', file), 'utf8').trim();
  const [head = '', ...lines] = text.split('\n');
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? '']));
  });
}
const number = (row: Record<string, string>, name: string) => Number(row[name]);

describe('the figure of the turning sky', () => {
  it('has the sidereal time of Meeus, example 12.b: 8h34m57.09s on 1987-04-10 at 19:21 UT', () => {
    const hours = greenwichSiderealDeg(Date.UTC(1987, 3, 10, 19, 21)) / 15;
    expect(hours).toBeCloseTo(8 + 34 / 60 + 57.0896 / 3600, 5);
  });

  it('puts stars where ERFA does, to a twentieth of a degree', () => {
    const rows = rowsOf('star_altaz.csv').filter((row) =>
      starsAt(startingMs, 0).some(({ name }) => name === row['name']),
    );
    expect(rows.length).toBeGreaterThan(40);
    for (const row of rows) {
      const stars = starsAt(Date.parse(row['utc'] ?? ''), number(row, 'lon_deg_east'));
      const star = stars.find(({ name }) => name === row['name']);
      if (star === undefined) throw new Error('found a moment ago');
      const ours = directionOnHourCircle(star, number(row, 'lat_deg'));
      const erfa = directionFromAzAlt(number(row, 'az_norefr'), number(row, 'alt_norefr'));
      expect(separationDeg(ours, erfa), `${row['name'] ?? ''} ${row['utc'] ?? ''}`).toBeLessThan(
        0.05,
      );
    }
  });

  it('puts the Sun where JPL DE405 does, to a twentieth of a degree', () => {
    const rows = rowsOf('sun_moon_altaz.csv').filter((row) => row['body'] === 'sun');
    expect(rows.length).toBe(150);
    for (const row of rows) {
      const ours = sunAltitudeDeg(
        Date.parse(row['utc'] ?? ''),
        number(row, 'lat_deg'),
        number(row, 'lon_deg_east'),
      );
      expect(Math.abs(ours - number(row, 'alt_norefr'))).toBeLessThan(0.05);
    }
  });

  it('turns by 15.041° in an hour and by 0.986° from one day to the same hour of the next', () => {
    const turn = (ms: number) =>
      wrap180(greenwichSiderealDeg(startingMs + ms) - greenwichSiderealDeg(startingMs));
    expect(turn(3_600_000)).toBeCloseTo(15.041, 3);
    expect(turn(86_400_000)).toBeCloseTo(0.986, 3);
  });

  it('says by day that nobody can see the stars, and by night nothing of the kind', () => {
    expect(momentWords(Date.UTC(2026, 11, 5, 12), 52, 'Vega')).toContain('The Sun is up');
    expect(momentWords(startingMs, 52, 'Vega')).not.toContain('Sun');
    expect(momentWords(startingMs, 52, 'Vega')).toContain('west-north-west, 2½ fists up');
    expect(momentWords(startingMs, 52, 'Sirius')).toContain('Sirius is below the horizon');
  });
});

describe('the figure of the wrong clock', () => {
  it('misses nothing with everything right', () => {
    for (const { missDeg } of wrongClockFacts(toldRight, false).stars)
      expect(missDeg).toBeCloseTo(0, 6);
  });

  it('misses each star by 15.041° times the cosine of its declination, along its own circle', () => {
    // Chord of a small circle: 2 asin(cos δ · sin(turn/2)). Refraction shifts it by arcminutes.
    const facts = wrongClockFacts({ ...toldRight, clockMinutes: 60 }, false);
    const declinations = new Map(
      starsAt(startingMs, 0).map(({ name, declinationDeg }) => [name, declinationDeg]),
    );
    for (const { name, missDeg, seen, tube } of facts.stars) {
      if (Math.min(seen.altitudeDeg, tube.altitudeDeg) < 10) continue;
      const cos = Math.cos(((declinations.get(name) ?? 0) * Math.PI) / 180);
      const chord = (360 / Math.PI) * Math.asin(cos * Math.sin((15.041 * Math.PI) / 360));
      expect(Math.abs(missDeg - chord), name).toBeLessThan(0.1);
    }
  });

  it('cannot tell an hour of the clock from 15.041° of longitude', () => {
    const byClock = wrongClockFacts({ ...toldRight, clockMinutes: 4 }, false);
    const byPlace = wrongClockFacts({ ...toldRight, longitudeDeg: 1.0027 }, false);
    byClock.stars.forEach(({ missDeg }, i) => {
      expect(missDeg).toBeCloseTo(byPlace.stars[i]?.missDeg ?? Number.NaN, 3);
    });
  });

  it('finds all stars within a quarter of a degree once aligned, whatever it was told', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -60, max: 60 }),
        fc.integer({ min: -10, max: 10 }),
        fc.integer({ min: -8, max: 8 }),
        (clockMinutes, longitudeDeg, latitudeDeg) => {
          const told = { clockMinutes, longitudeDeg, latitudeDeg };
          const facts = wrongClockFacts(told, true);
          const low = facts.stars.some(({ tube }) => tube.altitudeDeg < 8);
          const worst = Math.max(...facts.stars.map(({ missDeg }) => missDeg));
          // What is left is refraction, which the mount reckons for another altitude.
          expect(worst).toBeLessThan(low ? 0.6 : 0.25);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('still misses the Moon by half a degree for an hour', () => {
    const told = { ...toldRight, clockMinutes: 60 };
    const facts = wrongClockFacts(told, true);
    // A sidereal month of 27.32 days: 360°/27.32/24 h
    expect(facts.moonDeg).toBeCloseTo(0.549, 3);
    expect(wrongClockWords(told, facts, true)).toContain('misses the Moon by 0.5°');
  });
});

describe('the figure of needle and north', () => {
  it('has each place’s needle as the World Magnetic Model gives it', () => {
    for (const { latitudeDeg, longitudeDeg, declinationDeg } of needlePlaces) {
      const at = declinationAt(
        { latitudeDeg, longitudeDeg, elevationM: 0 },
        '2026-11-25T00:00:00Z',
      );
      expect(at.ok && Math.abs(at.declinationDeg - declinationDeg) < 0.06).toBe(true);
    }
  });

  it('says which bearing lies along true north', () => {
    const [, halifax] = needlePlaces;
    expect(needleWords(halifax, 0)).toContain('azimuth is 344°, 16° west of true north');
    expect(needleWords(halifax, 16)).toContain('that is true north');
  });
});
