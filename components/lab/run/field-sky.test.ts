import { describe, expect, test } from 'vitest';
import { offsetFromTube } from '@/lib/optics/tube-offset';
import { refracted } from '@/lib/sky/refracted-direction';
import { placeCatalogue } from '@/lib/sky/star-places';
import { turnedFrame } from '@/lib/sky/turned-frame';
import { directionFromAzAlt, separationDeg, type Vector3 } from '@/lib/units/vector';
import { eveningRun } from '@/tests/support/evening-run';
import { FaintStars, faintFromMagnitude } from './faint-stars';
import { FieldSky } from './field-sky';

const { catalogue, scenario, frame } = eveningRun();
const { latitudeDeg } = scenario.place;
const sky = (changes: Partial<ConstructorParameters<typeof FieldSky>[0]> = {}) =>
  new FieldSky({
    catalogue,
    frame,
    latitudeDeg,
    horizon: [],
    clouds: [],
    extinction: 0.25,
    ...changes,
  });

const middle = directionFromAzAlt(95, 40);
const up = directionFromAzAlt(275, 50);
const seconds = 4000;

/** The slow way: the whole catalogue placed for the later frame, then one star after another. */
function bySlowWay(radiusDeg: number, faintest: number) {
  const later = turnedFrame(frame, latitudeDeg, seconds);
  const { directions } = placeCatalogue(catalogue, later);
  return catalogue.stars.flatMap((star, i) => {
    const place: Vector3 = [
      directions[3 * i] ?? 0,
      directions[3 * i + 1] ?? 0,
      directions[3 * i + 2] ?? 0,
    ];
    const seen = refracted(place, frame.refractionScale);
    const offset = offsetFromTube(middle, up, seen);
    if (offset === null || star.magnitude > faintest - 1) return [];
    const far = Math.hypot(offset.rightArcmin, offset.upArcmin);
    return far < radiusDeg * 60 ? [{ hip: star.hip, ...offset }] : [];
  });
}

describe('the stars about a direction', () => {
  test('stand where the whole catalogue, turned and refracted, has them, to a second of arc', () => {
    const field = sky();
    field.look({ middle, up, radiusDeg: 9, seconds, faintest: 6 });
    const expected = bySlowWay(9, 6);
    expect(expected.length).toBeGreaterThan(10);
    for (const star of expected) {
      const n = Array.from({ length: field.count }, (_, i) => i).find(
        (i) => field.idAt(i) === `hip-${String(star.hip)}`,
      );
      if (n === undefined) throw new Error(`HIP ${String(star.hip)} is missing`);
      expect(Math.abs((field.rightArcmin[n] ?? NaN) - star.rightArcmin) * 60).toBeLessThan(1);
      expect(Math.abs((field.upArcmin[n] ?? NaN) - star.upArcmin) * 60).toBeLessThan(1);
    }
  });

  test('are hidden by the skyline and dimmed by a cloud', () => {
    const open = sky();
    open.look({ middle, up, radiusDeg: 9, seconds, faintest: 6 });
    const walled = sky({ horizon: [{ azimuthDeg: 0, altitudeDeg: 60 }] });
    walled.look({ middle, up, radiusDeg: 9, seconds, faintest: 6 });
    expect(open.count).toBeGreaterThan(0);
    expect(walled.count).toBe(0);
    const cloudy = sky({ clouds: [{ azimuthDeg: 95, altitudeDeg: 40, radiusDeg: 20 }] });
    cloudy.look({ middle, up, radiusDeg: 9, seconds, faintest: 6 });
    expect(cloudy.count).toBeLessThan(open.count);
  });

  test('planets are among them under their own names', () => {
    const planet = frame.planets.find(({ altitudeDeg }) => altitudeDeg > 15);
    if (planet === undefined) throw new Error('no planet is up');
    const towards = directionFromAzAlt(planet.azimuthDeg, planet.altitudeDeg);
    const above = directionFromAzAlt(planet.azimuthDeg + 180, 90 - planet.altitudeDeg);
    const field = sky();
    field.look({ middle: towards, up: above, radiusDeg: 1, seconds: 0, faintest: 6 });
    expect(field.idAt(0)).toBe(planet.body);
    expect(Math.hypot(field.rightArcmin[0] ?? NaN, field.upArcmin[0] ?? NaN)).toBeLessThan(0.1);
  });

  test('invented ones are drawn but have no name, and none is as bright as the catalogue’s', () => {
    const field = sky();
    const view = { middle, up, radiusDeg: 1.2, seconds, faintest: 10.5 };
    field.look(view);
    const real = field.count;
    field.look(view, true);
    expect(field.count).toBeGreaterThan(real);
    for (let n = real; n < field.count; n += 1) {
      expect(field.idAt(n)).toBeNull();
      expect(field.seenAs[n]).toBeGreaterThanOrEqual(faintFromMagnitude);
    }
  });
});

test('invented stars are as many as the mean of the sky, and the same at each look', () => {
  const faint = new FaintStars(frame.icrsToLocal);
  const found: { place: Vector3; magnitude: number }[] = [];
  const look = (): void => {
    faint.each(middle, 8, 10, (place, magnitude) => {
      if (separationDeg(place, middle) <= 8) found.push({ place: [...place], magnitude });
    });
  };
  look();
  const once = found.length;
  // 201 square degrees; 10^(0.45·10 − 3.6) less 10^(0.45·7 − 3.6) of them on each.
  const expected = 201 * (10 ** 0.9 - 10 ** -0.45);
  expect(once / expected).toBeGreaterThan(0.85);
  expect(once / expected).toBeLessThan(1.15);
  look();
  expect(found.slice(once)).toEqual(found.slice(0, once));
});
