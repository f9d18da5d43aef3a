import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eveningVariant } from '@/tests/support/evening';
import { loadCatalogue } from '../content/sky-catalogue';
import type { AnswerKey, AnswerKeyPair } from '../pointing/answer-key';
import { pairTemplates, type PairVariant } from '../variants/pair-variant';
import { gradePair } from './grade-pair';
import { pairGrader, pairGraderVersion } from './graders';
import { pairSubmissionSchema, type PairSubmission } from './pair-submission';

const catalogue = loadCatalogue();
const evening = eveningVariant();
const { answerKey } = evening;
const cautious = new Set(
  answerKey.stars.filter((star) => star.cautions.length > 0).map((star) => star.hip),
);
const plain = (pair: AnswerKeyPair) => pair.stars.every((hip) => !cautious.has(hip));
const hipOf = (name: string) => {
  const star = answerKey.stars.find((one) => one.name === name);
  if (star === undefined) throw new Error(`${name} is not in the key`);
  return star.hip;
};
function found<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('the evening has no such case');
  return value;
}

type ChosenStar = { hip: number; lookAlike: `hip-${number}` | 'venus' | null };
const pick = (hip: number, lookAlike: ChosenStar['lookAlike'] = null): ChosenStar => ({
  hip,
  lookAlike,
});
const choose = (one: ChosenStar, other: ChosenStar): PairSubmission => ({
  kind: 'pair',
  stars: [one, other],
});
const chooseHips = ([one, other]: readonly [number, number]) => choose(pick(one), pick(other));

function result(
  submission: PairSubmission,
  of: { variant: PairVariant; answerKey: AnswerKey } = evening,
) {
  const graded = gradePair({ ...of, submission, catalogue });
  if (!graded.ok) throw new Error(`refused: ${graded.refusal.code}`);
  return graded.result;
}
function refusal(submission: PairSubmission, of = evening) {
  const graded = gradePair({ ...of, submission, catalogue });
  return graded.ok ? null : graded.refusal;
}

