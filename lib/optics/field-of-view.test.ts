import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue, loadKits } from '../content/sky-catalogue';
import { skyFrameAt } from '../sky/frame-at';
import { placeCatalogue } from '../sky/star-places';
import {
  azAltFromDirection,
  directionFromAzAlt,
  separationDeg,
  type Vector3,
} from '../units/vector';
import { driftTimeSeconds } from './drift-time';
import { asSeen, orientationOf, type FieldOffset } from './image-orientation';
import { offsetFromTube } from './tube-offset';

const orientations = ['true', 'mirrored', 'turned'] as const;

/** A tube at this place of the sky and the direction in which its altitude axis lifts it. */
function tubeAt(azimuthDeg: number, altitudeDeg: number): { tube: Vector3; up: Vector3 } {
  return {
    tube: directionFromAzAlt(azimuthDeg, altitudeDeg),
    up: directionFromAzAlt(azimuthDeg, altitudeDeg + 90),
  };
}

function seenFrom(tube: { tube: Vector3; up: Vector3 }, target: Vector3): FieldOffset {
  const offset = offsetFromTube(tube.tube, tube.up, target);
  if (offset === null) throw new Error('behind the tube');
  return offset;
}

/** What the design's table says of each kit's tube. */
const table = [
  { id: 'wren', orientation: 'true' },
  { id: 'heron', orientation: 'turned' },
  { id: 'owl', orientation: 'mirrored' },
] as const;

describe.each(table)('the eyepiece of $id', ({ id, orientation }) => {
  const tubeType = loadKits().find((kit) => kit.id === id)?.tubeType;
  if (tubeType === undefined) throw new Error(`no kit ${id}`);
  const seen = (offset: FieldOffset) => asSeen(offset, orientationOf(tubeType));

  it(`shows the sky ${orientation}`, () => {
    expect(orientationOf(tubeType)).toBe(orientation);
  });

  // Design, "Field": moving the tube right moves the star left on the sky, hence left in a true view,
  // right in a turned one, right in a mirrored one; moving it up moves the star down in true and
  // mirrored views, up in a turned one.
  it('moves the star as the table says when the tube goes right or up', () => {
    const star = directionFromAzAlt(200, 40);
    const right = seen(seenFrom(tubeAt(200.5, 40), star));
    const up = seen(seenFrom(tubeAt(200, 40.5), star));
    expect(Math.sign(right.rightArcmin)).toBe(orientation === 'true' ? -1 : 1);
    expect(Math.sign(up.upArcmin)).toBe(orientation === 'turned' ? 1 : -1);
    expect(Math.abs(up.rightArcmin)).toBeLessThan(1e-9);
  });

  // Facing south, west is on the right; facing north it is on the left: a compass rose.
  it.each([
    { hemisphere: 'northern', facing: 'south', latitudeDeg: 50, azimuthDeg: 180, west: 1 },
    { hemisphere: 'southern', facing: 'north', latitudeDeg: -35, azimuthDeg: 0, west: -1 },
  ])(
    'a star that the sky has moved west appears where it should, facing $facing from the $hemisphere half of the Earth',
    ({ latitudeDeg, azimuthDeg, west }) => {
      const { before, after } = driftingStar(latitudeDeg, azimuthDeg);
      const place = azAltFromDirection(before);
      const tube = tubeAt(place.azimuthDeg, place.altitudeDeg);
      const { rightArcmin, upArcmin } = seen(seenFrom(tube, after));
      expect(Math.sign(rightArcmin)).toBe(orientation === 'true' ? west : -west);
      // On the meridian it goes along the horizon.
      expect(Math.abs(upArcmin)).toBeLessThan(Math.abs(rightArcmin) / 20);
    },
  );
});

/** A bright star near the meridian on that side, and where it stands two minutes later. */
function driftingStar(latitudeDeg: number, azimuthDeg: number) {
  const catalogue = loadCatalogue();
  const place = { latitudeDeg, longitudeDeg: 12, elevationM: 0 };
  for (let minutes = 0; minutes < 1440; minutes++) {
    const at = Date.UTC(2026, 2, 3) + minutes * 60_000;
    const now = placeCatalogue(catalogue, skyFrameAt({ instant: new Date(at), place }));
    const index = catalogue.stars.findIndex((star, i) => {
      const off = Math.abs((((now.azimuthDeg[i] ?? 0) - azimuthDeg + 540) % 360) - 180);
      const altitudeDeg = now.altitudeDeg[i] ?? 0;
      return star.magnitude < 2.5 && off < 0.2 && altitudeDeg > 25 && altitudeDeg < 60;
    });
    const star = catalogue.stars[index];
    if (star === undefined) continue;
    const later = placeCatalogue(catalogue, skyFrameAt({ instant: new Date(at + 120_000), place }));
    const direction = (places: typeof now) =>
      directionFromAzAlt(places.azimuthDeg[index] ?? 0, places.altitudeDeg[index] ?? 0);
    return { before: direction(now), after: direction(later), declinationDeg: star.decDeg };
  }
  throw new Error('no bright star crosses the meridian that day');
}

describe('the real sky', () => {
  it('carries a star across a field in the drift time of its declination', () => {
    for (const [latitudeDeg, azimuthDeg] of [
      [50, 180],
      [-35, 0],
    ] as const) {
      const { before, after, declinationDeg } = driftingStar(latitudeDeg, azimuthDeg);
      const seconds = driftTimeSeconds(separationDeg(before, after) * 60, declinationDeg);
      // Precession since 2000 and refraction: a part in a thousand at the most.
      expect(seconds).toBeGreaterThan(119.8);
      expect(seconds).toBeLessThan(120.2);
    }
  });
});

describe('a view of the sky', () => {
  const arcmin = fc.double({ min: -600, max: 600, noNaN: true });

  it('is undone by itself', () => {
    fc.assert(
      fc.property(arcmin, arcmin, fc.constantFrom(...orientations), (right, up, orientation) => {
        const back = asSeen(asSeen({ rightArcmin: right, upArcmin: up }, orientation), orientation);
        expect(back.rightArcmin).toBeCloseTo(right, 12);
        expect(back.upArcmin).toBeCloseTo(up, 12);
      }),
    );
  });

  it('keeps handedness when true or turned, and loses it when mirrored', () => {
    const handedness = (orientation: (typeof orientations)[number]) => {
      const x = asSeen({ rightArcmin: 1, upArcmin: 0 }, orientation);
      const y = asSeen({ rightArcmin: 0, upArcmin: 1 }, orientation);
      return x.rightArcmin * y.upArcmin - x.upArcmin * y.rightArcmin;
    };
    expect(orientations.map(handedness)).toEqual([1, -1, 1]);
  });

  it('measures true angles near the axis, and their tangents farther out', () => {
    const tube = tubeAt(120, 35);
    for (const [deg, reads] of [
      [1 / 60, 1],
      [1, 60.0061],
      [45, 3437.747],
    ] as const) {
      const offset = seenFrom(tube, directionFromAzAlt(120, 35 + deg));
      expect(offset.upArcmin).toBeCloseTo(reads, 3);
      expect(offset.rightArcmin).toBeCloseTo(0, 9);
    }
  });

  it('shows nothing of what is beside or behind the tube', () => {
    const { tube, up } = tubeAt(120, 0);
    expect(offsetFromTube(tube, up, directionFromAzAlt(210, 0))).toBeNull();
    expect(offsetFromTube(tube, up, directionFromAzAlt(300, 20))).toBeNull();
  });
});
