import { beforeAll, describe, expect, it } from 'vitest';
import { eveningScenario } from '@/tests/support/evening';
import { randomRunNights, type RunNight } from '@/tests/support/run-nights';
import { resultOf } from '@/tests/support/run-robot';
import { perfectLog } from '../alignment/perfect-operator';
import type { RunAction, RunLog } from '../alignment/run-log';
import type { RunSetup } from '../alignment/setup';
import { loadCatalogue, loadKits } from '../content/sky-catalogue';
import { mergedStarOf } from '../pointing/merged-stars';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import { generateRunVariant } from '../variants/generate-run-variant';
import { runKitOf } from '../variants/run-kit';
import { runTemplates, type RunVariant } from '../variants/run-variant';
import { gradeRun } from './grade-run';
import { runGrader, runGraderVersion } from './graders';
import type { RunCriterion, RunResult } from './run-result';

let nights: RunNight[] = [];
beforeAll(() => {
  nights = [
    ...randomRunNights('slips north', 18, [0, 70]),
    ...randomRunNights('slips south', 18, [-70, 0]),
  ];
}, 60_000);

const one = (): RunNight => {
  const [night] = nights;
  if (night === undefined) throw new Error('no night');
  return night;
};
const withVariant = (night: RunNight, change: Partial<RunVariant>): RunNight => {
  const variant = { ...night.variant, ...change };
  return { ...night, variant, input: { ...variant, catalogue: night.input.catalogue } };
};
const withSetup = (night: RunNight, change: Partial<RunSetup>): RunNight =>
  withVariant(night, { setup: { ...night.variant.setup, ...change } });
const share = (result: RunResult, id: RunCriterion['id']): number => {
  const found = result.criteria.find((criterion) => criterion.id === id);
  if (found === undefined) throw new Error(`no criterion ${id}`);
  return found.earned / found.possible;
};
const mark = ({ variant, answerKey, input }: RunNight, log: RunLog) =>
  gradeRun({ variant, answerKey, submission: { log: [...log] }, catalogue: input.catalogue });
const placed = ({ azimuthDeg, altitudeDeg }: { azimuthDeg: number; altitudeDeg: number }) =>
  directionFromAzAlt(azimuthDeg, altitudeDeg);

describe('a robot that centres the brightest planet', () => {
  it('is told which planet it was, at which star', () => {
    let told = 0;
    nights.forEach((night, i) => {
      const [planet] = night.variant.frame.planets
        .filter(({ altitudeDeg }) => altitudeDeg > 15 && altitudeDeg < 80)
        .sort((a, b) => a.magnitude - b.magnitude);
      if (planet === undefined || planet.magnitude > 1.5) return;
      const which = i % 2 === 0 ? 1 : 2;
      const slip = { instead: { planet: planet.body } };
      const result = resultOf(night, which === 1 ? { first: slip } : { second: slip });
      const star = result.stars[which - 1];
      expect(star).toMatchObject({ reallyId: planet.body, right: false });
      expect(star?.offsetArcmin).toBeLessThan(1);
      const name = mergedStarOf(night.input.catalogue, night.best[which - 1] ?? 0)?.name;
      expect(result.advice).toEqual({
        code: 'planet-for-star',
        which,
        planet: planet.body.charAt(0).toUpperCase() + planet.body.slice(1),
        name,
      });
      expect(share(result, which === 1 ? 'first-star' : 'second-star')).toBe(0);
      expect(share(result, which === 1 ? 'first-centring' : 'second-centring')).toBe(0);
      expect(share(result, which === 1 ? 'second-star' : 'first-star')).toBe(1);
      told++;
    });
    expect(told).toBeGreaterThan(10);
  });
});

