import fc from 'fast-check';
import { expect, it } from 'vitest';
import { eveningScenario, eveningVariant } from '@/tests/support/evening';
import { loadCatalogue } from '../content/sky-catalogue';
import type { AnswerKey } from '../pointing/answer-key';
import { mostWithoutAnyPair } from '../pointing/pair-mark';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { generatePairVariant } from '../variants/generate-pair-variant';
import { pairTemplates, type PairVariant } from '../variants/pair-variant';
import { gradePair } from './grade-pair';
import { pairSubmissionSchema } from './pair-submission';

const catalogue = loadCatalogue();
type Task = { variant: PairVariant; answerKey: AnswerKey };

const generated: Task[] = pairTemplates.flatMap((template) =>
  ['a', 'b'].map((seed) => {
    const scenario = eveningScenario();
    const variant = generatePairVariant({ seed, scenario, templates: [template], catalogue });
    const { instant } = variant.frame;
    return { variant, answerKey: storedAnswerKey({ ...variant, instant, catalogue }) };
  }),
);
/** Usable stars, but a fit that no two of them determine. */
const evening = eveningVariant();
const undetermined: Task = {
  ...evening,
  answerKey: {
    ...evening.answerKey,
    stars: evening.answerKey.stars.map((star) => ({ ...star, azimuthDeg: 100 })),
    pairs: evening.answerKey.pairs.map((pair) => ({
      ...pair,
      expectedErrorArcmin: null,
      hitRate: 0,
    })),
  },
};

const submissionTo = ({ variant, answerKey }: Task): fc.Arbitrary<unknown> => {
  const usable = answerKey.stars.filter((star) => star.usable).map((star) => star.hip);
  const up = answerKey.stars.filter((star) => star.altitudeDeg > 0).map((star) => star.hip);
  const allowed = variant.proposals ?? up;
  const hip = fc.oneof(
    fc.constantFrom(...allowed),
    fc.constantFrom(...(usable.length > 0 ? usable : allowed)),
  );
  const lookAlike = fc.oneof(
    fc.constant(null),
    hip.map((number) => `hip-${number}`),
  );
  const star = fc.record({ hip, lookAlike });
  const first =
    variant.givenHip === null ? star : fc.constant({ hip: variant.givenHip, lookAlike: null });
  return fc.oneof(
    {
      weight: 9,
      arbitrary: fc.record({ kind: fc.constant('pair'), stars: fc.tuple(first, star) }),
    },
    { weight: 1, arbitrary: fc.constant({ kind: 'none-usable' }) },
  );
};

it('the parts of every result add up to its mark, none above what it can earn', () => {
  let capped = 0;
  let marked = 0;
  for (const task of [...generated, undetermined]) {
    fc.assert(
      fc.property(submissionTo(task), (json) => {
        const submission = pairSubmissionSchema.parse(json);
        const graded = gradePair({ ...task, submission, catalogue });
        if (!graded.ok) return;
        const { criteria, total, advice } = graded.result;
        expect(criteria.reduce((sum, { earned }) => sum + earned, 0)).toBeCloseTo(total, 9);
        expect(criteria.reduce((sum, { possible }) => sum + possible, 0)).toBe(100);
        expect(criteria.every(({ earned, possible }) => earned >= 0 && earned <= possible)).toBe(
          true,
        );
        if (advice.code === 'there-was-none') {
          expect(total).toBeLessThanOrEqual(mostWithoutAnyPair);
          if (total === mostWithoutAnyPair) capped += 1;
        }
        marked += 1;
      }),
      { numRuns: 150, seed: 40 },
    );
  }
  expect(marked).toBeGreaterThan(1000);
  expect(capped).toBeGreaterThan(10);
}, 60_000);