describe('a free choice', () => {
  it('earns 100 for the best pair', () => {
    const best = found(answerKey.pairs.find(plain));
    const marked = result(chooseHips(best.stars));
    expect(marked.total).toBeCloseTo(best.mark, 9);
    expect(best.mark).toBe(100);
    expect(marked.advice).toEqual({ code: 'well-chosen' });
    expect(marked.best?.hitRate).toBe(answerKey.pairs[0]?.hitRate);
  });

  it('earns the mark that the key gives the pair, whichever pair', () => {
    for (const pair of answerKey.pairs.filter(plain)) {
      expect(result(chooseHips(pair.stars)).total).toBeCloseTo(pair.mark, 9);
      expect(result(chooseHips([pair.stars[1], pair.stars[0]])).total).toBeCloseTo(pair.mark, 9);
    }
  });

  it('earns 50 for two usable stars that hit less than half as often as the best', () => {
    const best = found(answerKey.pairs[0]);
    const poor = found(
      answerKey.pairs.find((pair) => plain(pair) && pair.hitRate <= best.hitRate / 2),
    );
    expect(result(chooseHips(poor.stars)).total).toBe(50);
  });

  it('earns geometry in proportion between half and 98 % of the best', () => {
    const best = found(answerKey.pairs[0]).hitRate;
    const middling = found(
      answerKey.pairs.find((p) => plain(p) && p.hitRate < 0.9 * best && p.hitRate > 0.6 * best),
    );
    const expected = 50 + (50 * (middling.hitRate - best / 2)) / (0.48 * best);
    expect(result(chooseHips(middling.stars)).total).toBeCloseTo(expected, 9);
  });

  it('earns 15 for a star whose look-alike was not named, 25 when it was', () => {
    const pair = found(
      answerKey.pairs.find(
        (p) => p.mark === 100 && cautious.has(p.stars[0]) && !cautious.has(p.stars[1]),
      ),
    );
    const star = found(answerKey.stars.find(({ hip }) => hip === pair.stars[0]));
    const caution = found(star.cautions[0]);
    const unnamed = result(chooseHips(pair.stars));
    expect(unnamed.total).toBe(90);
    expect(unnamed.criteria[0]).toEqual({ id: 'first-star', earned: 15, possible: 25 });
    expect(unnamed.advice).toMatchObject({ code: 'look-alike-missed', hip: star.hip });

    const named = caution.neighbour;
    const submission = pairSubmissionSchema.parse({
      kind: 'pair',
      stars: [{ hip: star.hip, lookAlike: named }, pick(pair.stars[1])],
    });
    expect(result(submission).total).toBe(100);
    expect(result(submission).stars[0]?.cautionNamed).toBe(true);

    const wrongName = result(choose(pick(star.hip, 'venus'), pick(pair.stars[1])));
    expect(wrongName.total).toBe(90);
  });

  it('loses nothing by warning of a look-alike that is none', () => {
    const best = found(answerKey.pairs.find((pair) => pair.mark === 100 && plain(pair)));
    expect(result(choose(pick(best.stars[0], 'venus'), pick(best.stars[1]))).total).toBe(100);
  });

  it('earns 25 for one usable star with one that is too low, nothing for geometry', () => {
    const marked = result(choose(pick(hipOf('Vega')), pick(hipOf('Betelgeuse'))));
    expect(marked.total).toBe(25);
    expect(marked.criteria.map((c) => c.earned)).toEqual([25, 0, 0]);
    expect(marked.advice).toMatchObject({
      code: 'star-unusable',
      hip: hipOf('Betelgeuse'),
      reason: { code: 'too-low' },
    });
  });

  it('earns nothing for two stars that will not do', () => {
    expect(result(choose(pick(hipOf('Rigel')), pick(hipOf('Betelgeuse')))).total).toBe(0);
  });

  it('judges a star too faint for the stored key', () => {
    const faint = found(
      catalogue.stars.find((star) => star.magnitude > 4 && star.constellation === 'Cas'),
    );
    const marked = result(choose(pick(hipOf('Vega')), pick(faint.hip)));
    expect(marked.total).toBe(25);
    expect(marked.stars[1]?.reasons.map((r) => r.code)).toContain('too-faint');
  });

  it('earns nothing for saying that there is no pair', () => {
    const marked = result({ kind: 'none-usable' });
    expect(marked.total).toBe(0);
    expect(marked.advice).toEqual({
      code: 'said-none-wrongly',
      usablePairs: answerKey.pairs.length,
    });
    expect(marked.best).not.toBeNull();
  });

  it('has criteria that add up to the total', () => {
    for (const pair of answerKey.pairs.slice(0, 40)) {
      const marked = result(chooseHips(pair.stars));
      expect(marked.criteria.reduce((sum, c) => sum + c.earned, 0)).toBeCloseTo(marked.total, 9);
      expect(marked.criteria.reduce((sum, c) => sum + c.possible, 0)).toBe(100);
    }
  });
});

