import { describe, expect, it } from 'vitest';
import { eveningScenario, frameOf } from '@/tests/support/evening';
import { loadCatalogue } from '../content/sky-catalogue';
import type { SkyFrame } from '../sky/sky-frame';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import type { AnswerKeyStar, UnusableReason } from './answer-key';
import { answerKeyFor } from './answer-key-for';
import { jointMagnitude, mergedStarOf, mergedStars } from './merged-stars';
import { storedAnswerKey } from './stored-answer-key';

const catalogue = loadCatalogue();

function keyOf(changes: object = {}, frameChanges: Partial<SkyFrame> = {}) {
  const scenario = eveningScenario(changes);
  const frame = { ...frameOf(scenario), ...frameChanges };
  return answerKeyFor({ scenario, instant: frame.instant, frame, catalogue });
}

function named(stars: readonly AnswerKeyStar[], name: string): AnswerKeyStar {
  const star = stars.find((one) => one.name === name);
  if (star === undefined) throw new Error(`${name} is not listed`);
  return star;
}

const key = keyOf();
const codes = (star: AnswerKeyStar) => star.reasons.map((reason) => reason.code);

/** Sydney in May: the Centaur and the Cross stand high. */
const south = {
  place: { latitudeDeg: -34, longitudeDeg: 151 },
  timeZone: 'Australia/Sydney',
  localTime: '2026-05-05T21:00',
};

describe('close doubles', () => {
  it('α Centauri is one star of V −0.28 under the HIP number of its brighter component', () => {
    const star = mergedStarOf(catalogue, 71681);
    expect(star).toMatchObject({ hip: 71683, components: [71683, 71681], name: 'Rigil Kentaurus' });
    // Components −0.01 and 1.35: −2.5 log₁₀(10^0.004 + 10^−0.54).
    expect(star?.magnitude).toBeCloseTo(-0.283, 3);
    const { stars } = keyOf(south);
    expect(stars.filter(({ hip }) => hip === 71683 || hip === 71681)).toHaveLength(1);
    expect(named(stars, 'Rigil Kentaurus').usable).toBe(true);
    expect(named(stars, 'Rigil Kentaurus').cautions.map((c) => c.neighbour)).not.toContain(
      'hip-71681',
    );
  });

  it('Castor and Pollux, 4.5° apart, stay two', () => {
    expect(mergedStarOf(catalogue, 36850)?.components).toEqual([36850]);
    expect(mergedStarOf(catalogue, 37826)?.components).toEqual([37826]);
  });

  it('Mizar and Alcor, 12′ apart, stay two', () => {
    expect(mergedStarOf(catalogue, 65378)?.components).toEqual([65378]);
  });

  it('keep every star of the catalogue exactly once', () => {
    const all = mergedStars(catalogue).flatMap((star) => star.components);
    expect(new Set(all).size).toBe(catalogue.stars.length);
    expect(all).toHaveLength(catalogue.stars.length);
  });

  it('two equal stars together are 0.753 mag brighter than one', () => {
    expect(jointMagnitude([3, 3])).toBeCloseTo(3 - 2.5 * Math.log10(2), 12);
  });
});

describe('what makes a star unusable', () => {
  const reasonCases: [UnusableReason['code'], string, object][] = [
    ['too-faint', 'Albireo', {}],
    ['variable', 'Mira', {}],
    ['too-low', 'Betelgeuse', {}],
    ['too-high', 'Alpheratz', {}],
    ['behind-horizon', 'Vega', { horizon: [{ azimuthDeg: 0, altitudeDeg: 27 }] }],
    ['sky-too-bright', 'Markab', { sky: { darkestLimitMagnitude: 3 } }],
    ['behind-cloud', 'Vega', { clouds: [{ azimuthDeg: 298, altitudeDeg: 28, radiusDeg: 5 }] }],
  ];
  it.each(reasonCases)('%s: %s', (code, name, changes) => {
    const star = named(keyOf(changes).stars, name);
    expect(codes(star)).toEqual([code]);
    expect(star.usable).toBe(false);
  });

  it('no name: a star without IAU name or Bayer letter', () => {
    const nameless = key.stars.find(
      (star) => star.altitudeDeg > 30 && star.altitudeDeg < 60 && star.name.startsWith('HIP '),
    );
    expect(nameless && codes(nameless)).toContain('no-name');
  });

  it('near the Moon: within 5° of its centre, not beyond', () => {
    const { moon } = frameOf(eveningScenario());
    const vega = named(key.stars, 'Vega');
    const at = (altitudeDeg: number) => ({
      moon: { ...moon, azimuthDeg: vega.azimuthDeg, altitudeDeg },
    });
    expect(codes(named(keyOf({}, at(vega.altitudeDeg + 4.9)).stars, 'Vega'))).toEqual([
      'near-moon',
    ]);
    expect(codes(named(keyOf({}, at(vega.altitudeDeg + 5.1)).stars, 'Vega'))).toEqual([]);
  });

  it('limits are inclusive: a star exactly at the lowest altitude is usable', () => {
    const { altitudeDeg } = named(key.stars, 'Vega');
    const at = (lowestAltitudeDeg: number) =>
      named(keyOf({ settings: { lowestAltitudeDeg } }).stars, 'Vega').usable;
    expect(at(altitudeDeg)).toBe(true);
    expect(at(altitudeDeg + 1e-6)).toBe(false);
  });

  it('a bright star in daylight: the sky is too bright for all', () => {
    const { stars, pairs, nakedEyeLimit } = keyOf({ localTime: '2026-12-05T12:00' });
    expect(nakedEyeLimit).toBeLessThan(-3);
    expect(stars.every((star) => !star.usable)).toBe(true);
    expect(pairs).toEqual([]);
  });

  it('Betelgeuse varies, but not by so much that it is ruled out', () => {
    const later = keyOf({ localTime: '2026-12-05T23:30' });
    expect(named(later.stars, 'Betelgeuse').usable).toBe(true);
  });
});

