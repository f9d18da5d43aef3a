import { beforeAll, describe, expect, test, vi } from 'vitest';
import {
  getOpenAttempt,
  lookAt,
  saveDraft,
  startPractice,
  submitAttempt,
} from '@/lib/data/attempts';
import { fixedClock } from '@/lib/data/clock';
import { db } from '@/lib/data/db';
import { faultVariantSchema } from '@/lib/data/lab-tasks/stored-fault';
import { makeVisitorRound } from '@/lib/data/practice-round';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { gradeRound, lookInRound } from '@/app/(public)/labs/what-went-wrong/actions';
import { faultTask, rightAnswerOf, runTask } from '../support/lab-work';
import { useSchoolDatabase } from '../support/school-database';
import {
  codeOf,
  makeSchool,
  monday,
  published,
  startPart,
  started,
  valueOf,
  type School,
} from '../support/school';

// The visitors' actions ask for the caller's address, which only a request has.
vi.mock('next/headers', () => ({ headers: () => Promise.resolve(new Headers()) }));

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const key = 'idempotency-key';
const opened = async () =>
  started(school.ann, await published(school, { attemptsAllowed: null }, monday, faultTask));
const eveningOf = async (attemptId: string) => {
  const { variant } = await db().attempt.findUniqueOrThrow({ where: { id: attemptId } });
  return faultVariantSchema.parse(variant);
};
const looksKept = (attemptId: string) => db().event.count({ where: { attemptId, kind: 'looked' } });
const draftOf = async (attemptId: string) => {
  const open = await getOpenAttempt(school.ann, attemptId);
  if (open?.lab !== 'what-went-wrong') throw new Error('this is another lab');
  return { draft: open.draft, nextSequence: open.nextSequence };
};
/** Looks are in the order of their times. */
const later = (seconds: number) =>
  fixedClock(new Date(monday.now().getTime() + seconds * 1000).toISOString());
const empty = { looked: [], testSlew: null, fault: null, cure: null };

describe('a look', () => {
  test('gives out its piece and no other, as one event however often it is asked for', async () => {
    const attemptId = await opened();
    const { evidence } = await eveningOf(attemptId);
    const card = valueOf(await lookAt(school.ann, attemptId, 'card', monday));
    expect(card).toEqual({ evidence: { card: evidence.card }, testSlew: null, places: {} });
    const again = await Promise.all(
      [1, 2, 3].map(() => lookAt(school.ann, attemptId, 'card', monday)),
    );
    for (const one of again) expect(valueOf(one)).toEqual(card);
    expect(await looksKept(attemptId)).toBe(1);
  });

  test('at what lies open costs nothing', async () => {
    const attemptId = await opened();
    const { open, evidence } = await eveningOf(attemptId);
    expect(open).toContain('first');
    const { evidence: shown } = valueOf(await lookAt(school.ann, attemptId, 'first', monday));
    expect(shown).toEqual({ first: evidence.first });
    expect(await looksKept(attemptId)).toBe(0);
  });

  test('is for the student alone; to all others the attempt is not there', async () => {
    const attemptId = await opened();
    const others = [
      'ben',
      'dee',
      'owner',
      'colleague',
      'observer',
      'stranger',
      'anonymous',
    ] as const;
    for (const who of others)
      expect(codeOf(await lookAt(school[who], attemptId, 'card', monday)), who).toBe('not-found');
    expect(codeOf(await lookAt(school.ann, 'no such attempt', 'card', monday))).toBe('not-found');
    expect(await looksKept(attemptId)).toBe(0);
  });

  test('is refused in another lab, and where there is nothing to look at', async () => {
    const run = await started(school.ann, await published(school, {}, monday, runTask));
    expect(codeOf(await lookAt(school.ann, run, 'card', monday))).toBe('not-found');
    const attemptId = await opened();
    for (const what of [
      'answerKey',
      null,
      {},
      { testSlew: 'Vega' },
      ['card'],
      { testSlew: 1, x: 1 },
    ])
      expect(codeOf(await lookAt(school.ann, attemptId, what, monday))).toBe('bad-input');
    expect(codeOf(await lookAt(school.ann, attemptId, { testSlew: 1 }, monday))).toBe(
      'not-offered',
    );
    expect(await looksKept(attemptId)).toBe(0);
  });

  test('is refused once the attempt is handed in, even the same again', async () => {
    const attemptId = await opened();
    valueOf(await lookAt(school.ann, attemptId, 'card', monday));
    const sent = { submission: await rightAnswerOf(attemptId), idempotencyKey: key };
    valueOf(await submitAttempt(school.ann, attemptId, sent, monday));
    for (const look of ['card', 'later'])
      expect(codeOf(await lookAt(school.ann, attemptId, look, monday))).toBe('already-submitted');
    expect(await looksKept(attemptId)).toBe(1);
  });

  test('of practice is kept too', async () => {
    const { attemptId } = valueOf(
      await startPractice(school.ann, { lab: 'what-went-wrong' }, monday),
    );
    const { open } = await eveningOf(attemptId);
    const look = open.includes('card') ? 'first' : 'card';
    valueOf(await lookAt(school.ann, attemptId, look, monday));
    expect((await draftOf(attemptId)).draft.looked).toEqual([look]);
  });
});

