import { beforeAll, describe, expect, it } from 'vitest';
import { skyLights } from '@/components/sky/sky-lights';
import { eveningJson } from '@/tests/support/evening';
import { loadCatalogue, loadSites } from '../content/sky-catalogue';
import { clearPairs, rightPairs } from '../grading/allowed-pairs';
import { gradePair } from '../grading/grade-pair';
import type { AnswerKey } from '../pointing/answer-key';
import { parseScenario } from '../pointing/parse-scenario';
import { scenarioSchema, type Scenario } from '../pointing/scenario';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { skyFrameAt } from '../sky/frame-at';
import { chanceScore } from './chance-score';
import { generatePairVariant } from './generate-pair-variant';
import { defaultWindowMinutes, difficultyHalfWidth } from './moved-evenings';
import { nightAt } from './night';
import { pairTemplates, type PairTemplate, type PairVariant } from './pair-variant';

const catalogue = loadCatalogue();
const site = loadSites().find(({ id }) => id === 'school-yard');
const evenings: Scenario[] = [
  eveningJson,
  {
    ...eveningJson,
    place: { latitudeDeg: 52.5, longitudeDeg: 13.4 },
    timeZone: 'Europe/Berlin',
    localTime: '2027-02-12T20:15',
  },
  {
    ...eveningJson,
    place: { latitudeDeg: -33.9, longitudeDeg: 151.2 },
    timeZone: 'Australia/Sydney',
    localTime: '2027-05-05T20:00',
  },
  {
    ...eveningJson,
    place: { latitudeDeg: 1.3, longitudeDeg: 103.8 },
    timeZone: 'Asia/Singapore',
    localTime: '2027-08-05T21:00',
  },
  { ...eveningJson, horizon: site?.horizon ?? [] },
].map((json) => scenarioSchema.parse(json));

type Made = { asked: PairTemplate; base: Scenario; variant: PairVariant; key: AnswerKey };

function make(seed: string, scenario: Scenario, templates: readonly PairTemplate[]): PairVariant {
  return generatePairVariant({ seed, scenario, templates, catalogue });
}
const keyOf = (variant: PairVariant) =>
  storedAnswerKey({
    scenario: variant.scenario,
    instant: variant.frame.instant,
    frame: variant.frame,
    catalogue,
  });

/** What blind picking earns in the variant's task, on the sky of a scenario. */
function chanceOf({ givenHip, proposals }: PairVariant, scenario: Scenario): number {
  const parsed = parseScenario(scenario);
  if (!parsed.ok) throw new Error('not a scenario');
  const { night } = nightAt(scenario, parsed.instant, catalogue);
  const offered = (hip: number) => proposals?.includes(hip) ?? true;
  return chanceScore(
    proposals === null ? night.tempting : night.stars.filter((star) => offered(star.hip)),
    night.pairs.filter(
      ({ stars }) => stars.every(offered) && (givenHip === null || stars.includes(givenHip)),
    ),
    givenHip,
  );
}

const perTemplate = 8;
let made: Made[] = [];
beforeAll(() => {
  made = evenings.flatMap((base, place) =>
    pairTemplates.flatMap((asked) =>
      Array.from({ length: perTemplate }, (_, i) => {
        const variant = make(`${place}/${asked}/${i}`, base, [asked]);
        return { asked, base, variant, key: keyOf(variant) };
      }),
    ),
  );
}, 240_000);

