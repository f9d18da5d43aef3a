import { describe, expect, it } from 'vitest';
import { loadCatalogue, loadKits, type Kit } from '@/lib/content/sky-catalogue';
import { answerKeyFor } from '@/lib/pointing/answer-key-for';
import { geometryFullMark, starMark } from '@/lib/pointing/pair-mark';
import { scenarioSchema } from '@/lib/pointing/scenario';
import { skyFrameAt } from '@/lib/sky/frame-at';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { randomFrom } from '@/lib/variants/random';

// Domain statement (computed with random skies and the default kits): "pairs less than 20° apart get
// no geometry marks in the median for Wren and Heron, pairs 60–120° apart almost all; a quarter of all
// pairs gets full geometry marks." Measured here over dark nights spread over the Earth and a year.
// The bounds sit a few standard errors off what 40 such nights gave, so that a change of defaults that
// makes every answer right (or wrong) fails. Owl's field is wide against its errors: there the quarter
// does not hold (64 % get full marks), and this is written down as measured.

const nights = randomNights(40);

type Distribution = {
  pairs: number;
  usable: number[];
  /** Share of all pairs with full geometry marks. */
  full: number;
  /** Geometry marks of the pairs at least `from` and less than `to` degrees apart. */
  marks: (from: number, to: number) => number[];
};

function distributionOf(kit: Kit): Distribution {
  const eyepiece = kit.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (eyepiece === undefined) throw new Error(`${kit.id} has no observing eyepiece`);
  const usable: number[] = [];
  const marked = nights.flatMap(({ place, frame }) => {
    const scenario = scenarioSchema.parse({
      place,
      localTime: '2026-01-01T00:00',
      timeZone: 'UTC',
      telescope: kit.telescope,
      eyepiece: {
        focalLengthMm: eyepiece.focalLengthMm,
        apparentFieldDeg: eyepiece.apparentFieldDeg,
      },
    });
    const key = answerKeyFor({
      scenario,
      instant: frame.instant,
      frame,
      catalogue: loadCatalogue(),
      faintestListed: scenario.settings.faintestMagnitude,
    });
    usable.push(key.stars.filter((star) => star.usable).length);
    return key.pairs.map((pair) => ({
      apart: pair.separationDeg,
      geometry: pair.mark - 2 * starMark,
    }));
  });
  return {
    pairs: marked.length,
    usable,
    full:
      marked.filter(({ geometry }) => geometry > geometryFullMark - 1e-6).length / marked.length,
    marks: (from, to) =>
      marked.filter(({ apart }) => apart >= from && apart < to).map(({ geometry }) => geometry),
  };
}

const distributions = new Map(loadKits().map((kit) => [kit.id, distributionOf(kit)]));

function of(id: string): Distribution {
  const found = distributions.get(id);
  if (found === undefined) throw new Error(`no kit ${id}`);
  return found;
}

describe('over forty random dark nights', () => {
  it('there are enough stars and pairs to speak of a distribution', () => {
    const { usable, pairs } = of('wren');
    expect(median(usable)).toBeGreaterThanOrEqual(20);
    expect(median(usable)).toBeLessThanOrEqual(33);
    expect(pairs).toBeGreaterThan(9_000);
  });

  it.each(['wren', 'heron', 'owl'])(
    '%s: pairs less than 20° apart earn nothing in the median',
    (id) => {
      expect(median(of(id).marks(0, 20))).toBe(0);
    },
  );

  it.each(['wren', 'heron', 'owl'])('%s: pairs 60–120° apart earn almost all', (id) => {
    const marks = of(id).marks(60, 120);
    expect(median(marks)).toBeGreaterThan(0.96 * geometryFullMark);
    expect(mean(marks)).toBeGreaterThan(0.88 * geometryFullMark);
  });

  it.each(['wren', 'heron'])('%s: about a quarter of all pairs earns full geometry marks', (id) => {
    expect(of(id).full).toBeGreaterThan(0.18);
    expect(of(id).full).toBeLessThan(0.3);
  });

  it('owl: about two thirds do, as its field forgives more than its mount errs', () => {
    expect(of('owl').full).toBeGreaterThan(0.55);
    expect(of('owl').full).toBeLessThan(0.72);
  });

  it.each(['wren', 'heron', 'owl'])('%s: not every answer is right', (id) => {
    const all = of(id).marks(0, 181);
    expect(mean(all)).toBeLessThan(0.85 * geometryFullMark);
    expect(mean(of(id).marks(20, 40))).toBeLessThan(mean(of(id).marks(60, 120)) - 15);
  });
});

function randomNights(count: number): { place: object; frame: SkyFrame }[] {
  const random = randomFrom('mark-distribution');
  const found: { place: object; frame: SkyFrame }[] = [];
  while (found.length < count) {
    // Evenly over the sphere between latitudes 64° south and north.
    const latitudeDeg = (Math.asin(random.between(-0.9, 0.9)) * 180) / Math.PI;
    const place = { latitudeDeg, longitudeDeg: random.between(-180, 180), elevationM: 0 };
    const instant = new Date(Date.UTC(2026, 0, 1) + random.between(0, 365) * 86_400_000);
    const frame = skyFrameAt({ instant, place });
    if (frame.sun.trueAltitudeDeg < -12) found.push({ place, frame });
  }
  return found;
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