describe('a robot that centres the wrong star', () => {
  it('is told which star it was and how far from the one it meant', () => {
    let told = 0;
    nights.forEach((night, i) => {
      const { answerKey, best, input } = night;
      const others = answerKey.stars.filter(({ usable, hip }) => usable && !best.includes(hip));
      const other = others[i % others.length];
      const meant = answerKey.stars.find(({ hip }) => hip === best[0]);
      if (meant === undefined) throw new Error('the best pair is not in the key');
      if (other === undefined) return;
      told++;
      const result = resultOf(night, { first: { instead: { hip: other.hip } } });
      expect(result.advice).toMatchObject({
        code: 'wrong-star',
        which: 1,
        reallyName: other.name,
        name: mergedStarOf(input.catalogue, best[0])?.name,
      });
      const apart = result.advice.code === 'wrong-star' ? result.advice.separationDeg : NaN;
      // Refraction alone has changed between them since the run began.
      expect(Math.abs(apart - separationDeg(placed(other), placed(meant)))).toBeLessThan(0.05);
      expect(result.stars[0]).toMatchObject({ reallyId: `hip-${other.hip}`, right: false });
      expect(share(result, 'first-star') + share(result, 'first-centring')).toBe(0);
      // The chosen pair was not aligned on; and a run without an alignment stays below the usual pass mark.
      expect(share(result, 'pair')).toBe(0);
      expect(result.total).toBeLessThan(70);
    });
    // A sky with two usable stars and no third is rare.
    expect(told).toBeGreaterThan(nights.length - 4);
  });
});

describe('a robot that stops off by half a field', () => {
  it('is told by how much, and that it was the right star', () => {
    nights.forEach((night, i) => {
      const result = resultOf(night, {
        second: { offByShareOfField: 0.5, offTowardsDeg: (i * 360) / nights.length },
      });
      const [, star] = result.stars;
      expect(star).toMatchObject({ right: true });
      // Half of the way from the middle to the edge costs (0.5 − 0.2) / 0.8 of the centring's mark.
      expect(share(result, 'second-centring')).toBeCloseTo(1 - 0.3 / 0.8, 2);
      expect(share(result, 'first-centring')).toBe(1);
      expect((star?.offsetArcmin ?? 0) / (star?.fieldRadiusArcmin ?? 1)).toBeCloseTo(0.5, 2);
      expect(share(result, 'judgement')).toBe(1);
      expect(result.advice).toMatchObject({ code: 'off-centre', which: 2 });
      const told = result.advice.code === 'off-centre' ? result.advice.shareOfRadius : NaN;
      expect(told).toBeCloseTo(0.5, 2);
    });
  });

  it('places the star on the sky where it stands beside the tube', () => {
    const result = resultOf(one(), { first: { offByShareOfField: 0.5, offTowardsDeg: 90 } });
    const [star] = result.stars;
    // The tube went to the right of the star: the star stands to its left.
    expect(star?.offsetOnSky?.rightArcmin).toBeLessThan(-0.45 * (star?.fieldRadiusArcmin ?? 0));
  });

  it('has nothing in the eyepiece three fields away, where nothing else is as bright', () => {
    const empty = nights
      .map((night) => resultOf(night, { first: { offByShareOfField: 3 } }))
      .filter(({ stars }) => stars[0]?.reallyId === null);
    expect(empty.length).toBeGreaterThan(nights.length / 2);
    for (const { advice, stars } of empty) {
      expect(advice).toMatchObject({ code: 'empty-field', which: 1, name: stars[0]?.name });
      expect((stars[0]?.offsetArcmin ?? 0) / (stars[0]?.fieldRadiusArcmin ?? 1)).toBeCloseTo(3, 1);
    }
  });
});

describe('the final approach', () => {
  it('left out costs what the play is worth in the eyepiece, and is named', () => {
    const owl = nights.find(({ variant }) => variant.kit.name === 'Owl');
    if (owl === undefined) throw new Error('no night with Owl');
    const night = withSetup(owl, { backlashArcmin: { azimuth: 12, altitude: 12 } });
    const result = resultOf(night, { first: { againstFinalApproach: true } });
    const [first, second] = result.stars;
    expect(first?.finalApproachKept).toBe(false);
    expect(first?.offsetArcmin).toBeLessThan(1);
    // 12′ in altitude, and 12′ in azimuth less its cosine, of a field that reaches 27.5′.
    expect(first?.backlashArcmin).toBeGreaterThan(12);
    expect(first?.backlashArcmin).toBeLessThan(12 * Math.SQRT2);
    const lost = ((first?.backlashArcmin ?? 0) / (first?.fieldRadiusArcmin ?? 1) - 0.2) / 0.8;
    expect(share(result, 'first-centring')).toBeCloseTo(1 - lost, 1);
    expect(second?.finalApproachKept).toBe(true);
    expect(share(result, 'second-centring')).toBe(1);
    expect(share(result, 'judgement')).toBe(1);
    expect(result.advice).toMatchObject({ code: 'final-approach', which: 1 });
  });
});

