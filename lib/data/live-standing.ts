import type { LessonSlug } from '../course/lessons';
import type { Lab } from '../variants/labs';
import type { LiveStage } from './live-stage';

/**
 * From when on the board says that somebody may need a hand. Our judgement, from how long one step takes
 * in the labs and a question in the lessons; there is no source. The page says which rule it was.
 */
export const liveRules = {
  /** Open work without a new step. */
  quietMinutes: 6,
  /** A question that waits for its answer. */
  quietQuestionMinutes: 4,
  /** Answers in a row that were not right. */
  wrongInARow: 3,
  /** Checks or rounds of the same lab in a row that were handed in and did not pass. */
  notYetInARow: 2,
  /** No sign from a student without open work: then the chair may be empty. */
  hereMinutes: 15,
  /** How far back the board looks: about one period. Older open work was left on another day. */
  lessonMinutes: 50,
} as const;

type OpenWork = {
  attemptId: string;
  assignmentId: string | null;
  lab: Lab;
  mode: 'practice' | 'check';
  title: string;
  part: { number: number; of: number } | null;
  stage: LiveStage | null;
  startedAt: Date;
  /** The start, a saved step, or a look that was given out. */
  lastStepAt: Date;
};
export type HandedIn = {
  attemptId: string;
  assignmentId: string | null;
  lab: Lab;
  mode: 'practice' | 'check';
  title: string;
  at: Date;
  /** Null where nothing is marked. */
  passed: boolean | null;
  gateFailed: boolean;
};
/** What the database knows of one student's last period; lists newest first. */
export type LiveFacts = {
  lastSeenAt: Date | null;
  /** Signed out, and not in again since. */
  signedOut: boolean;
  open: OpenWork | null;
  question: { lesson: LessonSlug; askedAt: Date } | null;
  answers: readonly { lesson: LessonSlug; at: Date; passed: boolean }[];
  handedIn: readonly HandedIn[];
  /** A lesson's page that was opened last, as far as this process knows. */
  reading: { lesson: LessonSlug; at: Date } | null;
};

export type LiveState = 'needs-help' | 'working' | 'done' | 'here' | 'away';
export type LivePlace =
  | ({ kind: 'attempt' } & Pick<OpenWork, 'lab' | 'mode' | 'title' | 'part' | 'stage'>)
  | { kind: 'practice'; lesson: LessonSlug }
  | ({ kind: 'handed-in' } & Pick<HandedIn, 'lab' | 'mode' | 'title' | 'passed'>)
  | { kind: 'reading'; lesson: LessonSlug }
  /** Signed in, with nothing open. */
  | { kind: 'nothing-open' }
  /** Open work was left, and no sign since. */
  | { kind: 'away'; signedOut: boolean };
export type LiveNeed =
  | { why: 'no-new-step' | 'no-answer'; since: Date }
  | { why: 'gate' }
  | { why: 'wrong-in-a-row' | 'not-yet-again'; count: number };
export type LiveStanding = {
  state: LiveState;
  place: LivePlace;
  /** When they came there; null where that was before this period. */
  since: Date | null;
  need: LiveNeed | null;
  last: { what: 'step' | 'started' | 'asked' | 'answered' | 'handed-in' | 'seen'; at: Date } | null;
  assignmentId: string | null;
};

const minutesAgo = (now: Date, minutes: number): Date => new Date(now.getTime() - minutes * 60_000);
const isOver = (since: Date, minutes: number, now: Date): boolean =>
  since <= minutesAgo(now, minutes);

/** Where a student is and whether somebody should go there. Whatever happened last decides where. */
export function standingNow(facts: LiveFacts, now: Date): LiveStanding {
  const period = minutesAgo(now, liveRules.lessonMinutes);
  const [handedIn] = facts.handedIn;
  const [answer] = facts.answers;
  const { open, question, reading } = facts;
  const found = [
    open === null ? null : { at: open.lastStepAt, is: () => inAttempt(open, facts, now) },
    question === null ? null : { at: question.askedAt, is: () => atQuestion(question, facts, now) },
    answer === undefined ? null : { at: answer.at, is: () => hasAnswered(answer, facts) },
    handedIn === undefined ? null : { at: handedIn.at, is: () => hasHandedIn(handedIn, facts) },
    reading === null ? null : { at: reading.at, is: () => isReading(reading) },
  ]
    .filter((one) => one !== null)
    .toSorted((one, other) => other.at.getTime() - one.at.getTime());
  const latest = found[0];
  const lastSign = latestOf(facts.lastSeenAt, latest?.at ?? null);
  if (lastSign === null) return absent(facts, null);
  const waits = open !== null || question !== null;
  // A page sends nothing while somebody broods over it: with work open, silence is not absence.
  const quietLimit = waits ? liveRules.lessonMinutes : liveRules.hereMinutes;
  if (facts.signedOut || isOver(lastSign, quietLimit, now)) {
    return handedIn !== undefined && latest?.at === handedIn.at && handedIn.at >= period
      ? // Nobody is there to be helped, but what was done in this period is done.
        { ...hasHandedIn(handedIn, facts), state: 'done', need: null }
      : absent(facts, lastSign);
  }
  if (latest === undefined || latest.at < period) return nothingOpen(facts.lastSeenAt);
  const standing = latest.is();
  return standing.since !== null && standing.since < period
    ? { ...standing, since: null }
    : standing;
}