describe('the dead band', () => {
  const vega = found(answerKey.stars.find(({ name }) => name === 'Vega'));
  const partner = found(
    answerKey.pairs.find((pair) => pair.stars.includes(vega.hip) && plain(pair)),
  );
  const lowest = (lowestAltitudeDeg: number) => eveningVariant({ settings: { lowestAltitudeDeg } });

  it('lets a star pass that is 0.09° too low, though the key is strict', () => {
    const close = lowest(vega.altitudeDeg + 0.09);
    expect(close.answerKey.stars.find(({ hip }) => hip === vega.hip)?.usable).toBe(false);
    const marked = result(chooseHips(partner.stars), close);
    expect(marked.stars.every((star) => star.usable)).toBe(true);
    expect(marked.total).toBeGreaterThan(90);
  });

  it('ends at a tenth of a degree', () => {
    const marked = result(chooseHips(partner.stars), lowest(vega.altitudeDeg + 0.11));
    expect(marked.total).toBe(25);
  });

  it('lets a star pass that is 0.04 mag too faint, not 0.06', () => {
    const markab = found(answerKey.stars.find(({ name }) => name === 'Markab'));
    const faintest = (faintestMagnitude: number) =>
      eveningVariant({ settings: { faintestMagnitude } });
    const submission = choose(pick(hipOf('Capella')), pick(markab.hip));
    expect(result(submission, faintest(markab.magnitude - 0.04)).stars[1]?.usable).toBe(true);
    expect(result(submission, faintest(markab.magnitude - 0.06)).stars[1]?.usable).toBe(false);
  });

  it('gives way at the edge of a cloud', () => {
    const cloud = (radiusDeg: number) =>
      eveningVariant({
        clouds: [
          {
            azimuthDeg: vega.azimuthDeg,
            altitudeDeg: vega.altitudeDeg + 10,
            radiusDeg,
          },
        ],
      });
    expect(result(chooseHips(partner.stars), cloud(10.05)).stars.every((s) => s.usable)).toBe(true);
    expect(result(chooseHips(partner.stars), cloud(10.15)).stars.every((s) => s.usable)).toBe(
      false,
    );
  });

  it('agrees with a student who finds no pair where only the limits make one', () => {
    // Vega and one other star, Vega 0.05° above the lowest altitude.
    const capella = found(answerKey.stars.find(({ name }) => name === 'Capella'));
    const two = eveningVariant({
      settings: { faintestMagnitude: 0.1, lowestAltitudeDeg: vega.altitudeDeg - 0.05 },
    });
    expect(two.answerKey.pairs.map((p) => p.stars)).toEqual([[vega.hip, capella.hip]]);
    expect(result({ kind: 'none-usable' }, two).total).toBe(100);
    expect(result(chooseHips([vega.hip, capella.hip]), two).total).toBe(100);
  });

  it('lets a pair count that only the dead band makes, on a night that strictly has none', () => {
    const capella = found(answerKey.stars.find(({ name }) => name === 'Capella'));
    const two = eveningVariant({
      settings: { faintestMagnitude: 0.1, lowestAltitudeDeg: vega.altitudeDeg + 0.05 },
    });
    expect(two.answerKey.pairs).toEqual([]);
    expect(result(chooseHips([vega.hip, capella.hip]), two).total).toBe(100);
    expect(result({ kind: 'none-usable' }, two).total).toBe(100);
  });
});

describe('a night without a usable pair', () => {
  const night = eveningVariant(
    { clouds: [{ azimuthDeg: 0, altitudeDeg: 90, radiusDeg: 71 }] },
    { template: 'none-usable' },
  );

  it('earns 100 for saying so', () => {
    const marked = result({ kind: 'none-usable' }, night);
    expect(marked.total).toBe(100);
    expect(marked.advice).toEqual({ code: 'said-none-rightly' });
    expect(marked.best).toBeNull();
  });

  it('earns nothing for two hidden stars', () => {
    const marked = result(choose(pick(hipOf('Vega')), pick(hipOf('Capella'))), night);
    expect(marked.total).toBe(0);
    expect(marked.advice).toEqual({ code: 'there-was-none' });
  });

  it('earns 25 for the one star that passes', () => {
    const one = eveningVariant({ settings: { faintestMagnitude: 0.05 } });
    const marked = result(choose(pick(hipOf('Vega')), pick(hipOf('Capella'))), one);
    expect(marked.stars.map((star) => star.usable)).toEqual([true, true]);
    const strict = eveningVariant({ settings: { faintestMagnitude: 0.02 } });
    expect(result(choose(pick(hipOf('Vega')), pick(hipOf('Capella'))), strict).total).toBe(25);
  });

  it('earns at most 40 for two usable stars that leave the fit undetermined', () => {
    // Both stars of the only pair moved onto one azimuth: the zero cannot be told from the base.
    const two = eveningVariant({ settings: { faintestMagnitude: 0.1 } });
    const stars = two.answerKey.stars.map((star) => ({ ...star, azimuthDeg: 100 }));
    const pairs = two.answerKey.pairs.map((pair) => ({
      ...pair,
      expectedErrorArcmin: null,
      hitRate: 0,
    }));
    const flat = { ...two, answerKey: { ...two.answerKey, stars, pairs } };
    const marked = result(choose(pick(hipOf('Vega')), pick(hipOf('Capella'))), flat);
    expect(marked.total).toBe(40);
    expect(marked.criteria.map(({ earned }) => earned)).toEqual([20, 20, 0]);
    expect(result({ kind: 'none-usable' }, flat).total).toBe(100);
  });
});

