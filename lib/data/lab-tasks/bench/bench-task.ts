import 'server-only';
import { z } from 'zod';
import type { AnyBenchResult } from '../../../grading/bench/any-bench-result';
import type { BenchGrading } from '../../../grading/bench/bench-result';
import type { AnyBenchVariant, BenchTemplate } from '../../../variants/bench/bench-labs';
import type { BenchTaskInput } from '../../../variants/bench/bench-variant';
import { failure } from '../../result';
import { defineLabTask } from '../lab-task';
import { stillOpen } from '../still-open';
import { benchKitFor } from './bench-kit-for';

type Work<V, S> = { variant: V; submission: S };

type BenchTaskSpec<T extends BenchTemplate, V extends AnyBenchVariant, D, S, R> = {
  lab: V['lab'];
  title: string;
  templates: readonly T[];
  variantSchema: z.ZodType<V>;
  draftSchema: z.ZodType<D>;
  emptyDraft: D;
  submissionSchema: z.ZodType<S>;
  resultSchema: z.ZodType<R>;
  graderVersion: number;
  /** Every grader that ever marked an attempt, by version. */
  graders: ReadonlyMap<number, (work: Work<V, S>) => BenchGrading<R>>;
  generate: (input: BenchTaskInput<T>) => V;
  /** What a perfect operator would hand in: the teacher's answer key. */
  modelAnswer: (variant: V) => S;
  /** The most characters of a draft or an answer as JSON, where a few thousand are not enough. */
  longestJson?: number;
};

/** A bench lab as lib/data needs it. Its answer key is a model answer; the rest is as in every lab. */
export function defineBenchTask<
  T extends BenchTemplate,
  V extends AnyBenchVariant & { template: T },
  D,
  S,
  R extends AnyBenchResult,
>(spec: BenchTaskSpec<T, V, D, S, R>) {
  const { graders, generate, modelAnswer, submissionSchema, longestJson = 8000, ...rest } = spec;

  function grade(version: number, { variant, submission }: Work<V, S>) {
    const grader = graders.get(version);
    if (grader === undefined) throw new Error(`there is no grader of version ${version}`);
    const grading = grader({ variant, submission });
    if (grading.ok) return grading;
    const { code, message } = grading.refusal;
    return failure(code, `${message} ${stillOpen}`);
  }

  return defineLabTask<T, V, { answer: S }, D, S, R, { variant: V; answer: S }>({
    ...rest,
    submissionSchema,
    longestJson,
    answerKeySchema: z.object({ answer: submissionSchema }),
    keepsLatestDraftOnly: true,

    make({ kitId, ...input }) {
      const variant = generate({ ...input, kit: benchKitFor(kitId, input.scenario) });
      return { variant, answerKey: { answer: modelAnswer(variant) } };
    },
    grade,
    sample: ({ variant, answerKey }) => ({ variant, answer: answerKey.answer }),
  });
}
