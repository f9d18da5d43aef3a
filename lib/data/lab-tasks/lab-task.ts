import { z } from 'zod';
import type { Scenario } from '../../pointing/scenario';
import type { Lab, Template } from '../../variants/labs';
import { failure, success, type Problem, type Result } from '../result';
import { sameJson } from '../same-json';
import { unreadableAnswer } from '../unreadable-answer';
import { stillOpen } from './still-open';

/** What one student's task is made of. The same input makes the same task. */
export type TaskInput<T extends Template = Template> = {
  /** Hex of an HMAC, or any text. */
  seed: string;
  scenario: Scenario;
  templates: readonly T[];
  /** The task's moment lies within ± this many minutes of the scenario's. */
  windowMinutes: number;
  /** Of a built-in kit; null for a telescope of the teacher's own numbers. */
  kitId: string | null;
  /** Null: time does not count. */
  minutesAllowed: number | null;
  mayPause: boolean;
};

/** The same before the database's or the form's words for kinds of task have been read. */
type UnreadTaskInput = Omit<TaskInput, 'templates'> & { templates: readonly string[] };

/** What an attempt keeps of its task, as the database hands it out. */
export type StoredTask = { graderVersion: number; variant: unknown; answerKey: unknown };

/** What the server itself saw a student look at, in that order: the payloads of 'looked' events. */
export type LookedAt = readonly unknown[];

type AnyVariant<T> = { lab: Lab; template: T; generatorVersion: number };
type AnyResult = { lab: Lab; graderVersion: number; total: number };

/** One lab as lib/data needs it: how its JSON reads, how a task is made, and how it is marked. */
type LabTaskSpec<T extends Template, V extends AnyVariant<T>, K, D, S, R extends AnyResult, P> = {
  lab: V['lab'];
  title: string;
  templates: readonly T[];
  variantSchema: z.ZodType<V>;
  answerKeySchema: z.ZodType<K>;
  draftSchema: z.ZodType<D>;
  emptyDraft: D;
  submissionSchema: z.ZodType<S>;
  resultSchema: z.ZodType<R>;
  /** Whether a draft takes the place of the one before; else each is kept. */
  keepsLatestDraftOnly: boolean;
  /** The most characters that a draft or an answer may come to as JSON. */
  longestJson: number;
  /** Of the grader that marks what is started now. */
  graderVersion: number;
  make: (input: TaskInput<T>) => { variant: V; answerKey: K };
  /** Marks by the rules of that version: a regrade is a replay. */
  grade: (
    graderVersion: number,
    work: { variant: V; answerKey: K; submission: S },
  ) => { ok: true; result: R } | { ok: false; problem: Problem };
  /**
   * In a lab whose pieces are given out one by one: the work as it was, whatever the browser says of it.
   * What the server gave out counts as looked at.
   */
  withLooks?: {
    draft: (draft: D, lookedAt: LookedAt) => D;
    submission: (submission: S, lookedAt: LookedAt) => S;
  };
  /** What the teacher is shown of a task before anybody gets it. */
  sample: (task: { variant: V; answerKey: K }) => P;
};

/**
 * Closes a lab's own types in: what comes out takes JSON and gives what the lab's own types say, so
 * that code for all labs needs to know none of them.
 */
export function defineLabTask<
  T extends Template,
  V extends AnyVariant<T>,
  K,
  D,
  S,
  R extends AnyResult,
  P,