describe('the best partner for a given star', () => {
  const givenHip = hipOf('Vega');
  const task = eveningVariant({}, { template: 'partner', givenHip });
  const partners = task.answerKey.pairs.filter((pair) => pair.stars.includes(givenHip));
  const other = (pair: AnswerKeyPair) =>
    pair.stars[0] === givenHip ? pair.stars[1] : pair.stars[0];

  it('is measured against the best pair with that star', () => {
    const best = found(partners[0]);
    const lookAlike = task.answerKey.stars.find(({ hip }) => hip === other(best))?.cautions[0];
    const submission = pairSubmissionSchema.parse({
      kind: 'pair',
      stars: [
        { hip: givenHip, lookAlike: null },
        { hip: other(best), lookAlike: lookAlike?.neighbour ?? null },
      ],
    });
    const marked = result(submission, task);
    expect(marked.total).toBe(100);
    expect(marked.best?.stars).toEqual(best.stars);
  });

  it('counts the given star as earned, whatever the partner', () => {
    const marked = result(choose(pick(givenHip), pick(hipOf('Rigel'))), task);
    expect(marked.criteria[0]).toEqual({ id: 'first-star', earned: 25, possible: 25 });
    expect(marked.total).toBe(25);
  });

  it('does not ask for the given star’s look-alikes', () => {
    const mirfak = hipOf('Mirfak');
    const cautioned = eveningVariant({}, { template: 'partner', givenHip: mirfak });
    const marked = result(choose(pick(mirfak), pick(hipOf('Vega'))), cautioned);
    expect(marked.criteria[0]?.earned).toBe(25);
  });

  it('refuses a pair without it', () => {
    expect(refusal(choose(pick(hipOf('Capella')), pick(hipOf('Altair'))), task)).toEqual({
      code: 'given-star-missing',
      givenHip,
    });
  });
});

describe('the mount’s proposals', () => {
  const [first, second, third] = answerKey.pairs.filter(plain).slice(-3);
  const proposals = [
    ...new Set([first, second, third].flatMap((pair) => (pair ? [...pair.stars] : []))),
  ];
  const task = eveningVariant({}, { template: 'mount-proposes', proposals });

  it('are the measure: the best of them earns 100 though the night has better', () => {
    const best = found(
      answerKey.pairs.find((pair) => pair.stars.every((hip) => proposals.includes(hip))),
    );
    const marked = result(chooseHips(best.stars), task);
    expect(marked.total).toBeCloseTo(100, 9);
    expect(marked.best?.stars).toEqual(best.stars);
  });

  it('are all that may be chosen', () => {
    const stranger = found(
      answerKey.stars.find((star) => star.usable && !proposals.includes(star.hip)),
    );
    expect(refusal(chooseHips([found(proposals[0]), stranger.hip]), task)).toEqual({
      code: 'not-proposed',
      hip: stranger.hip,
    });
  });
});

describe('advice', () => {
  const adviceFor = (fits: (pair: AnswerKeyPair) => boolean) => {
    // With every look-alike named, only the geometry is left to speak of.
    const stars = found(answerKey.pairs.find(fits)).stars.map((hip) => ({
      hip,
      lookAlike: answerKey.stars.find((star) => star.hip === hip)?.cautions[0]?.neighbour ?? null,
    }));
    return result(pairSubmissionSchema.parse({ kind: 'pair', stars })).advice.code;
  };
  const gap = (pair: AnswerKeyPair) => {
    const [a = 0, b = 0] = pair.stars.map(
      (hip) => answerKey.stars.find((star) => star.hip === hip)?.azimuthDeg,
    );
    const difference = Math.abs(a - b);
    return Math.min(difference, 360 - difference);
  };

  it('names closeness, equal azimuth, or a better pair, whichever explains the loss', () => {
    expect(adviceFor((p) => p.separationDeg < 25)).toBe('too-close');
    expect(adviceFor((p) => p.separationDeg > 31 && gap(p) < 15)).toBe('same-azimuth');
    expect(adviceFor((p) => p.separationDeg > 31 && gap(p) > 21 && p.mark < 98)).toBe(
      'better-pair',
    );
  });

  it('names opposition where the stars are nearly opposite', () => {
    // Only low stars can be: with the limits taken off and the zero taken as given.
    const wide = eveningVariant({
      telescope: { ...evening.variant.scenario.telescope, computer: 'fixed-zero' },
      settings: { lowestAltitudeDeg: 0, horizonMarginDeg: 0, faintestMagnitude: 2.5 },
      sky: { darkestLimitMagnitude: 7, extinction: 0 },
    });
    const pair = found(
      wide.answerKey.pairs.find(
        (p) =>
          p.separationDeg > 155 &&
          p.stars.every((hip) =>
            wide.answerKey.stars.some((s) => s.hip === hip && s.cautions.length === 0),
          ),
      ),
    );
    expect(result(chooseHips(pair.stars), wide).advice.code).toBe('nearly-opposite');
  });
});

