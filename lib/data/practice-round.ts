import type { PairResult } from '../grading/pair-submission';
import type { PairVariant } from '../variants/pair-variant';
import type { Clock } from './clock';
import type { Result } from './result';

/** A visitor's round is made from its page address alone; nothing is kept. */
export type VisitorRoundRequest = {
  seed: string;
  kitId?: string;
  siteId?: string;
  placeId?: number;
  /** "2026-12-05T19:30" at the place; without it, tonight at nautical dusk. */
  localTime?: string;
};
/** The request with every choice made: put it into the address, and the same round can be made again. */
export type VisitorRound = Required<VisitorRoundRequest> & { placeName: string; variant: PairVariant };

export async function makeVisitorRound(
  request: VisitorRoundRequest,
  clock?: Clock,
): Promise<Result<VisitorRound>> {
  throw new Error('not written yet');
}
/** Regenerates the round and grades the submission. */
export async function gradeVisitorRound(
  request: Required<VisitorRoundRequest>,
  submission: unknown,
): Promise<Result<PairResult>> {
  throw new Error('not written yet');
}
