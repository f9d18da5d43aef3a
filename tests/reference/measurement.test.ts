import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { agreement } from '@/lib/measurement/agreement';
import {
  column,
  difficulty,
  itemRest,
  itemTotal,
  totals,
  upperLower,
} from '@/lib/measurement/discrimination';
import {
  alpha,
  kr20,
  kr21,
  reliabilityOfOwnItems,
  standardErrorOfMeasurement,
} from '@/lib/measurement/reliability';
import { footingOf } from '@/lib/measurement/small-class';
import { mean, populationVariance, sampleDeviation } from '@/lib/measurement/spread';
import { angoffCut, borderlineRegression, itemsToPass } from '@/lib/measurement/standard-setting';
import { wrap180 } from '@/lib/units/angle';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { knowledgeTracing, movingAverage } from '../support/learner-models';

/*
 * Every value of data/measurement.json, whose sources stand in the file; its `grade` is reproduced in
 * gradebook-arithmetic.test.ts. Values are printed there with
 * six decimals or fewer: half a unit of the last place is the tolerance, no more.
 */

const numbers = z.array(z.number());
const table = z.array(numbers);
const fixture = z
  .strictObject({
    wuensch: z.strictObject({
      source: z.string(),
      data: table,
      expect: z.strictObject({
        n: z.number(),
        k: z.number(),
        mean: z.number(),
        vp: z.number(),
        vs: z.number(),
        p: numbers,
        spq: z.number(),
        kr20: z.number(),
        kr20_mixed: z.number(),
        alpha: z.number(),
        kr21: z.number(),
        inc: numbers,
        exc: numbers,
        sem_sample: z.number(),
        sem_pop: z.number(),
      }),
      upper_lower_27_fractional: numbers,
    }),
    kappa: z.array(
      z.strictObject({
        source: z.string(),
        m: table,
        kappa: z.number(),
        po: z.number().optional(),
        pe: z.number().optional(),
        weights: table.optional(),
        weighted: z.number().optional(),
        pabak: z.number().optional(),
      }),
    ),
    sem: z.array(
      z.strictObject({
        source: z.string().optional(),
        sd: z.number(),
        r: z.number(),
        sem: z.number(),
      }),
    ),
    angoff: z.strictObject({
      source: z.string(),
      ratings: table,
      judgeCuts: numbers,
      cut: z.number(),
      pct: z.number(),
      sdJudges: z.number(),
      se: z.number(),
      passRaw: z.number(),
    }),
    masteryAngoff: z.strictObject({
      source: z.string(),
      mean: z.number(),
      items: z.number(),
      required: z.number(),
    }),
    borderlineRegression: z.strictObject({
      source: z.string(),
      global_: numbers,
      checklist: numbers,
      slope: z.number(),
      intercept: z.number(),
      cutAt2: z.number(),
      r2: z.number(),
    }),
    bkt: z.array(
      z.strictObject({
        L0: z.number(),
        T: z.number(),
        S: z.number(),
        G: z.number(),
        seq: numbers,
        posterior: numbers,
        after: numbers,
      }),
    ),
    ema: z.array(z.strictObject({ a: z.number(), seq: numbers, values: numbers })),
    angles: z.array(z.strictObject({ f: z.string(), v: z.number() })),
    grade: z.array(z.strictObject({ f: z.string(), days: z.number().optional(), v: z.number() })),
  })
  .parse(
    JSON.parse(
      readFileSync(path.join(import.meta.dirname, 'data', 'measurement.json'), 'utf8'),
    ) as unknown,
  );

const near = (value: number, decimals = 6): unknown => expect.closeTo(value, decimals);
const all = (values: readonly number[], decimals = 6): unknown[] =>
  values.map((one) => near(one, decimals));

describe('the ten people and ten items of Wuensch', () => {
  const { data, expect: expected, upper_lower_27_fractional: fractional } = fixture.wuensch;
  const items = data[0]?.map((_, item) => item) ?? [];
  const sums = totals(data);

  test('have the printed difficulties, mean and variances', () => {
    expect([data.length, items.length]).toEqual([expected.n, expected.k]);
    expect(items.map((item) => difficulty(column(data, item)))).toEqual(all(expected.p));
    expect(mean(sums)).toEqual(near(expected.mean));
    expect(populationVariance(sums)).toEqual(near(expected.vp));
    expect(sampleDeviation(sums) ** 2).toEqual(near(expected.vs));
    const pq = expected.p.map((p) => p * (1 - p));
    expect(pq.reduce((sum, one) => sum + one, 0)).toEqual(near(expected.spq));
  });

  test('have the same reliability by KR-20 and by α, and a lower one by KR-21', () => {
    expect(kr20(data)).toEqual(near(expected.kr20));
    expect(alpha(data)).toEqual(near(expected.alpha));
    expect(kr21(data)).toEqual(near(expected.kr21, 5));
  });

  test('would seem more reliable than they are if two variances were mixed', () => {
    const mixed = (10 / 9) * (1 - expected.spq / sampleDeviation(sums) ** 2);
    expect(mixed).toEqual(near(expected.kr20_mixed));
    expect(kr20(data)).not.toEqual(near(expected.kr20_mixed, 2));
  });

  test('have the discriminations, the item in the total and left out of it', () => {
    expect(items.map((item) => itemTotal(data, item))).toEqual(all(expected.inc));
    expect(items.map((item) => itemRest(data, item))).toEqual(all(expected.exc));
  });

  test('have the differences between upper and lower 27 %, ties shared', () => {
    expect(items.map((item) => upperLower(column(data, item), sums))).toEqual(all(fractional, 4));
  });

  test('have the standard errors by either deviation', () => {
    const r = kr20(data) ?? Number.NaN;
    expect(standardErrorOfMeasurement(sampleDeviation(sums), r)).toEqual(near(expected.sem_sample));
    expect(standardErrorOfMeasurement(Math.sqrt(populationVariance(sums)), r)).toEqual(
      near(expected.sem_pop),
    );
  });
});

