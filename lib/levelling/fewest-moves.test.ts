import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreesToRadians } from '../units/angle';
import { fewestMoves } from './fewest-moves';
import { legReaches } from './leg-to-move';
import { plainTripod, someTripod } from './some-tripod.fixture';
import { legIndices, slopeOf, startOf, tiltOfHead, type TripodSite } from './tripod';
import { replay, type TripodAction } from './tripod-actions';
import { vialShowsDeg } from './vial';

/** By a way of its own: opens, slides and locks each leg that moves. */
const carriedOut = (site: TripodSite, lengthsMm: readonly [number, number, number]) => {
  const actions = legIndices
    .filter((leg) => lengthsMm[leg] !== site.legs[leg].startMm)
    .flatMap((leg): TripodAction[] => [
      { do: 'open', leg },
      { do: 'slide', leg, toMm: lengthsMm[leg] },
      { do: 'lock', leg },
    ]);
  return replay(site, actions)?.at(-1);
};

describe('the fewest moves that level a head', () => {
  it('are none where it stands level, one in line with a leg, else two', () => {
    const count = (site: TripodSite) => fewestMoves(site, startOf(site))[0]?.legs.length;
    const on = (a: number, b: number, c: number): TripodSite => ({
      ...plainTripod,
      legs: [
        { ...plainTripod.legs[0], groundMm: a },
        { ...plainTripod.legs[1], groundMm: b },
        { ...plainTripod.legs[2], groundMm: c },
      ],
    });
    expect(count(on(7, 7, 7))).toBe(0);
    expect(count(on(0, 30, 0))).toBe(1);
    expect(count(on(0, 30, 15))).toBe(2);
    // Nobody can make up for 600 mm with legs of 500 mm.
    expect(count(on(0, 600, 15))).toBeUndefined();
  });

  it('take three where no leg stands at a height that both others reach', () => {
    const [a, b, c] = plainTripod.legs;
    // They reach 700–1200, 1190–1690 and 1000–1500 mm, and stand at 700, 1690 and 1500.
    const site: TripodSite = {
      ...plainTripod,
      legs: [
        { ...a, startMm: 700 },
        { ...b, groundMm: 490, startMm: 1200 },
        { ...c, groundMm: 300, startMm: 1200 },
      ],
    };
    const [only] = fewestMoves(site, startOf(site));
    expect(only).toEqual({ legs: [0, 1, 2], lengthsMm: [1200, 710, 900] });
  });

  it('really level it, within what the vial shows', () => {
    fc.assert(
      fc.property(someTripod, (site) => {
        for (const { lengthsMm, legs } of fewestMoves(site, startOf(site))) {
          const state = carriedOut(site, lengthsMm);
          expect(state?.moves).toBeLessThanOrEqual(legs.length);
          expect(state === undefined ? 9 : tiltOfHead(site, state).tiltDeg).toBeLessThanOrEqual(
            vialShowsDeg,
          );
        }
      }),
    );
  });

  it('are no more than two where no leg is near its end', () => {
    fc.assert(
      fc.property(someTripod, (site) => {
        const roomy = { ...site, legMinMm: 100, legMaxMm: 3000 };
        const [best] = fewestMoves(roomy, startOf(roomy));
        expect(best?.legs.length).toBeLessThanOrEqual(2);
      }),
    );
  });
});

describe('the leg to move first', () => {
  const leaning = (a: number, b: number, c: number): TripodSite => ({
    ...plainTripod,
    legs: [
      { ...plainTripod.legs[0], groundMm: a },
      { ...plainTripod.legs[1], groundMm: b },
      { ...plainTripod.legs[2], groundMm: c },
    ],
  });
  const best = (site: TripodSite) =>
    legReaches(site, startOf(site), slopeOf(site, startOf(site)))[0];

  it('is the high one taken in, where only that one is high', () => {
    expect(best(leaning(0, 30, 0))).toMatchObject({ leg: 1, toMm: 870 });
  });

  it('is the low one let out, where only that one is low', () => {
    expect(best(leaning(0, 0, -25))).toMatchObject({ leg: 2, toMm: 925 });
  });

  it('leaves the part of the slope across its own line, never more than half', () => {
    // The bubble is never more than 30° from the line of some leg: sin 30° of the slope is left.
    fc.assert(
      fc.property(someTripod, (site) => {
        const roomy = { ...site, legMinMm: 100, legMaxMm: 3000 };
        const state = startOf(roomy);
        const { tiltDeg } = tiltOfHead(roomy, state);
        const [reach] = legReaches(roomy, state, slopeOf(roomy, state));
        const slope = (deg: number) => Math.tan(degreesToRadians(deg));
        // A whole millimetre is 2/3r of slope; half of it is lost by rounding.
        expect(slope(reach?.tiltDeg ?? 90)).toBeLessThanOrEqual(
          slope(tiltDeg) / 2 + 1 / (3 * site.footCircleRadiusMm),
        );
      }),
    );
  });

  it('tells the tilt that the head then has', () => {
    fc.assert(
      fc.property(someTripod, (site) => {
        for (const { leg, toMm, tiltDeg } of legReaches(
          site,
          startOf(site),
          slopeOf(site, startOf(site)),
        )) {
          const lengths = legIndices.map((l) => (l === leg ? toMm : site.legs[l].startMm));
          const [a = 0, b = 0, c = 0] = lengths;
          const state = carriedOut(site, [a, b, c]);
          expect(state === undefined ? NaN : tiltOfHead(site, state).tiltDeg).toBeCloseTo(
            tiltDeg,
            6,
          );
        }
      }),
    );
  });
});