describe('the test slew', () => {
  test('is one: the same again shows the same, another is refused', async () => {
    const attemptId = await opened();
    const [one, other] = (await eveningOf(attemptId)).testSlews;
    if (one === undefined || other === undefined) throw new Error('two slews are offered');
    const slew = (hip: number) => lookAt(school.ann, attemptId, { testSlew: hip }, monday);
    const shown = valueOf(await slew(one.hip));
    expect(shown).toMatchObject({ evidence: {}, testSlew: one });
    expect(shown.places[one.hip]?.altitudeDeg).toBeGreaterThan(0);
    expect(codeOf(await slew(other.hip))).toBe('changed-meanwhile');
    expect(valueOf(await slew(one.hip))).toEqual(shown);
    expect(await looksKept(attemptId)).toBe(1);
    expect((await draftOf(attemptId)).draft.testSlew).toBe(one.hip);
  });

  test('is one even where two are asked for at once', async () => {
    const attemptId = await opened();
    const { testSlews } = await eveningOf(attemptId);
    const answers = await Promise.all(
      testSlews.map(({ hip }) => lookAt(school.ann, attemptId, { testSlew: hip }, monday)),
    );
    expect(answers.map(codeOf).toSorted()).toEqual([
      ...answers.slice(1).map(() => 'changed-meanwhile'),
      'ok',
    ]);
  });
});

describe('drafts and looks', () => {
  test('do not come between each other: numbers, second windows and what is resumed', async () => {
    const attemptId = await opened();
    const save = (sequence: number, draft: object) =>
      saveDraft(school.ann, attemptId, { sequence, draft }, monday);
    valueOf(await lookAt(school.ann, attemptId, 'card', monday));
    expect(await draftOf(attemptId)).toEqual({
      draft: { ...empty, looked: ['card'] },
      nextSequence: 1,
    });
    const first = { ...empty, looked: ['card'], fault: 'date' };
    valueOf(await save(1, first));
    valueOf(await lookAt(school.ann, attemptId, 'later', later(1)));
    // Sent again after a lost answer, then gone on with: as if there had been no look.
    valueOf(await save(1, first));
    valueOf(await save(2, { ...first, fault: 'latitude' }));
    expect(codeOf(await save(1, { ...first, fault: 'planet' }))).toBe('changed-meanwhile');
    expect(await draftOf(attemptId)).toEqual({
      draft: { ...empty, looked: ['card', 'later'], fault: 'latitude' },
      nextSequence: 3,
    });
  });

  test('a draft may claim no look that was not given out', async () => {
    const attemptId = await opened();
    const [slew] = (await eveningOf(attemptId)).testSlews;
    const draft = { ...empty, looked: ['card', 'later'], testSlew: slew?.hip ?? null };
    valueOf(await saveDraft(school.ann, attemptId, { sequence: 1, draft }, monday));
    expect((await draftOf(attemptId)).draft).toEqual(empty);
  });
});