>(spec: LabTaskSpec<T, V, K, D, S, R, P>) {
  const { lab, title, templates, graderVersion, keepsLatestDraftOnly } = spec;
  const templatesSchema = z.array(z.enum(templates));
  const submittedSchema = z.strictObject({
    submission: spec.submissionSchema,
    idempotencyKey: z.string().min(8).max(100),
  });
  const draftSchema = z.strictObject({
    sequence: z.number().int().min(1).max(20_000),
    draft: spec.draftSchema,
  });
  const tooLong = (value: unknown): boolean => JSON.stringify(value).length > spec.longestJson;

  const make = (input: UnreadTaskInput) =>
    spec.make({ ...input, templates: templatesSchema.parse(input.templates) });
  const grade = (version: number, work: { variant: V; answerKey: K; submission: S }): Result<R> => {
    const grading = spec.grade(version, work);
    return grading.ok ? success(grading.result) : grading;
  };

  return {
    lab,
    title,
    templates,
    keepsLatestDraftOnly,
    /** Of the grader that marks what is started now. */
    graderVersion,

    /** What an attempt freezes at its start. */
    freeze(input: UnreadTaskInput) {
      const { variant, answerKey } = make(input);
      const { template, generatorVersion } = variant;
      return { lab, template, variant, answerKey, graderVersion, generatorVersion };
    },

    /** Work in progress as the browser sends it: { sequence, draft }. */
    readDraft(input: unknown): Result<{ sequence: number; draft: D }> {
      const parsed = draftSchema.safeParse(input);
      if (!parsed.success) return unreadableAnswer(parsed.error);
      return tooLong(parsed.data.draft) ? tooLongToKeep() : success(parsed.data);
    },

    /** Whether what is stored is this very draft. */
    isDraft: (stored: unknown, draft: unknown): boolean =>
      sameJson(spec.draftSchema.parse(stored), draft),

    /** An answer as the browser sends it, { submission, idempotencyKey }, and what it is worth. */
    readSubmission(input: unknown): Result<{
      idempotencyKey: string;
      /** The submission as it is kept, and what it is worth. */
      mark: (stored: StoredTask, lookedAt: LookedAt) => Result<{ submission: S; result: R }>;
    }> {
      const parsed = submittedSchema.safeParse(input);
      if (!parsed.success) return unreadableAnswer(parsed.error);
      const { submission: sent, idempotencyKey } = parsed.data;
      if (tooLong(sent)) return tooLongToKeep();
      const mark = (stored: StoredTask, lookedAt: LookedAt) => {
        const submission = spec.withLooks?.submission(sent, lookedAt) ?? sent;
        const graded = grade(stored.graderVersion, {
          variant: spec.variantSchema.parse(stored.variant),
          answerKey: spec.answerKeySchema.parse(stored.answerKey),
          submission,
        });
        return graded.ok ? success({ submission, result: graded.value }) : graded;
      };
      return success({ idempotencyKey, mark });
    },

    /** A replay: what was handed in, by today's grader. The submission holds all that was looked at. */
    remark: (stored: { variant: unknown; answerKey: unknown; submission: unknown }): Result<R> =>
      grade(graderVersion, {
        variant: spec.variantSchema.parse(stored.variant),
        answerKey: spec.answerKeySchema.parse(stored.answerKey),
        submission: spec.submissionSchema.parse(stored.submission),
      }),

    /** An open attempt's task with its work so far; without a draft, work not begun. */
    open(stored: { variant: unknown; draft: unknown; lookedAt: LookedAt }) {
      const draft = stored.draft === null ? spec.emptyDraft : spec.draftSchema.parse(stored.draft);
      return {
        lab,
        variant: spec.variantSchema.parse(stored.variant),
        draft: spec.withLooks?.draft(draft, stored.lookedAt) ?? draft,
      };
    },

    /** A submitted attempt's task with what came of it, as far as that may be seen. */
    submitted: (stored: { variant: unknown; result: unknown }) => ({
      lab,
      variant: spec.variantSchema.parse(stored.variant),
      result: stored.result === null ? null : spec.resultSchema.parse(stored.result),
    }),

    readResult: (stored: unknown): R => spec.resultSchema.parse(stored),

    /** One drawn example of each kind of task that the teacher has chosen. */
    samples: (input: Omit<UnreadTaskInput, 'seed'>, seedFor: (template: T) => string) => ({
      lab,
      variants: templatesSchema.parse(input.templates).map((template) => ({
        template,
        sample: spec.sample(make({ ...input, templates: [template], seed: seedFor(template) })),
      })),
    }),

    /** The same of a task that an attempt keeps. */
    sampleOf(stored: { variant: unknown; answerKey: unknown }) {
      const variant = spec.variantSchema.parse(stored.variant);
      const answerKey = spec.answerKeySchema.parse(stored.answerKey);
      return {
        lab,
        variants: [{ template: variant.template, sample: spec.sample({ variant, answerKey }) }],
      };
    },

    /** A round that is kept nowhere: made of its address and marked at once. */
    makeRound: (input: Omit<UnreadTaskInput, 'templates'>): V =>
      make({ ...input, templates }).variant,
    markRound(input: Omit<UnreadTaskInput, 'templates'>, sent: unknown): Result<R> {
      const parsed = spec.submissionSchema.safeParse(sent);
      if (!parsed.success || tooLong(sent)) {
        return failure('bad-input', 'This answer cannot be read. Nothing was counted.');
      }
      return grade(graderVersion, { ...make({ ...input, templates }), submission: parsed.data });
    },
  };
}

const tooLongToKeep = () =>
  failure(
    'too-long',
    `There is more of this work than can be kept. Finish it as it stands. ${stillOpen}`,
  );
