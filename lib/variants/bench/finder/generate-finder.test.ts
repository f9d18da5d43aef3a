import { describe, expect, it } from 'vitest';
import { benchKitFor } from '../../../data/lab-tasks/bench/bench-kit-for';
import { loadCatalogue } from '../../../content/sky-catalogue';
import { parallaxOf, sizeArcmin } from '../../../finder/sights';
import { leastSunDistanceDeg, nearestToSunDeg } from '../../../finder/way-past-sun';
import type { Scenario } from '../../../pointing/scenario';
import { sunAltitudeAtDeg } from '../../../sky/twilight';
import { directionFromAzAlt, separationDeg } from '../../../units/vector';
import { finderScenario, finderTasks } from '../../../../tests/support/finder-tasks';
import { drawDayAndDusk } from './finder-day';
import { duskStars } from './finder-dusk-stars';
import { lightsAtDusk } from './finder-lights';
import { finderTemplates } from './finder-variant';
import { generateFinder } from './generate-finder';
import { randomFrom } from '../../random';

const fromSun = (sun: { azimuthDeg: number; altitudeDeg: number }) => (at: typeof sun) =>
  separationDeg(
    directionFromAzAlt(at.azimuthDeg, at.altitudeDeg),
    directionFromAzAlt(sun.azimuthDeg, sun.altitudeDeg),
  );

it('the first stars at dusk are those of the catalogue', () => {
  const { stars } = loadCatalogue();
  for (const mine of duskStars.stars) {
    const theirs = stars.find(({ hip }) => hip === mine.hip);
    expect(theirs).toMatchObject({
      name: mine.name,
      raDeg: mine.raDeg,
      decDeg: mine.decDeg,
      pmRaMasYr: mine.pmRaMasYr,
      pmDecMasYr: mine.pmDecMasYr,
      magnitude: mine.magnitude,
    });
  }
});

describe('a task of "Finder"', () => {
  it('is the same from the same seed and another from another', () => {
    const one = finderTasks({ templates: ['free-target'], count: 2, name: 'again' });
    const again = finderTasks({ templates: ['free-target'], count: 2, name: 'again' });
    expect(one).toEqual(again);
    expect(one[0]).not.toEqual(one[1]);
  });

  it('has by day something well clear of the Sun, and nothing near the limit', () => {
    for (const { day, middleAzimuthDeg, tubeAtFirst } of finderTasks({
      templates: finderTemplates.filter((one) => one !== 'set-by-another'),
      count: 60,
      name: 'clear',
    })) {
      if (day === null) throw new Error('by day');
      expect(day.sun.altitudeDeg).toBeGreaterThan(3);
      expect(day.sun.altitudeDeg).toBeLessThan(22);
      const distances = day.targets.map(fromSun(day.sun));
      expect(distances.some((deg) => deg > nearestToSunDeg + 5)).toBe(true);
      expect(distances.every((deg) => Math.abs(deg - nearestToSunDeg) > 5)).toBe(true);
      expect(fromSun(day.sun)(tubeAtFirst)).toBeGreaterThan(nearestToSunDeg + 5);
      expect(middleAzimuthDeg).toBeLessThan(360);
    }
  });

  it('sets a trap of the straight way in most scenes with a free choice', () => {
    const tasks = finderTasks({ templates: ['free-target'], count: 60, name: 'trap' });
    const trapped = tasks.filter(({ day, tubeAtFirst }) => {
      const mast = day?.targets.find(({ kind }) => kind === 'mast');
      return (
        day !== null &&
        mast !== undefined &&
        leastSunDistanceDeg(tubeAtFirst, mast, day.sun) < nearestToSunDeg
      );
    });
    expect(trapped.length).toBeGreaterThan(30);
  });

  it('keeps every far thing by the Sun where it says so, and the middle one clear', () => {
    for (const { day } of finderTasks({
      templates: ['far-ones-by-the-sun'],
      count: 40,
      name: 'far',
    })) {
      for (const target of day?.targets ?? []) {
        const inside = day !== null && fromSun(day.sun)(target) < nearestToSunDeg;
        expect(inside).toBe(target.distanceM > 100);
      }
    }
  });

  it('asks of a near thing whose parallax is plainly in or out of each view', () => {
    for (const { day, finder, eyepieces, givenTargetId } of finderTasks({
      templates: ['near-then-predict'],
      count: 60,
      name: 'plain',
    })) {
      const given = day?.targets.find(({ id }) => id === givenTargetId);
      if (given === undefined) throw new Error('given');
      const size = sizeArcmin(parallaxOf(finder, given.distanceM));
      for (const { radiusArcmin } of Object.values(eyepieces)) {
        expect(Math.abs(size / radiusArcmin - 1)).toBeGreaterThan(0.1);
      }
    }
  });

  it('offers what another set it on among others that can be told apart', () => {
    const places = new Set<number>();
    for (const { setOnBefore, dotAtFirst, finder } of finderTasks({
      templates: ['set-by-another'],
      count: 60,
      name: 'another',
    })) {
      if (setOnBefore === null) throw new Error('by another');
      const { distanceM, optionsM } = setOnBefore;
      places.add(optionsM.indexOf(distanceM));
      expect(dotAtFirst).toEqual(parallaxOf(finder, distanceM));
      expect([...optionsM].sort((a, b) => a - b)).toEqual(optionsM);
      for (const [i, other] of optionsM.entries()) {
        const before = optionsM[i - 1];
        if (before !== undefined) expect(other / before).toBeGreaterThan(1.6);
      }
    }
    expect(places.size).toBe(3);
    expect(places.has(-1)).toBe(false);
  });
});

const somewhere = (latitudeDeg: number, localTime: string): Scenario => ({
  ...finderScenario('wren'),
  place: { latitudeDeg, longitudeDeg: 12.5, elevationM: 0 },
  localTime,
  timeZone: 'Etc/GMT-1',
});
const months = ['03', '06', '09', '12'];

describe('anywhere and at any time of the year', () => {
  it.each([-78, -66, -52, -35, -12, 0, 18, 35, 47, 54, 60, 66, 71, 78, 89])(
    'latitude %i° has an afternoon, a dusk and a light to set on',
    (latitudeDeg) => {
      for (const month of months) {
        const scenario = somewhere(latitudeDeg, `2027-${month}-21T21:00`);
        const times = drawDayAndDusk(scenario, 40, randomFrom(`${latitudeDeg} ${month}`));
        const { sun } = times.afternoon.frame;
        expect(sun.altitudeDeg).toBeGreaterThan(3);
        expect(sun.altitudeDeg).toBeLessThan(22);
        expect(times.dusk.frame.sun.trueAltitudeDeg).toBeLessThan(sunAltitudeAtDeg.civil + 0.01);
        expect(times.dusk.frame.sun.trueAltitudeDeg).toBeGreaterThan(-9);
        expect(lightsAtDusk(times.dusk.frame).length).toBeGreaterThan(0);
        if (Math.abs(latitudeDeg) < 60) expect(times.daysLater).toBe(0);
        for (const template of finderTemplates) {
          const kit = benchKitFor('owl', scenario);
          const seed = `${template} ${latitudeDeg} ${month}`;
          generateFinder({ seed, scenario, templates: [template], windowMinutes: 40, kit });
        }
      }
    },
    30_000,
  );
});