describe('the start position', () => {
  it.each([
    { azimuth: 5, altitude: 2, earned: 1 },
    { azimuth: -10, altitude: 0, earned: 0.5 },
    { azimuth: 0, altitude: -4, earned: 0.5 },
    { azimuth: 10, altitude: 5, earned: 0.25 },
    { azimuth: -16, altitude: 0, earned: 0 },
  ])('off by $azimuth° and $altitude° earns $earned', ({ earned, ...startErrorDeg }) => {
    const night = withSetup(one(), {
      errors: { ...one().variant.setup.errors, altitudeZeroDeg: 0 },
    });
    const result = resultOf(night, { startErrorDeg });
    expect(share(result, 'start-position')).toBeCloseTo(earned, 9);
    expect(result.start.azimuthErrorDeg).toBeCloseTo(startErrorDeg.azimuth, 9);
    expect(result.start.altitudeErrorDeg).toBe(startErrorDeg.altitude);
  });

  it('by the needle as it stands is told to mind the declination', () => {
    const night = withSetup(one(), { declinationDeg: -12 });
    expect(resultOf(night, { startErrorDeg: { azimuth: -12, altitude: 0 } }).advice).toEqual({
      code: 'start-by-compass',
      declinationDeg: -12,
    });
    expect(resultOf(night, { startErrorDeg: { azimuth: 12, altitude: 0 } }).advice).toMatchObject({
      code: 'start-position',
      azimuthErrorDeg: 12,
    });
  });
});

describe('the judgement', () => {
  it('of a good alignment earns nothing when it is doubted', () => {
    const result = resultOf(one(), { trust: false });
    expect(result.judgement).toEqual({ trusted: false, deserved: 'trust' });
    expect(share(result, 'judgement')).toBe(0);
    expect(result.advice).toEqual({
      code: 'doubted-a-good-one',
      hitRate: result.achievedHitRate,
    });
  });

  it('of a bad one earns nothing when it is trusted, and all when it is doubted', () => {
    const slip = { offByShareOfField: 0.95 };
    const bad = nights.find(
      (night) => resultOf(night, { first: slip, trust: false }).judgement?.deserved === 'doubt',
    );
    if (bad === undefined) throw new Error('nothing spoils an alignment');
    const doubted = resultOf(bad, { first: slip, trust: false });
    const trusted = resultOf(bad, { first: slip, trust: true });
    expect(share(doubted, 'judgement')).toBe(1);
    expect(share(trusted, 'judgement')).toBe(0);
    expect(trusted.advice).toMatchObject({ code: 'trusted-a-bad-one' });
    expect(trusted.achievedHitRate ?? 0).toBeLessThan(0.4 * (trusted.perfectHitRate ?? 0));
  });
});

// By hand: go-tos near the slipped star miss by the slip, those near the other by nothing, and between
// them by what lies between. Wren centres in a field that reaches 75′ and observes in one of 27′, Owl
// uses one of 27.5′ for both.
describe('what an alignment deserves after a slip', () => {
  const nightWith = (name: string): RunNight => {
    const night = nights.find(
      ({ variant: { kit, scenario } }) =>
        kit.name === name && scenario.telescope.computer === 'solved-zero',
    );
    if (night === undefined) throw new Error(`no night with ${name}`);
    return night;
  };

  it.each([
    ['Wren', 'none at all', {}, 'trust'],
    ['Wren', '7.5′: less than the observing field everywhere', 0.1, 'trust'],
    ['Wren', '71′: 27′ of that, 0.38, are in the field', 0.95, 'doubt'],
    ['Owl', '14′: less than the observing field everywhere', 0.5, 'trust'],
    ['Owl', '26′: still less than the observing field', 0.95, 'trust'],
  ] as const)('with %s, of %s', (name, _, slip, deserved) => {
    const first = typeof slip === 'number' ? { offByShareOfField: slip } : {};
    expect(resultOf(nightWith(name), { first, trust: true }).judgement).toEqual({
      trusted: true,
      deserved,
    });
  });

  it('of a star many degrees from the one that was meant is doubt: the two cannot agree', () => {
    const night = nightWith('Wren');
    const [first, second] = night.best;
    // Both stand on the second: nothing like the angle between them is left.
    const result = resultOf(night, { first: { instead: { hip: second } }, trust: true });
    expect(first).not.toBe(second);
    expect(result.outcome?.kind).not.toBe('agree');
    expect(result.judgement).toEqual({ trusted: true, deserved: 'doubt' });
    expect(share(result, 'judgement')).toBe(0);
  });
});

