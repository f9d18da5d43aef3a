import Database from 'better-sqlite3';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { pairVariantSchema } from '../../lib/data/lab-tasks/stored-pair';
import { storedAnswerKeySchema } from '../../lib/data/lab-tasks/stored-sky';
import { rightPairs } from '../../lib/grading/allowed-pairs';
import { gradePair } from '../../lib/grading/grade-pair';
import { pairSubmissionSchema } from '../../lib/grading/pair-submission';
import type { AnswerKey, AnswerKeyStar } from '../../lib/pointing/answer-key';
import { storedAnswerKey } from '../../lib/pointing/stored-answer-key';
import { decodeCatalogue } from '../../lib/sky/catalogue';
import { skyFrameAt } from '../../lib/sky/frame-at';
import type { PairVariant } from '../../lib/variants/pair-variant';

export const catalogue = decodeCatalogue(
  JSON.parse(
    readFileSync(path.resolve(import.meta.dirname, '../../content/stars/catalogue.json'), 'utf8'),
  ),
);

const rowSchema = z.object({
  variant: z.string(),
  answerKey: z.string(),
  submission: z.string().nullable(),
});

/** Rows of the product's database, read as they stand. */
export function rowsOf(dataFolder: string, sql: string, ...values: string[]): unknown[] {
  const database = new Database(path.join(dataFolder, 'duskbench.sqlite'), { readonly: true });
  try {
    return database.prepare(sql).all(...values);
  } finally {
    database.close();
  }
}

/** The number of rows that the statement counts as `n`. */
export function count(dataFolder: string, sql: string, ...values: string[]): number {
  const [row] = rowsOf(dataFolder, sql, ...values);
  return z.object({ n: z.number() }).parse(row).n;
}

/** Makes an attempt's mark another, as if a grader had erred. */
export function setMark(dataFolder: string, attemptId: string, total: number): void {
  const database = new Database(path.join(dataFolder, 'duskbench.sqlite'), { timeout: 10_000 });
  try {
    database.prepare('UPDATE Mark SET total = ? WHERE attemptId = ?').run(total, attemptId);
  } finally {
    database.close();
  }
}

/** What the product's database keeps of an attempt, of whichever lab. */
export function storedAttempt(dataFolder: string, attemptId: string) {
  const [row] = rowsOf(
    dataFolder,
    'SELECT variant, answerKey, submission FROM Attempt WHERE id = ?',
    attemptId,
  );
  const { variant, answerKey, submission } = rowSchema.parse(row);
  const read = (json: string): unknown => JSON.parse(json);
  return {
    variant: read(variant),
    answerKey: read(answerKey),
    submission: submission === null ? null : read(submission),
  };
}

/** The work in progress that was saved last. */
export function storedDraft(dataFolder: string, attemptId: string): unknown {
  const [row] = rowsOf(
    dataFolder,
    `SELECT payload FROM Event WHERE attemptId = ? AND kind = 'draft' ORDER BY sequence DESC LIMIT 1`,
    attemptId,
  );
  return JSON.parse(z.object({ payload: z.string() }).parse(row).payload);
}

/** An attempt at “Pick the pair”: the sky and what was handed in. */
function storedPair(dataFolder: string, attemptId: string) {
  const { variant, answerKey, submission } = storedAttempt(dataFolder, attemptId);
  return {
    variant: pairVariantSchema.parse(variant),
    answerKey: storedAnswerKeySchema.parse(answerKey),
    submission: submission === null ? null : pairSubmissionSchema.parse(submission),
  };
}

/** Two stars, and the sky they stand in. */
export type StoredPair = { variant: PairVariant; stars: readonly [AnswerKeyStar, AnswerKeyStar] };

/** A hand's press reaches two degrees or so: nothing of a like brightness may stand nearer. */
const leastGapDeg = 4;

const clearStar = (key: AnswerKey, hip: number): AnswerKeyStar | undefined =>
  key.stars.find(
    (star) =>
      star.hip === hip && star.cautions.every(({ separationDeg }) => separationDeg > leastGapDeg),
  );

/**
 * Two stars of an open attempt that may serve, with room about them to be pressed on: the best such
 * pair, or one that is worth clearly less, so that a wrong mark cannot pass for it. A given star
 * comes first. Null where the mount proposes the stars, or where there is no such pair.
 */
export function pairToPick(
  dataFolder: string,
  attemptId: string,
  quality: 'best' | 'middling',
): StoredPair | null {
  const { variant, answerKey } = storedPair(dataFolder, attemptId);
  if (variant.proposals !== null) return null;
  const pairs = rightPairs(variant, answerKey).flatMap(({ stars, hitRate }) => {
    const [hip, otherHip] = stars[1] === variant.givenHip ? ([stars[1], stars[0]] as const) : stars;
    const first = clearStar(answerKey, hip);
    const second = clearStar(answerKey, otherHip);
    return first === undefined || second === undefined
      ? []
      : [{ stars: [first, second] as const, hitRate }];
  });
  const [best] = pairs;
  const chosen =
    quality === 'best'
      ? best
      : (pairs.find(({ hitRate }) => hitRate < 0.85 * (best?.hitRate ?? 0)) ?? pairs.at(-1));
  return chosen === undefined ? null : { variant, stars: chosen.stars };
}

/**
 * The mark of what was handed in, worked out here from the scenario and the instant alone: sky,
 * answer key and mark anew, without the key or the mark that the product stored.
 */
export function markByEngine(dataFolder: string, attemptId: string): number {
  const { variant, submission } = storedPair(dataFolder, attemptId);
  if (submission === null) throw new Error('Nothing has been handed in.');
  const { scenario } = variant;
  const { instant } = variant.frame;
  const frame = skyFrameAt({ instant, place: scenario.place });
  const graded = gradePair({
    variant: { ...variant, frame },
    answerKey: storedAnswerKey({ scenario, instant, frame, catalogue }),
    submission,
    catalogue,
  });
  if (!graded.ok) throw new Error(`not marked: ${graded.refusal.code}`);
  return graded.result.total;
}