describe('variants of clear dark evenings on five places (200 seeds)', () => {
  it('are of the template that was asked for, apart from a bank of cloud that finds nothing to hide', () => {
    const changed = made.filter(({ asked, variant }) => asked !== variant.template);
    expect(changed.every(({ asked }) => asked === 'cloud-bank')).toBe(true);
    expect(changed.length).toBeLessThanOrEqual(0.05 * made.length);
  });

  it('lie within the window, on their own wall clock', () => {
    for (const { base, variant } of made) {
      const parsed = parseScenario(variant.scenario);
      const original = parseScenario(base);
      if (!parsed.ok || !original.ok) throw new Error('a variant is no scenario');
      expect(parsed.instant).toBe(variant.frame.instant);
      const minutes = (Date.parse(parsed.instant) - Date.parse(original.instant)) / 60_000;
      expect(Math.abs(minutes)).toBeLessThanOrEqual(defaultWindowMinutes);
      expect(Number.isInteger(minutes)).toBe(true);
    }
  });

  it('carry the sky of their own instant and place', () => {
    for (const { variant } of made.slice(0, 10)) {
      const frame = skyFrameAt({ instant: variant.frame.instant, place: variant.scenario.place });
      expect(variant.frame).toEqual(frame);
      expect(keyOf(variant).nakedEyeLimit).toBe(variant.nakedEyeLimit);
    }
  });

  it('have a right pair worth full marks, unless nothing will do', () => {
    for (const { variant, key } of made) {
      const [best] = rightPairs(variant, key);
      if (variant.template === 'none-usable') {
        expect(best).toBeUndefined();
        continue;
      }
      if (best === undefined) throw new Error('nothing right to choose');
      const stars = best.stars.map((hip) => {
        const star = key.stars.find((one) => one.hip === hip);
        return { hip, lookAlike: star?.cautions[0]?.neighbour ?? null };
      });
      const [one, other] = stars;
      if (one === undefined || other === undefined) throw new Error('a pair has two stars');
      const graded = gradePair({
        variant,
        answerKey: key,
        submission: { kind: 'pair', stars: [one, other] },
        catalogue,
      });
      expect(graded.ok && graded.result.total).toBe(100);
    }
  });

  it('have no look-alike of a usable star that the lab does not show: each can be named', () => {
    let looked = 0;
    for (const { variant, key } of made) {
      const { horizon, clouds, sky } = variant.scenario;
      const { frame, nakedEyeLimit } = variant;
      const { extinction } = sky;
      const lights = skyLights({ catalogue, frame, horizon, clouds, nakedEyeLimit, extinction });
      const shown = new Set(lights.map((light) => light.id));
      const neighbours = key.stars
        .filter((star) => star.usable)
        .flatMap((star) => star.cautions.map((caution) => caution.neighbour));
      expect(neighbours.filter((id) => !shown.has(id))).toEqual([]);
      looked += neighbours.length;
    }
    expect(looked).toBeGreaterThan(made.length);
  }, 60_000);

  it('have something tempting and wrong', () => {
    for (const { variant, key } of made) {
      const { faintestMagnitude } = variant.scenario.settings;
      const tempting = key.stars.filter(
        (star) => !star.usable && star.altitudeDeg > 0 && star.magnitude <= faintestMagnitude,
      );
      const weak = key.pairs.filter((pair) => pair.mark < 75);
      expect(tempting.length + weak.length).toBeGreaterThan(0);
    }
  });

  it('where nothing will do, not even the dead band makes a pair, and stars are to be seen', () => {
    const none = made.filter(({ variant }) => variant.template === 'none-usable');
    expect(none.length).toBeGreaterThanOrEqual(evenings.length * perTemplate);
    for (const { variant, key } of none) {
      const graded = gradePair({
        variant,
        answerKey: key,
        submission: { kind: 'none-usable' },
        catalogue,
      });
      expect(graded.ok && graded.result.total).toBe(100);
      expect(key.stars.filter((star) => star.usable).length).toBeLessThanOrEqual(1);
      const open = key.stars.filter(
        (star) =>
          star.altitudeDeg > 0 &&
          star.reasons.every(({ code }) => code !== 'behind-cloud' && code !== 'behind-horizon'),
      );
      expect(open.length).toBeGreaterThanOrEqual(2);
    }
    const passing = none.filter(({ key }) => key.stars.some((star) => star.usable)).length;
    expect(passing).toBeGreaterThan(0);
    expect(passing).toBeLessThan(none.length);
  });

  it('with a bank of cloud, the best pair of the clear evening is hidden', () => {
    for (const { base, variant, key } of made) {
      if (variant.template !== 'cloud-bank') continue;
      const clear = keyOf({ ...variant, scenario: { ...variant.scenario, clouds: base.clouds } });
      const hidden = clear.pairs[0]?.stars.some(
        (hip) => key.stars.find((star) => star.hip === hip)?.usable === false,
      );
      expect(hidden).toBe(true);
      expect(variant.scenario.clouds.length).toBeLessThanOrEqual(40);
    }
  });

  it('give a usable star that has a good partner and a poor one', () => {
    for (const { variant, key } of made) {
      if (variant.template !== 'partner') continue;
      const given = key.stars.find((star) => star.hip === variant.givenHip);
      expect(given?.usable).toBe(true);
      const partners = rightPairs(variant, key);
      const best = partners[0]?.hitRate ?? 0;
      expect(best).toBeGreaterThanOrEqual(0.9 * (key.pairs[0]?.hitRate ?? 1));
      expect(partners.some((pair) => pair.hitRate < 0.75 * best)).toBe(true);
    }
  });

  it('propose six to eight stars, some that will not do, never the good pair first', () => {
    for (const { variant, key } of made) {
      if (variant.template !== 'mount-proposes') continue;
      const proposals = variant.proposals ?? [];
      expect(proposals.length).toBeGreaterThanOrEqual(6);
      expect(proposals.length).toBeLessThanOrEqual(8);
      expect(new Set(proposals).size).toBe(proposals.length);
      const stars = proposals.map((hip) => key.stars.find((star) => star.hip === hip));
      expect(stars.every((star) => star !== undefined && star.altitudeDeg > 0)).toBe(true);
      expect(stars.some((star) => star?.usable === false)).toBe(true);
      const best = rightPairs(variant, key)[0];
      expect(best?.mark).toBe(100);
    }
  });

  it('are about as hard as each other: what blind picking earns stays in one window', () => {
    const targets = new Map(evenings.map((base) => [base, chanceOf(make('', base, []), base)]));
    for (const { base, variant } of made) {
      if (variant.template === 'none-usable') continue;
      const off = chanceOf(variant, variant.scenario) - (targets.get(base) ?? NaN);
      // The evening itself is the middle of the window, its half width the generator's own.
      expect(Math.abs(off)).toBeLessThanOrEqual(difficultyHalfWidth + 1e-9);
    }
  }, 60_000);

  it('say none in none but the none-usable ones, even with every limit moved', () => {
    const right = made.filter(({ variant }) => variant.template !== 'none-usable');
    const onTheEdge = right.filter(({ variant, key }) => clearPairs(variant, key).length === 0);
    expect(onTheEdge).toEqual([]);
  });
});