describe('what cannot be marked', () => {
  it('is the same star twice, also by another component of a close double', () => {
    const vega = hipOf('Vega');
    expect(refusal(chooseHips([vega, vega]))).toEqual({ code: 'same-star-twice' });
    const south = eveningVariant({
      place: { latitudeDeg: -34, longitudeDeg: 151 },
      timeZone: 'Australia/Sydney',
      localTime: '2026-05-05T21:00',
    });
    expect(refusal(chooseHips([71683, 71681]), south)).toEqual({ code: 'same-star-twice' });
  });

  it('is a star below the horizon or one that does not exist', () => {
    expect(refusal(chooseHips([hipOf('Vega'), 30438]))).toEqual({
      code: 'not-in-this-sky',
      hip: 30438,
    });
    expect(refusal(chooseHips([999_999_999, hipOf('Vega')]))).toEqual({
      code: 'not-in-this-sky',
      hip: 999_999_999,
    });
  });

  it('never makes the grader throw, and marks stay within 0 and 100', () => {
    const hip = fc.oneof(
      fc.constantFrom(...answerKey.stars.map((star) => star.hip)),
      fc.constantFrom(...catalogue.stars.map((star) => star.hip)),
      fc.integer({ min: 1, max: 2 ** 31 }),
    );
    const lookAlike = fc.oneof(
      fc.constant(null),
      fc.constantFrom('venus' as const, 'saturn' as const),
      hip.map((number) => `hip-${number}` as const),
    );
    const star = fc.record({ hip, lookAlike });
    const submission: fc.Arbitrary<unknown> = fc.oneof(
      fc.record({ kind: fc.constant('pair'), stars: fc.tuple(star, star) }),
      fc.constant({ kind: 'none-usable' }),
    );
    const task = fc.record({
      template: fc.constantFrom(...pairTemplates),
      givenHip: fc.option(hip),
      proposals: fc.option(fc.array(hip, { maxLength: 8 })),
    });
    fc.assert(
      fc.property(submission, task, (json, changes) => {
        const graded = gradePair({
          variant: { ...evening.variant, ...changes },
          answerKey,
          submission: pairSubmissionSchema.parse(json),
          catalogue,
        });
        if (!graded.ok) return;
        expect(graded.result.total).toBeGreaterThanOrEqual(0);
        expect(graded.result.total).toBeLessThanOrEqual(100);
      }),
      { numRuns: 200 },
    );
  }, 30_000);

  it('is a submission that brings its own score: the schema refuses the extra field', () => {
    const best = found(answerKey.pairs[0]);
    expect(pairSubmissionSchema.safeParse({ ...chooseHips(best.stars), total: 100 }).success).toBe(
      false,
    );
    expect(
      pairSubmissionSchema.safeParse({
        kind: 'pair',
        stars: best.stars.map((hip) => ({ hip, lookAlike: null, usable: true })),
      }).success,
    ).toBe(false);
  });
});

describe('grader versions', () => {
  it('find the grader of a stored attempt, and none for a version that never was', () => {
    expect(pairGrader(pairGraderVersion)).toBe(gradePair);
    expect(pairGrader(0)).toBeUndefined();
  });

  it('give the same result for the same input, read back from JSON', () => {
    const best = found(answerKey.pairs.find(plain));
    const submission = chooseHips(best.stars);
    const stored = JSON.parse(JSON.stringify(evening)) as typeof evening;
    expect(result(submission, stored)).toEqual(result(submission));
  });
});