describe('the pair', () => {
  it('costs its part when two neighbours are taken, and is told by hit rates', () => {
    const { answerKey } = one();
    const poor = answerKey.pairs.filter(({ expectedErrorArcmin }) => expectedErrorArcmin !== null);
    const worst = poor.at(-1);
    if (worst === undefined) throw new Error('no pairs');
    const result = resultOf(one(), {}, worst.stars);
    expect(share(result, 'pair')).toBe(0);
    expect(result.pair.best?.hitRate).toBe(answerKey.pairs[0]?.hitRate);
    expect(result.pair.chosen?.hitRate).toBe(worst.hitRate);
    expect(share(result, 'first-star') + share(result, 'second-star')).toBe(2);
    expect(share(result, 'judgement')).toBe(1);
    expect(result.advice).toMatchObject({ code: 'pair', hitRate: worst.hitRate });
  });
});

describe('time', () => {
  it('counts only where the teacher turned it on', () => {
    const without = resultOf(one());
    const { minutes } = without;
    expect(without.criteria.map(({ id }) => id)).not.toContain('time');
    const timed = (minutesAllowed: number) => resultOf(withVariant(one(), { minutesAllowed }));
    expect(share(timed(minutes + 0.01), 'time')).toBe(1);
    expect(share(timed(minutes / 1.5), 'time')).toBeCloseTo(0.5, 9);
    const slow = timed(minutes / 2.5);
    expect(share(slow, 'time')).toBe(0);
    expect(slow.advice).toEqual({ code: 'slow', minutes, minutesAllowed: minutes / 2.5 });
    // Ten of a hundred and ten.
    expect(slow.total).toBeCloseTo(100 / 1.1, 3);
    for (const { criteria } of [without, slow]) {
      expect(criteria.reduce((sum, { possible }) => sum + possible, 0)).toBeCloseTo(100, 9);
    }
  });
});

/** The same evening's noon: no star may serve, but a mount goes where it is told. */
function daytime(): RunNight {
  const [kit] = loadKits();
  if (kit === undefined) throw new Error('no kits');
  const catalogue = loadCatalogue();
  const variant = generateRunVariant({
    seed: 'noon',
    scenario: eveningScenario({ localTime: '2026-06-05T12:30' }),
    templates: ['own-choice'],
    catalogue,
    kit: runKitOf(kit),
    declinationDeg: 0,
  });
  const { scenario, frame } = variant;
  const answerKey = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
  return { variant, answerKey, input: { ...variant, catalogue }, best: [0, 0] };
}

describe('the Sun', () => {
  const night = daytime();
  const sun = placed(night.variant.frame.sun);
  const awayFromSun = (from: number, to: number): number[] =>
    night.answerKey.stars
      .filter(({ altitudeDeg }) => altitudeDeg > 15 && altitudeDeg < 75)
      .filter((star) => {
        const away = separationDeg(placed(star), sun);
        return away > from && away < to;
      })
      .map(({ hip }) => hip);

  it('fails a run that comes within 30° of it, whatever else was right', () => {
    const [near] = awayFromSun(5, 25);
    const [far] = awayFromSun(60, 180);
    if (near === undefined || far === undefined) throw new Error('no stars by day');
    const result = resultOf(night, { thirdHip: null }, [far, near]);
    expect(result.gates).toMatchObject([{ id: 'sun' }]);
    const [gate] = result.gates;
    expect(gate?.distanceDeg).toBeLessThan(26);
    expect(result.advice).toEqual({ code: 'sun', distanceDeg: gate?.distanceDeg });
    // What the parts earned is still shown, and summed: the gate decides beside the mark.
    const sum = result.criteria.reduce((earned, part) => earned + part.earned, 0);
    expect(result.total).toBe(sum);
    expect(sum).toBeGreaterThan(30);
    expect(share(result, 'second-star')).toBe(1);
    expect(result.criteria.map(({ id }) => id)).not.toContain('pair');
  });

  it('lets a run pass that keeps clear of it by day, and any by night', () => {
    const stars = awayFromSun(70, 180);
    const clear = stars.flatMap((first) =>
      stars.filter((second) => second !== first).map((second) => [first, second] as const),
    );
    const passed = clear
      .slice(0, 20)
      .map((pair) => resultOf(night, { thirdHip: null }, pair))
      .filter(({ gates }) => gates.length === 0);
    expect(passed.length).toBeGreaterThan(0);
    expect(passed[0]?.total).toBeGreaterThan(0);
    for (const dark of nights.slice(0, 6)) expect(resultOf(dark).gates).toEqual([]);
  });
});

