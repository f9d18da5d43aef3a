import { passes, type Evidence } from './evidence';

/** Passed in a row, on different templates. Kelly et al. 2015, by the design's word. */
export const neededInARow = 3;
/** Days after mastery at which a skill is asked for again. Our judgement; fixed, as Latimier 2021 found no gain in expanding. */
export const reviewDays = [2, 7, 21] as const;

const dayMs = 24 * 60 * 60 * 1000;
/**
 * So long before its time a review counts already: a lesson at the same hour a week later begins some
 * minutes earlier or later, and nobody should lose a review to them. Our judgement.
 */
const reviewCountsEarlyMs = dayMs / 2;

export type Mastery = {
  /** 'kept': mastered, and every review passed. */
  state: 'not-started' | 'practising' | 'mastered' | 'review-due' | 'kept';
  /** Passed in a row on different templates since the last that was not; up to {@link neededInARow}. */
  inARow: number;
  masteredAt: Date | null;
  /** Null before mastery and after the last review. */
  nextReviewAt: Date | null;
  reviewsPassed: number;
  pieces: number;
  lastAt: Date | null;
};

/**
 * Where one student stands in one skill, from all evidence of it in order of time.
 *
 * Mastery: three passed in a row on three different templates; a template met again adds nothing and
 * breaks nothing. What is handed in at one instant counts together: a set with one answer that does not
 * pass breaks the row, in whichever order its questions stood. Then a review falls due 2, 7 and 21 days after mastery; the first hand-in passed at
 * that time, or up to half a day before it, is the review; one not passed keeps it due. A review that is
 * late moves those after it along by as much, so that the gaps stay. Mastery once shown is not taken back:
 * the state says what is due.
 */
export function masteryOf(evidence: readonly Evidence[], now: Date): Mastery {
  const inOrder = [...evidence].sort((a, b) => a.at.getTime() - b.at.getTime());
  let row: string[] = [];
  let masteredAt: Date | null = null;
  let reviewsPassed = 0;
  let nextReviewAt: Date | null = null;

  for (const handIn of handIns(inOrder)) {
    const [{ at }] = handIn;
    const passed = handIn.every(passes);
    row = passed ? [...new Set([...row, ...handIn.map(({ template }) => template)])] : [];
    if (masteredAt === null) {
      if (row.length < neededInARow) continue;
      masteredAt = at;
      nextReviewAt = reviewAfter(at, 0);
    } else if (nextReviewAt !== null && passed && isReview(at, nextReviewAt)) {
      reviewsPassed += 1;
      nextReviewAt = reviewAfter(at, reviewsPassed);
    }
  }
  return {
    state: stateOf({ pieces: inOrder.length, masteredAt, nextReviewAt, now }),
    inARow: Math.min(row.length, neededInARow),
    masteredAt,
    nextReviewAt,
    reviewsPassed,
    pieces: inOrder.length,
    lastAt: inOrder.at(-1)?.at ?? null,
  };
}

type HandIn = [Evidence, ...Evidence[]];

/** Pieces of one instant together, in order of time. */
function handIns(inOrder: readonly Evidence[]): HandIn[] {
  const groups: HandIn[] = [];
  for (const piece of inOrder) {
    const last = groups.at(-1);
    if (last?.[0].at.getTime() === piece.at.getTime()) last.push(piece);
    else groups.push([piece]);
  }
  return groups;
}

const isReview = (at: Date, dueAt: Date): boolean =>
  at.getTime() >= dueAt.getTime() - reviewCountsEarlyMs;

/** The gap before a review, counted from mastery or from the review before; null after the last. */
function reviewAfter(from: Date, reviewsPassed: number): Date | null {
  const days = reviewDays[reviewsPassed];
  if (days === undefined) return null;
  const before = reviewDays[reviewsPassed - 1] ?? 0;
  return new Date(from.getTime() + (days - before) * dayMs);
}

function stateOf(of: {
  pieces: number;
  masteredAt: Date | null;
  nextReviewAt: Date | null;
  now: Date;
}): Mastery['state'] {
  if (of.pieces === 0) return 'not-started';
  if (of.masteredAt === null) return 'practising';
  if (of.nextReviewAt === null) return 'kept';
  return of.now >= of.nextReviewAt ? 'review-due' : 'mastered';
}