describe('cautions', () => {
  const later = keyOf({ localTime: '2026-12-05T23:30' });

  it('Castor carries one for Pollux, which outshines it 4.5° away, Pollux one for Castor', () => {
    const castor = named(later.stars, 'Castor').cautions;
    expect(castor.map((caution) => caution.neighbourName)).toEqual(['Pollux']);
    // Separation by the catalogue's places, refraction aside: 4.51°.
    expect(castor[0]?.separationDeg).toBeCloseTo(4.51, 1);
    expect(castor[0]?.fainterByMagnitudes).toBeLessThan(0);
    const pollux = named(later.stars, 'Pollux').cautions;
    expect(pollux.map((caution) => caution.neighbourName)).toEqual(['Castor']);
    expect(pollux[0]?.fainterByMagnitudes).toBeCloseTo(0.42, 1);
  });

  it('Sirius and Vega carry none', () => {
    expect(named(key.stars, 'Vega').cautions).toEqual([]);
    expect(named(keyOf({ localTime: '2026-12-06T01:30' }).stars, 'Sirius').cautions).toEqual([]);
  });

  it('a planet beside a star is one, and only when it is up', () => {
    const { planets } = frameOf(eveningScenario());
    const vega = named(key.stars, 'Vega');
    const jupiter = { body: 'jupiter' as const, magnitude: -2.3, trueAltitudeDeg: 0 };
    const at = (azimuthDeg: number, altitudeDeg: number) => ({
      planets: [
        ...planets.filter(({ body }) => body !== 'jupiter'),
        { ...jupiter, azimuthDeg, altitudeDeg },
      ],
    });
    const near = named(keyOf({}, at(vega.azimuthDeg, vega.altitudeDeg + 9)).stars, 'Vega');
    expect(near.cautions).toMatchObject([{ neighbour: 'jupiter', neighbourName: 'Jupiter' }]);
    const far = named(keyOf({}, at(vega.azimuthDeg, vega.altitudeDeg + 11)).stars, 'Vega');
    expect(far.cautions).toEqual([]);
    const low = { settings: { lowestAltitudeDeg: 0, horizonMarginDeg: 0 } };
    const rasalhague = named(keyOf(low).stars, 'Altair');
    const set = keyOf(low, at(rasalhague.azimuthDeg, -1)).stars;
    expect(set.every((star) => star.cautions.every((c) => c.neighbour !== 'jupiter'))).toBe(true);
  });

  it('leave large-amplitude variables out', () => {
    expect(
      key.stars.every((star) =>
        star.cautions.every((caution) => caution.neighbour !== 'hip-10826'),
      ),
    ).toBe(true);
  });

  it('list the brightest first, all within 10° and less than 0.7 mag fainter', () => {
    for (const { cautions } of key.stars) {
      const order = cautions.map((caution) => caution.fainterByMagnitudes);
      expect(order).toEqual(order.toSorted((a, b) => a - b));
      expect(cautions.every((c) => c.separationDeg <= 10 && c.fainterByMagnitudes < 0.7)).toBe(
        true,
      );
    }
  });

  it('are mutual where two stars look equally bright to within 0.7 mag', () => {
    const byHip = new Map(key.stars.map((star) => [star.hip, star]));
    const bright = key.stars.filter((star) => star.magnitude < 3 && star.altitudeDeg > 10);
    for (const star of bright) {
      for (const caution of star.cautions) {
        if (Math.abs(caution.fainterByMagnitudes) >= 0.69) continue;
        const other = byHip.get(Number(caution.neighbour.replace('hip-', '')));
        expect(other?.cautions.some((back) => back.neighbour === `hip-${star.hip}`)).toBe(true);
      }
    }
  });
});

describe('the pairs', () => {
  it('are all pairs of usable stars, best first, the best one worth 100', () => {
    const usable = key.stars.filter((star) => star.usable);
    expect(key.pairs).toHaveLength((usable.length * (usable.length - 1)) / 2);
    for (const [i, pair] of key.pairs.entries()) {
      const next = key.pairs[i + 1];
      if (next === undefined) continue;
      expect(pair.hitRate).toBeGreaterThanOrEqual(next.hitRate);
      expect(pair.mark).toBeGreaterThanOrEqual(next.mark);
    }
    expect(key.pairs[0]?.mark).toBe(100);
    expect(key.pairs.at(-1)?.mark).toBe(50);
  });

  it('give the separation of the refracted directions', () => {
    const [pair] = key.pairs;
    const [a, b] = (pair?.stars ?? []).map((hip) => key.stars.find((star) => star.hip === hip));
    if (!pair || !a || !b) throw new Error('no pair');
    const apart = separationDeg(
      directionFromAzAlt(a.azimuthDeg, a.altitudeDeg),
      directionFromAzAlt(b.azimuthDeg, b.altitudeDeg),
    );
    expect(pair.separationDeg).toBeCloseTo(apart, 12);
  });
});

describe('the stored key', () => {
  it('keeps the pairs and every bright star, and leaves the faint ones', () => {
    const scenario = eveningScenario();
    const frame = frameOf(scenario);
    const stored = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
    expect(stored.pairs).toEqual(key.pairs);
    expect(stored.stars).toEqual(key.stars.filter((star) => star.magnitude <= 3.5));
    expect(JSON.stringify(stored).length).toBeLessThan(250_000);
  });
});