describe('the mark', () => {
  const looksOf = ({ criteria }: { criteria: readonly { id: string; earned: number }[] }) =>
    criteria.find(({ id }) => id === 'looks')?.earned;

  test('counts what was given out, whatever the answer says of it', async () => {
    const attemptId = await opened();
    const [slew, other] = (await eveningOf(attemptId)).testSlews;
    if (slew === undefined || other === undefined) throw new Error('two slews are offered');
    for (const [seconds, what] of ['card', 'later', { testSlew: slew.hip }].entries())
      valueOf(await lookAt(school.ann, attemptId, what, later(seconds)));
    const submission = { ...(await rightAnswerOf(attemptId)), testSlew: other.hip };
    expect(submission.looked).toEqual([]);
    const sent = { submission, idempotencyKey: key };
    const { result } = valueOf(await submitAttempt(school.ann, attemptId, sent, monday));
    if (result?.lab !== 'what-went-wrong') throw new Error('this is another lab');
    // Ten for looks, two taken for each of three.
    expect(looksOf(result)).toBe(4);
    expect(result).toMatchObject({ looked: ['card', 'later'], testSlew: slew.hip, total: 94 });
    // Kept as it was marked, so that a regrade is a replay; and sent again it is the same.
    const kept = await db().attempt.findUniqueOrThrow({ where: { id: attemptId } });
    expect(kept.submission).toMatchObject({ looked: ['card', 'later'], testSlew: slew.hip });
    expect(valueOf(await submitAttempt(school.ann, attemptId, sent, monday)).result).toEqual(
      result,
    );
  });

  test('knows of a look that arrives together with the answer, or the look is refused', async () => {
    const attemptId = await opened();
    const sent = { submission: await rightAnswerOf(attemptId), idempotencyKey: key };
    const [look, answer] = await Promise.all([
      lookAt(school.ann, attemptId, 'card', monday),
      submitAttempt(school.ann, attemptId, sent, monday),
    ]);
    const { result } = valueOf(answer);
    expect(result?.total).toBe(look.ok ? 98 : 100);
    expect(await looksKept(attemptId)).toBe(look.ok ? 1 : 0);
  });

  test('of the next attempt begins with nothing looked at', async () => {
    const assignmentId = await published(school, { attemptsAllowed: 2 }, monday, faultTask);
    const attemptId = await started(school.ben, assignmentId);
    valueOf(await lookAt(school.ben, attemptId, 'card', monday));
    const sent = { submission: await rightAnswerOf(attemptId), idempotencyKey: key };
    valueOf(await submitAttempt(school.ben, attemptId, sent, monday));
    const next = valueOf(await startPart(school.ben, assignmentId, monday)).attemptId;
    expect(await getOpenAttempt(school.ben, next)).toMatchObject({ draft: empty });
  });
});

describe('a visitor', () => {
  test('is shown one piece of the round made again, and nothing is kept', async () => {
    const kept = await db().attempt.count();
    const task = labTasks['what-went-wrong'];
    const made = valueOf(await makeVisitorRound(task, { seed: 'a look' }, monday));
    const { seed, kitId, siteId, placeId, localTime, variant } = made;
    const address = { seed, kitId, siteId, placeId, localTime };
    const [slew] = variant.testSlews;
    expect(valueOf(await lookInRound(address, 'card')).evidence).toEqual({
      card: variant.evidence.card,
    });
    const landed = valueOf(await lookInRound(address, { testSlew: slew?.hip }));
    expect(landed).toMatchObject({ evidence: {}, testSlew: slew });
    expect(codeOf(await lookInRound(address, 'answerKey'))).toBe('bad-input');
    expect(codeOf(await lookInRound({ ...address, seed: '' }, 'card'))).toBe('bad-input');
    const [fault] = variant.faults;
    const [cure] = variant.cures;
    const submission = { looked: [], testSlew: null, fault, cure };
    const { result } = valueOf(await gradeRound(address, { submission, idempotencyKey: key }));
    expect(result?.variant.evidence).toEqual(variant.evidence);
    expect(result?.result.named).toBe(fault);
    expect(await db().attempt.count()).toBe(kept);
  });
});