test.each(fixture.kappa)('κ of two raters: $source', (one) => {
  const found = agreement(one.m, one.weights);
  expect(found?.kappa).toEqual(near(one.kappa, 5));
  if (one.po !== undefined) expect(found?.observed).toEqual(near(one.po));
  if (one.pe !== undefined) expect(found?.byChance).toEqual(near(one.pe));
  if (one.weighted !== undefined) expect(found?.weighted).toEqual(near(one.weighted));
  if (one.pabak !== undefined) expect(found?.pabak).toEqual(near(one.pabak));
});

test('the share alike of Cohen’s 200 is .70, and .41 by chance', () => {
  const [, cohen] = fixture.kappa;
  expect(agreement(cohen?.m ?? [])).toMatchObject({
    pairs: 200,
    observed: 0.7,
    byChance: near(0.41),
  });
});

test.each(fixture.sem)(
  'a deviation of $sd at a reliability of $r leaves an error of $sem',
  (one) => {
    expect(standardErrorOfMeasurement(one.sd, one.r)).toEqual(near(one.sem, 4));
  },
);

test('three judges’ pass mark and how far they are apart', () => {
  const { ratings, judgeCuts, cut, pct, sdJudges, se, passRaw } = fixture.angoff;
  const found = angoffCut(ratings);
  expect(found).toEqual({
    judgeCuts: all(judgeCuts),
    cut: near(cut),
    deviation: near(sdJudges),
    standardError: near(se),
  });
  expect(found.cut / (ratings[0]?.length ?? 0)).toEqual(near(pct));
  expect(itemsToPass(found.cut)).toBe(passRaw);
});

test('86.1 % of 21 items takes 19 of them', () => {
  const { mean: percent, items, required } = fixture.masteryAngoff;
  expect(mean([84, 88.2])).toEqual(near(percent));
  expect(itemsToPass((percent / 100) * items)).toBe(required);
});

test('the line through ratings and checklists, and its mark at a rating of 2', () => {
  const { global_, checklist, slope, intercept, cutAt2, r2 } = fixture.borderlineRegression;
  const people = global_.map((rating, index) => ({ rating, mark: checklist[index] ?? Number.NaN }));
  expect(borderlineRegression(people, 2)).toEqual({
    slope: near(slope),
    intercept: near(intercept),
    cut: near(cutAt2),
    rSquared: near(r2),
  });
  // The page would not show it: ten people are too few for it.
  expect(footingOf(people.length)).not.toBe('enough');
});

test.each(fixture.bkt)('knowledge traced through the answers $seq', (one) => {
  const found = knowledgeTracing(
    one.seq.map((answer) => answer === 1),
    { known: one.L0, learns: one.T, slips: one.S, guesses: one.G },
  );
  expect(found.map(({ posterior }) => posterior)).toEqual(all(one.posterior));
  expect(found.map(({ after }) => after)).toEqual(all(one.after));
});

test.each(fixture.ema)('the moving average that keeps $a, of $seq', (one) => {
  expect(movingAverage(one.seq, one.a)).toEqual(all(one.values));
});

test('the angles', () => {
  const between = (altitudeDeg: number, gapDeg: number) =>
    separationDeg(directionFromAzAlt(0, altitudeDeg), directionFromAzAlt(gapDeg, altitudeDeg));
  const found: Readonly<Record<string, number>> = {
    'wrap(359.5,0.5)': wrap180(0.5 - 359.5),
    'sep(alt80,az0 ; alt80,az10)': between(80, 10),
    'sep(alt20,az0 ; alt20,az10)': between(20, 10),
    'sep(0,0;0,90)': between(0, 90),
  };
  expect(Object.keys(found)).toEqual(fixture.angles.map(({ f }) => f));
  for (const { f, v } of fixture.angles) expect(found[f], f).toEqual(near(v));
});

test('four judges’ ratings of six targets have the intraclass correlation that was printed', () => {
  // P. E. Shrout and J. L. Fleiss, Psychological Bulletin 86 (1979) 420, table 2; ICC(1,1) = .17 and
  // ICC(1,4) = .44 (table 4). From memory.
  const ratings = [
    [9, 2, 5, 8],
    [6, 1, 3, 2],
    [8, 4, 6, 8],
    [7, 1, 2, 6],
    [10, 5, 6, 9],
    [6, 2, 4, 7],
  ];
  expect(reliabilityOfOwnItems(ratings)).toEqual(near(0.44, 2));
});