const latestOf = (...moments: readonly (Date | null)[]): Date | null =>
  moments.reduce(
    (latest, at) => (at !== null && (latest === null || at > latest) ? at : latest),
    null,
  );

function absent({ signedOut }: LiveFacts, lastSign: Date | null): LiveStanding {
  return {
    state: 'away',
    place: { kind: 'away', signedOut },
    since: null,
    need: null,
    assignmentId: null,
    last: lastSign === null ? null : { what: 'seen', at: lastSign },
  };
}

const nothingOpen = (lastSeenAt: Date | null): LiveStanding => ({
  state: 'here',
  place: { kind: 'nothing-open' },
  since: null,
  need: null,
  assignmentId: null,
  last: lastSeenAt === null ? null : { what: 'seen', at: lastSeenAt },
});

function inAttempt(open: OpenWork, facts: LiveFacts, now: Date): LiveStanding {
  const { lab, mode, title, part, stage, startedAt, lastStepAt, assignmentId } = open;
  const need: LiveNeed | null = isOver(lastStepAt, liveRules.quietMinutes, now)
    ? { why: 'no-new-step', since: lastStepAt }
    : notYetAgain(lab, facts);
  return {
    state: need === null ? 'working' : 'needs-help',
    place: { kind: 'attempt', lab, mode, title, part, stage },
    since: startedAt,
    need,
    last: { what: lastStepAt > startedAt ? 'step' : 'started', at: lastStepAt },
    assignmentId,
  };
}

function atQuestion(
  { lesson, askedAt }: NonNullable<LiveFacts['question']>,
  facts: LiveFacts,
  now: Date,
): LiveStanding {
  const need: LiveNeed | null = isOver(askedAt, liveRules.quietQuestionMinutes, now)
    ? { why: 'no-answer', since: askedAt }
    : wrongInARow(lesson, facts);
  return {
    ...inPractice(lesson, facts, need),
    last: { what: 'asked', at: askedAt },
  };
}

const hasAnswered = (
  { lesson, at }: LiveFacts['answers'][number],
  facts: LiveFacts,
): LiveStanding => ({
  ...inPractice(lesson, facts, wrongInARow(lesson, facts)),
  last: { what: 'answered', at },
});

function inPractice(lesson: LessonSlug, facts: LiveFacts, need: LiveNeed | null) {
  const there = [
    ...facts.answers.filter((one) => one.lesson === lesson).map(({ at }) => at),
    ...(facts.question?.lesson === lesson ? [facts.question.askedAt] : []),
  ];
  const since = there.reduce<Date | null>(
    (first, at) => (first === null || at < first ? at : first),
    null,
  );
  const state: LiveState = need === null ? 'working' : 'needs-help';
  return { state, place: { kind: 'practice' as const, lesson }, since, need, assignmentId: null };
}

function hasHandedIn(work: HandedIn, facts: LiveFacts): LiveStanding {
  const { lab, mode, title, at, passed, gateFailed, assignmentId } = work;
  const need: LiveNeed | null = gateFailed ? { why: 'gate' } : notYetAgain(lab, facts);
  return {
    state: need === null ? 'done' : 'needs-help',
    place: { kind: 'handed-in', lab, mode, title, passed },
    since: at,
    need,
    last: { what: 'handed-in', at },
    assignmentId,
  };
}

const isReading = ({ lesson, at }: NonNullable<LiveFacts['reading']>): LiveStanding => ({
  state: 'here',
  place: { kind: 'reading', lesson },
  since: at,
  need: null,
  last: { what: 'seen', at },
  assignmentId: null,
});

/** How many at the head of a list are so. */
function inARow<T>(list: readonly T[], isSo: (one: T) => boolean): number {
  const end = list.findIndex((one) => !isSo(one));
  return end < 0 ? list.length : end;
}

function wrongInARow(lesson: LessonSlug, { answers }: LiveFacts): LiveNeed | null {
  const ofLesson = answers.filter((one) => one.lesson === lesson);
  const count = inARow(ofLesson, ({ passed }) => !passed);
  return count >= liveRules.wrongInARow ? { why: 'wrong-in-a-row', count } : null;
}

function notYetAgain(lab: Lab, { handedIn }: LiveFacts): LiveNeed | null {
  const ofLab = handedIn.filter((one) => one.lab === lab);
  const count = inARow(ofLab, ({ passed }) => passed === false);
  return count >= liveRules.notYetInARow ? { why: 'not-yet-again', count } : null;
}
