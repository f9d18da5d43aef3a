import fc from 'fast-check';
import type { LegSite, TripodSite } from './tripod';

const firm = (azimuthDeg: number): LegSite => ({
  azimuthDeg,
  groundMm: 0,
  sinksMm: 0,
  startMm: 900,
});

/** For tests: three equal legs on firm, level ground, straight down, so that a millimetre is a millimetre. */
export const plainTripod: TripodSite = {
  footCircleRadiusMm: 450,
  splayDeg: 0,
  legMinMm: 700,
  legMaxMm: 1200,
  legs: [firm(0), firm(120), firm(240)],
  vial: { markAzimuthDeg: 0, zeroRightMm: 0, zeroUpMm: 0 },
  armTurns: false,
};

const someLeg = fc.record({
  groundMm: fc.double({ min: -60, max: 60, noNaN: true }),
  sinksMm: fc.integer({ min: 0, max: 20 }),
  startMm: fc.integer({ min: 800, max: 1100 }),
});

/** Any tripod on any ground. */
export const someTripod: fc.Arbitrary<TripodSite> = fc
  .record({
    turnDeg: fc.double({ min: 0, max: 360, noNaN: true }),
    splayDeg: fc.double({ min: 10, max: 35, noNaN: true }),
    footCircleRadiusMm: fc.double({ min: 300, max: 700, noNaN: true }),
    legs: fc.tuple(someLeg, someLeg, someLeg),
  })
  .map(({ turnDeg, legs: [a, b, c], ...site }) => ({
    ...plainTripod,
    ...site,
    legs: [
      { ...a, azimuthDeg: turnDeg },
      { ...b, azimuthDeg: turnDeg + 120 },
      { ...c, azimuthDeg: turnDeg + 240 },
    ],
  }));
