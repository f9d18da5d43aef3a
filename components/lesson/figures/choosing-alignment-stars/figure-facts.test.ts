import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pairWorthDirect } from '@/lib/pointing/pair-worth-direct';
import { directionFromAzAlt, azAltFromDirection, type Vector3 } from '@/lib/units/vector';
import { altitudeFacts, azimuthRateDegPerHour } from './altitude-facts';
import { pairFacts, type PointingKit } from './pair-facts';
import { discPoint, discPosition } from '../sky-disc';

/** Wren, as in the kits of the product: 80 mm, f/6.25, observing with 9 mm of 50°. */
const wren: PointingKit = {
  telescope: {
    focalLengthMm: 500,
    apertureMm: 80,
    computer: 'solved-zero',
    centringArcmin: 7.5,
    altitudeZeroArcmin: 30,
    coneArcmin: 8,
    axisSkewArcmin: 4,
  },
  fieldRadiusArcmin: 27,
};
const at = (azimuthDeg: number, altitudeDeg: number) => ({ azimuthDeg, altitudeDeg });

describe('the figure of separation and hit rate', () => {
  it('shows what the direct sum over the grid gives', () => {
    const stars = [at(100, 40), at(160, 40)] as const;
    const facts = pairFacts(wren, stars);
    const direct = pairWorthDirect(wren.telescope, wren.fieldRadiusArcmin, ...stars);
    expect(facts.hits).toBeCloseTo(100 * direct.hitRate, 6);
    expect(facts.expectedErrorArcmin).toBeCloseTo(direct.expectedErrorArcmin ?? Number.NaN, 6);
  });

  it('gets better as two stars at 40° move apart, from 10° to 120° of azimuth', () => {
    const hits = [10, 30, 60, 90, 120].map(
      (gap) => pairFacts(wren, [at(100, 40), at(100 + gap, 40)]).hits,
    );
    expect([...hits].sort((a, b) => a - b)).toEqual(hits);
    expect(hits[0]).toBeLessThan(20);
    expect(hits.at(-1)).toBeGreaterThan(95);
  });

  it('leaves one star straight above the other undetermined, and shows no target as likely', () => {
    const facts = pairFacts(wren, [at(120, 25), at(120, 65)]);
    expect(facts.expectedErrorArcmin).toBeNull();
    expect(facts.hits).toBe(0);
    expect(facts.targets.length).toBeGreaterThan(100);
    expect(facts.targets.every(({ likely }) => !likely)).toBe(true);
    expect(facts.advice).toContain('One above the other');
  });

  it('fills about as many dots as the hit rate says', () => {
    const facts = pairFacts(wren, [at(110, 35), at(235, 45)]);
    const share = facts.targets.filter(({ likely }) => likely).length / facts.targets.length;
    expect(share).toBeGreaterThan(0.95);
    const poor = pairFacts(wren, [at(150, 40), at(180, 40)]);
    const poorShare = poor.targets.filter(({ likely }) => likely).length / poor.targets.length;
    expect(poorShare).toBeLessThan(0.6);
    expect(poorShare).toBeGreaterThan(0.2);
  });

  it.each([
    ['too low', [at(100, 10), at(220, 40)], 'below two fists'],
    ['too high', [at(100, 75), at(220, 40)], 'above seven fists'],
    ['too close', [at(100, 40), at(115, 40)], 'Too close'],
    ['good', [at(110, 35), at(235, 45)], 'A good pair'],
  ] as const)('says when a pair is %s', (_, stars, words) => {
    expect(pairFacts(wren, stars).advice).toContain(words);
  });
});

describe('the sky as a disc', () => {
  it('has the zenith in the middle, north up and east on the left', () => {
    expect(Math.hypot(discPoint(at(77, 90)).x, discPoint(at(77, 90)).y)).toBeCloseTo(0, 10);
    expect(discPoint(at(0, 0)).y).toBeCloseTo(-100, 10);
    expect(discPoint(at(90, 0)).x).toBeCloseTo(-100, 10);
  });

  it('leads back to the same direction', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 359.99, noNaN: true }),
        fc.double({ min: 0, max: 89.9, noNaN: true }),
        (azimuthDeg, altitudeDeg) => {
          const back = discPosition(discPoint({ azimuthDeg, altitudeDeg }));
          expect(back.altitudeDeg).toBeCloseTo(altitudeDeg, 8);
          const turn = Math.abs(back.azimuthDeg - azimuthDeg);
          expect(Math.min(turn, 360 - turn)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('brings a finger outside the rim back to the horizon', () => {
    expect(discPosition({ x: -300, y: 0 })).toEqual({ azimuthDeg: 90, altitudeDeg: 0 });
  });
});

/** A direction after the sky has turned by an angle about the pole of a northern latitude. */
function turned(u: Vector3, latitudeDeg: number, angle: number): Vector3 {
  const latitude = (latitudeDeg * Math.PI) / 180;
  const k: Vector3 = [0, Math.cos(latitude), Math.sin(latitude)];
  const dot = k[0] * u[0] + k[1] * u[1] + k[2] * u[2];
  const cross: Vector3 = [
    k[1] * u[2] - k[2] * u[1],
    k[2] * u[0] - k[0] * u[2],
    k[0] * u[1] - k[1] * u[0],
  ];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const part = (i: 0 | 1 | 2) => u[i] * c + cross[i] * s + k[i] * dot * (1 - c);
  return [part(0), part(1), part(2)];
}

describe('the figure of altitude limits', () => {
  it.each([
    [52, 20],
    [52, 80],
    [40, 65],
    [10, 45],
  ])('swings at latitude %i° and altitude %i° as a turned sky does', (latitudeDeg, altitudeDeg) => {
    // The sky turns from east to west: clockwise about the northern pole as seen from inside.
    const step = 1e-5;
    const after = azAltFromDirection(
      turned(directionFromAzAlt(180, altitudeDeg), latitudeDeg, -step),
    );
    const rate = ((after.azimuthDeg - 180) / ((step * 180) / Math.PI)) * 15.041;
    expect(azimuthRateDegPerHour(latitudeDeg, altitudeDeg)).toBeCloseTo(rate, 2);
  });

  it('is the same south of the equator', () => {
    expect(azimuthRateDegPerHour(-35, 60)).toBe(azimuthRateDegPerHour(35, 60));
  });

  it('makes 10° of azimuth 9.3955° wide at 20° up and 1.7343° at 80°', () => {
    // design check values: great-circle separation of two directions 10° apart in azimuth
    expect(altitudeFacts(20, 52).widthOf10Deg).toBeCloseTo(9.3955, 4);
    expect(altitudeFacts(80, 52).widthOf10Deg).toBeCloseTo(1.7343, 4);
  });

  it('has the air mass of Kasten & Young 1989 at 30°: 1.99', () => {
    expect(altitudeFacts(30, 52).airMass).toBeCloseTo(1.99, 2);
  });

  it('takes nothing more at the zenith and most of the light near the horizon', () => {
    expect(altitudeFacts(90, 52).lightPercent).toBeCloseTo(100, 1);
    expect(altitudeFacts(5, 52).lightPercent).toBeLessThan(15);
  });

  it('calls 20° to 70° good and nothing else', () => {
    expect(altitudeFacts(19.9, 52).verdict).toBe('too-low');
    expect(altitudeFacts(20, 52).verdict).toBe('good');
    expect(altitudeFacts(70, 52).verdict).toBe('good');
    expect(altitudeFacts(70.1, 52).verdict).toBe('too-high');
  });
});