describe('the generator', () => {
  const [evening] = evenings;
  if (evening === undefined) throw new Error('no evening');

  it('makes the same variant from the same seed and others from others', () => {
    const one = make('5f3a', evening, pairTemplates);
    expect(make('5f3a', evening, pairTemplates)).toEqual(one);
    const others = Array.from({ length: 12 }, (_, i) => make(`seed ${i}`, evening, pairTemplates));
    expect(new Set(others.map((v) => v.frame.instant + v.template)).size).toBeGreaterThan(8);
    expect(new Set(others.map((v) => v.template)).size).toBeGreaterThanOrEqual(3);
  }, 60_000);

  it('does not let one copied answer serve a class', () => {
    const best = Array.from({ length: 12 }, (_, i) => {
      const variant = make(`pupil ${i}`, evening, pairTemplates);
      return rightPairs(variant, keyOf(variant))[0]?.stars.toSorted().join('+') ?? 'none';
    });
    expect(new Set(best).size).toBeGreaterThanOrEqual(5);
  }, 60_000);

  it('says that it became "none will do" where the Sun is up', () => {
    const noon = scenarioSchema.parse({ ...eveningJson, localTime: '2026-12-05T12:00' });
    for (const asked of pairTemplates) {
      expect(make('noon', noon, [asked]).template).toBe('none-usable');
    }
  }, 60_000);

  it('keeps the teacher’s clouds in every variant', () => {
    const clouds = [{ azimuthDeg: 180, altitudeDeg: 30, radiusDeg: 15 }];
    const cloudy = scenarioSchema.parse({ ...eveningJson, clouds });
    for (const asked of pairTemplates) {
      expect(make('clouds', cloudy, [asked]).scenario.clouds).toEqual(
        expect.arrayContaining(clouds),
      );
    }
  }, 60_000);

  it('writes the offset where the moved hour comes twice', () => {
    const twice = scenarioSchema.parse({ ...eveningJson, localTime: '2026-11-01T00:45' });
    for (let i = 0; i < 12; i++) {
      const variant = make(`autumn ${i}`, twice, ['free-pair']);
      const parsed = parseScenario(variant.scenario);
      expect(parsed.ok && parsed.instant).toBe(variant.frame.instant);
    }
  }, 60_000);
});
