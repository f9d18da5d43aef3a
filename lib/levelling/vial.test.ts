import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tiltOf } from './head-slope';
import { bubblePlace, slopeReadUnturned, vialMm } from './vial';

const markAzimuth = fc.double({ min: 0, max: 360, noNaN: true });
const smallTilt = fc.record({
  tiltDeg: fc.double({ min: 0, max: 4, noNaN: true }),
  risesTowardsDeg: fc.double({ min: 0, max: 360, noNaN: true }),
});

describe('a bubble in a circular vial', () => {
  it('has a glass of 114.6 mm radius, which moves it 2 mm for a degree', () => {
    // Design, "Levelling".
    expect(vialMm.curvatureRadius).toBeCloseTo(114.6, 1);
    const east = { tiltDeg: 1, risesTowardsDeg: 90 };
    const { eastMm, northMm } = bubblePlace(east, {
      markAzimuthDeg: 0,
      zeroRightMm: 0,
      zeroUpMm: 0,
    });
    // ρ sin 1° is 2 mm less 0.005 %.
    expect(eastMm).toBeCloseTo(2, 3);
    expect(northMm).toBeCloseTo(0, 9);
  });

  it('stays at the wall, on the high side, when the head leans further than it can show', () => {
    const steep = { tiltDeg: 12, risesTowardsDeg: 180 };
    const place = bubblePlace(steep, { markAzimuthDeg: 75, zeroRightMm: 0, zeroUpMm: 0 });
    expect(place.atTheWall).toBe(true);
    expect(place.northMm).toBeCloseTo(vialMm.bubbleRadius - vialMm.glassRadius, 9);
    expect(place.eastMm).toBeCloseTo(0, 9);
  });

  it('runs the same way over the ground whichever way a true vial is turned', () => {
    fc.assert(
      fc.property(smallTilt, markAzimuth, (tilt, markAzimuthDeg) => {
        const turned = bubblePlace(tilt, { markAzimuthDeg, zeroRightMm: 0, zeroUpMm: 0 });
        const straight = bubblePlace(tilt, { markAzimuthDeg: 0, zeroRightMm: 0, zeroUpMm: 0 });
        expect(turned.eastMm).toBeCloseTo(straight.eastMm, 9);
        expect(turned.northMm).toBeCloseTo(straight.northMm, 9);
      }),
    );
  });

  it('shows the tilt in the mean of its two places when an untrue vial is turned by 180°, and half the difference is its own', () => {
    const own = fc.double({ min: -0.8, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(smallTilt, markAzimuth, own, own, (tilt, markAzimuthDeg, right, up) => {
        const vial = { zeroRightMm: right, zeroUpMm: up };
        const one = bubblePlace(tilt, { ...vial, markAzimuthDeg });
        const other = bubblePlace(tilt, { ...vial, markAzimuthDeg: markAzimuthDeg + 180 });
        const truth = bubblePlace(tilt, { markAzimuthDeg, zeroRightMm: 0, zeroUpMm: 0 });
        fc.pre(!one.atTheWall && !other.atTheWall);
        expect((one.eastMm + other.eastMm) / 2).toBeCloseTo(truth.eastMm, 9);
        expect((one.northMm + other.northMm) / 2).toBeCloseTo(truth.northMm, 9);
        const [east, north] = [one.eastMm - other.eastMm, one.northMm - other.northMm];
        expect(Math.hypot(east, north) / 2).toBeCloseTo(Math.hypot(right, up), 9);
      }),
    );
  });

  it('read with its mark taken for north tells the azimuth less that of the mark', () => {
    const south = { east: 0, north: -0.05 };
    expect(tiltOf(slopeReadUnturned(south, 70)).risesTowardsDeg).toBeCloseTo(110, 9);
    expect(tiltOf(slopeReadUnturned(south, 70)).tiltDeg).toBeCloseTo(tiltOf(south).tiltDeg, 12);
  });
});