describe('a log', () => {
  const goodLog = (): RunAction[] => perfectLog(one().input, one().best);
  const refusalOf = (log: RunLog) => {
    const grading = mark(one(), log);
    if (grading.ok) throw new Error('it was marked');
    return grading.refusal;
  };

  it('that claims other readings than it leads to is refused where it does', () => {
    const log = goodLog();
    const at = log.findIndex((action) => action.do === 'this-is-the-star');
    const tampered = log.map((action) =>
      action.do === 'this-is-the-star'
        ? {
            ...action,
            readings: { ...action.readings, altitudeDeg: action.readings.altitudeDeg + 1 / 60 },
          }
        : action,
    );
    expect(refusalOf(tampered)).toEqual({
      code: 'does-not-add-up',
      action: at,
      why: 'does-not-add-up',
    });
  });

  it('that leaves out a step is refused', () => {
    const log = goodLog();
    const step = log.findLastIndex((action) => action.do === 'step');
    expect(refusalOf(log.toSpliced(step, 1))).toMatchObject({ code: 'does-not-add-up' });
  });

  it('that goes back in time, or pauses where that is not allowed, is refused', () => {
    const log = goodLog();
    const last = log.at(-1);
    if (last === undefined) throw new Error('an empty log');
    expect(refusalOf([...log.slice(0, -1), { ...last, at: 0 }])).toMatchObject({
      why: 'out-of-order',
    });
    const paused: RunAction = { at: last.at, do: 'paused', waitedMs: 1000 };
    expect(refusalOf(log.toSpliced(-1, 0, paused))).toMatchObject({ why: 'may-not-pause' });
    const allowed = withVariant(one(), { mayPause: true });
    expect(mark(allowed, log.toSpliced(-1, 0, paused)).ok).toBe(true);
  });

  it('that ends before the judgement is not finished', () => {
    const log = goodLog();
    for (const length of [0, 1, 5, log.length - 1]) {
      expect(refusalOf(log.slice(0, length))).toEqual({ code: 'not-finished' });
    }
  });

  it('is marked the same however often it is replayed', () => {
    const log = goodLog();
    expect(mark(one(), log)).toEqual(mark(one(), log));
    expect(runGrader(runGraderVersion)).toBe(gradeRun);
    expect(runGrader(99)).toBeUndefined();
  });
});

describe('a third star', () => {
  it('lies in the observing eyepiece about as often as the alignment’s worth says', () => {
    const results = nights.map((night) => resultOf(night));
    const expected = results.reduce((sum, { achievedHitRate }) => sum + (achievedHitRate ?? 0), 0);
    const inField = results.filter(({ third }) => third?.inField === true).length;
    expect(results.every(({ third }) => third !== null)).toBe(true);
    // Four standard deviations of so many draws.
    expect(Math.abs(inField - expected)).toBeLessThan(4 * Math.sqrt(nights.length / 4));
    expect(inField).toBeGreaterThan(nights.length / 2);
  });
});

describe.each(runTemplates)('a run of the template %s', (template) => {
  it('gives a robot full marks', () => {
    const catalogue = loadCatalogue();
    for (const [i, kit] of loadKits().entries()) {
      const variant = generateRunVariant({
        seed: `robot ${template} ${i}`,
        scenario: eveningScenario({ telescope: kit.telescope }),
        templates: [template],
        catalogue,
        kit: runKitOf(kit),
        declinationDeg: -12,
      });
      const { scenario, frame } = variant;
      const answerKey = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
      const input = { ...variant, catalogue };
      const log = perfectLog(input);
      const grading = gradeRun({ variant, answerKey, submission: { log }, catalogue });
      if (!grading.ok) throw new Error(JSON.stringify(grading.refusal));
      expect(grading.result.total).toBeGreaterThan(99.999);
      expect(grading.result.template).toBe(template);
    }
  });
});
