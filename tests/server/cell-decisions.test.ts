import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { getCellTrail, undoLastDecision } from '@/lib/data/audit-trail';
import { getAttemptComments, writeComment } from '@/lib/data/comments';
import { db } from '@/lib/data/db';
import { getDecisionTimes, getOverrideTimes } from '@/lib/data/decisions-standing';
import {
  excuse,
  extendDue,
  getStudentGradebook,
  overrideMark,
  type GradebookCell,
} from '@/lib/data/gradebook';
import { giveBack, takeBack } from '@/lib/data/returned-work';
import { handedIn } from '../support/marked-work';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  at,
  codeOf,
  makeSchool,
  monday,
  published,
  startPart,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

let assignmentId: string;
let attemptId: string;
let target: { studentId: string; assignmentId: string };
beforeEach(async () => {
  assignmentId = await published(school, { attemptsAllowed: 1 });
  attemptId = await handedIn(school.ann, assignmentId);
  target = { studentId: school.ann.studentId, assignmentId };
});

/** Minutes later on Monday morning, so that lines have an order. */
const later = (minutes: number) =>
  at(new Date(monday.now().getTime() + minutes * 60_000).toISOString());
async function cell(): Promise<GradebookCell> {
  const [one] = (await getStudentGradebook(school.owner, target, monday))?.cells ?? [];
  if (one === undefined) throw new Error('there is no such cell');
  return one;
}
const trail = async () => {
  const read = await getCellTrail(school.owner, target);
  if (read === null) throw new Error('the owner reads the trail');
  return read;
};
const undo = async (minutes: number) =>
  undoLastDecision(
    school.colleague,
    { ...target, auditId: (await trail()).lastDecisionId ?? '' },
    later(minutes),
  );

describe('the trail and undo', () => {
  test('each decision is a line; undo walks back one by one, and every line stays', async () => {
    const real = (await cell()).mark;
    valueOf(await overrideMark(school.owner, { ...target, mark: 50, note: 'First.' }, later(1)));
    valueOf(await overrideMark(school.owner, { ...target, mark: 60, note: 'Second.' }, later(2)));
    valueOf(await excuse(school.owner, { ...target, note: 'Away.' }, later(3)));
    const dueAt = afterDue(24).now().toISOString();
    valueOf(await extendDue(school.owner, { ...target, dueAt, note: 'Ill.' }, later(4)));
    expect((await trail()).lines.map(({ action, who, reason }) => [action, who, reason])).toEqual([
      ['due-extended', 'owner', 'Ill.'],
      ['excused', 'owner', 'Away.'],
      ['mark-overridden', 'owner', 'Second.'],
      ['mark-overridden', 'owner', 'First.'],
    ]);
    expect(await cell()).toMatchObject({ state: 'excused', mark: 60, extendedDueAt: dueAt });
    expect(valueOf(await undo(5)).action).toBe('due-extended');
    expect((await cell()).extendedDueAt).toBeNull();
    expect(valueOf(await undo(6)).action).toBe('excused');
    expect(await cell()).toMatchObject({ excused: false, mark: 60 });
    valueOf(await undo(7));
    expect(await cell()).toMatchObject({ mark: 50, overridden: true });
    expect(await db().override.findFirst({ where: target })).toMatchObject({ note: 'First.' });
    valueOf(await undo(8));
    expect(await cell()).toMatchObject({ mark: real, overridden: false });
    expect(await db().override.count({ where: target })).toBe(0);
    expect(codeOf(await undo(9))).toBe('nothing-to-undo');
    const { lines } = await trail();
    expect(lines).toHaveLength(8);
    expect(lines.slice(4).every(({ undone }) => undone)).toBe(true);
    expect(lines[0]).toMatchObject({
      action: 'undone',
      who: 'colleague',
      after: { undoneAction: 'mark-overridden' },
    });
  });

  test('what a colleague has decided in the meantime is not undone unseen', async () => {
    valueOf(await overrideMark(school.owner, { ...target, mark: 50, note: 'First.' }, later(1)));
    const seen = (await trail()).lastDecisionId ?? '';
    valueOf(await overrideMark(school.owner, { ...target, mark: 60, note: 'Second.' }, later(2)));
    const undone = await undoLastDecision(school.owner, { ...target, auditId: seen }, later(3));
    expect(codeOf(undone)).toBe('changed-meanwhile');
    expect((await cell()).mark).toBe(60);
  });

  test('what was asked about a mark does not undo an excuse saved since', async () => {
    valueOf(await overrideMark(school.owner, { ...target, mark: 70, note: 'Mark.' }, later(1)));
    const asked = (await trail()).lastDecisionId ?? '';
    valueOf(await excuse(school.owner, { ...target, note: 'Away.' }, later(2)));
    const undone = await undoLastDecision(school.owner, { ...target, auditId: asked }, later(3));
    expect(codeOf(undone)).toBe('changed-meanwhile');
    expect(await cell()).toMatchObject({ excused: true, mark: 70 });
  });

  test('a decision that changes nothing writes nothing and says so', async () => {
    const dueAt = afterDue(24).now().toISOString();
    const note = 'Why.';
    const nothing = [
      await overrideMark(school.owner, { ...target, mark: null, note }, later(1)),
      await excuse(school.owner, { ...target, excused: false, note }, later(1)),
      await extendDue(school.owner, { ...target, dueAt: null, note }, later(1)),
    ];
    expect(nothing.map(codeOf)).toEqual(Array(3).fill('nothing-changed'));
    expect((await trail()).lines).toEqual([]);
    expect(await db().override.count({ where: target })).toBe(0);
    valueOf(await overrideMark(school.owner, { ...target, mark: 60, note }, later(2)));
    valueOf(await excuse(school.owner, { ...target, note }, later(3)));
    valueOf(await extendDue(school.owner, { ...target, dueAt, note }, later(4)));
    const again = [
      await overrideMark(school.owner, { ...target, mark: 60, note }, later(5)),
      await excuse(school.owner, { ...target, note }, later(5)),
      await extendDue(school.owner, { ...target, dueAt, note }, later(5)),
    ];
    expect(again.map(codeOf)).toEqual(Array(3).fill('nothing-changed'));
    expect((await trail()).lines).toHaveLength(3);
    valueOf(await excuse(school.owner, { ...target, note: 'Another reason.' }, later(6)));
    expect((await trail()).lines).toHaveLength(4);
  });

  test('the class’s teachers read it; only who teaches undoes', async () => {
    valueOf(await overrideMark(school.owner, { ...target, mark: 50, note: 'First.' }, later(1)));
    const auditId = (await trail()).lastDecisionId ?? '';
    const cover = {
      kind: 'cover',
      coverId: 'x',
      classId: school.classId,
      displayName: 'Cover',
    } as const;
    for (const viewer of [school.stranger, school.ann, school.ben, school.anonymous, cover]) {
      expect(await getCellTrail(viewer, target)).toBeNull();
      expect(codeOf(await undoLastDecision(viewer, { ...target, auditId }))).toBe('not-found');
    }
    expect((await getCellTrail(school.observer, target))?.lines).toHaveLength(1);
    expect(codeOf(await undoLastDecision(school.observer, { ...target, auditId }))).toBe(
      'not-found',
    );
    expect((await cell()).mark).toBe(50);
  });
});

describe('comments', () => {
  test('of the whole and of one criterion, changed, taken away, and undone', async () => {
    const write = (criterion: string, text: string, minutes: number) =>
      writeComment(school.owner, { attemptId, criterion, text }, later(minutes));
    valueOf(await write('', 'Well looked.', 1));
    valueOf(await write('geometry', 'Think of the angle.', 2));
    valueOf(await write('', 'Very well looked.', 3));
    const read = await getAttemptComments(school.ann, attemptId, monday);
    expect(read?.comments.map(({ criterion, text, by }) => [criterion, text, by])).toEqual([
      ['', 'Very well looked.', 'owner'],
      ['geometry', 'Think of the angle.', 'owner'],
    ]);
    valueOf(await undo(4));
    expect((await getAttemptComments(school.ann, attemptId, monday))?.comments[0]?.text).toBe(
      'Well looked.',
    );
    valueOf(await write('geometry', ' ', 5));
    expect((await getAttemptComments(school.ann, attemptId, monday))?.comments).toHaveLength(1);
    expect(codeOf(await write('no-such-part', 'x', 6))).toBe('no-such-criterion');
    expect(codeOf(await write('', 'x'.repeat(2001), 6))).toBe('bad-input');
  });

  test('come back under the name of whoever wrote them when another’s is undone', async () => {
    const input = { attemptId, criterion: '' };
    valueOf(await writeComment(school.owner, { ...input, text: 'The owner’s.' }, later(1)));
    valueOf(await writeComment(school.colleague, { ...input, text: 'A colleague’s.' }, later(2)));
    const written = async () =>
      (await getAttemptComments(school.ann, attemptId, monday))?.comments.map((one) => [
        one.text,
        one.by,
      ]);
    expect(await written()).toEqual([['A colleague’s.', 'colleague']]);
    valueOf(await undo(3));
    expect(await written()).toEqual([['The owner’s.', 'owner']]);
    valueOf(await giveBack(school.colleague, { attemptId, text: 'Once more.' }, later(4)));
    valueOf(await undo(5));
    expect(await written()).toEqual([['The owner’s.', 'owner']]);
    const again = { ...input, text: 'The owner’s.' };
    valueOf(await writeComment(school.colleague, again, later(6)));
    expect(await written()).toEqual([['The owner’s.', 'owner']]);
  });

  test('a student reads them when the result is shown, and no other student ever', async () => {
    const held = await published(school, { feedback: 'when-released' });
    const work = await handedIn(school.ann, held);
    const input = { attemptId: work, criterion: '', text: 'Wait for it.' };
    valueOf(await writeComment(school.colleague, input, later(1)));
    expect((await getAttemptComments(school.ann, work, monday))?.comments).toEqual([]);
    expect((await getAttemptComments(school.observer, work, monday))?.comments).toHaveLength(1);
    for (const viewer of [school.ben, school.dee, school.stranger, school.anonymous])
      expect(await getAttemptComments(viewer, work, monday)).toBeNull();
    await db().assignment.update({
      where: { id: held },
      data: { feedbackReleasedAt: monday.now() },
    });
    expect((await getAttemptComments(school.ann, work, monday))?.comments).toHaveLength(1);
  });

  test('only who teaches the class writes, gives back and takes back', async () => {
    for (const viewer of [
      school.observer,
      school.stranger,
      school.ann,
      school.ben,
      school.anonymous,
    ]) {
      const input = { attemptId, criterion: '', text: 'x' };
      expect(codeOf(await writeComment(viewer, input))).toBe('not-found');
      expect(codeOf(await giveBack(viewer, { attemptId, text: 'x' }))).toBe('not-found');
      expect(codeOf(await takeBack(viewer, attemptId))).toBe('not-found');
    }
    expect(await db().comment.count({ where: { attemptId } })).toBe(0);
    expect((await cell()).state).not.toBe('returned');
  });
});

describe('giving back for another try', () => {
  test('wants a comment, shows in the gradebook, allows one more attempt and can be taken back', async () => {
    expect(codeOf(await giveBack(school.owner, { attemptId, text: ' ' }))).toBe('bad-input');
    expect(codeOf(await startPart(school.ann, assignmentId))).toBe('no-attempts-left');
    valueOf(await giveBack(school.owner, { attemptId, text: 'Find a wider pair.' }, later(1)));
    expect(await cell()).toMatchObject({ state: 'returned', parts: [{ state: 'returned' }] });
    expect(codeOf(await giveBack(school.owner, { attemptId, text: 'x' }))).toBe('not-to-give-back');
    valueOf(await takeBack(school.owner, attemptId, later(2)));
    expect((await cell()).state).not.toBe('returned');
    expect(codeOf(await startPart(school.ann, assignmentId))).toBe('no-attempts-left');
    valueOf(await giveBack(school.owner, { attemptId, text: 'Find a wider pair.' }, later(3)));
    expect(codeOf(await startPart(school.ann, assignmentId))).toBe('ok');
    expect(codeOf(await takeBack(school.owner, attemptId, later(4)))).toBe('newer-attempt');
    expect(codeOf(await undo(5))).toBe('newer-attempt');
    expect((await cell()).state).toBe('returned');
  });

  test('keeps the comment that stands, with the new words below it; undoing leaves the first', async () => {
    const whole = { attemptId, criterion: '', text: 'Well looked for.' };
    valueOf(await writeComment(school.owner, whole, later(1)));
    const words = async () =>
      (await getAttemptComments(school.ann, attemptId, afterDue(48)))?.comments.map(
        ({ text }) => text,
      );
    const text = 'Find a wider pair.';
    valueOf(await giveBack(school.owner, { attemptId, text }, later(2)));
    expect(await words()).toEqual([`Well looked for.\n\n${text}`]);
    valueOf(await takeBack(school.owner, attemptId, later(3)));
    valueOf(await giveBack(school.owner, { attemptId, text }, later(4)));
    expect(await words()).toEqual([`Well looked for.\n\n${text}`]);
    for (const minutes of [5, 6, 7]) valueOf(await undo(minutes));
    expect(await words()).toEqual(['Well looked for.']);
  });

  test('wants both comments together to be short enough, and gives nothing back otherwise', async () => {
    const whole = { attemptId, criterion: '', text: 'a'.repeat(1500) };
    valueOf(await writeComment(school.owner, whole, later(1)));
    const input = { attemptId, text: 'b'.repeat(600) };
    expect(codeOf(await giveBack(school.owner, input, later(2)))).toBe('too-long');
    expect((await cell()).state).not.toBe('returned');
  });

  test('ends when the newer work is in', async () => {
    valueOf(await giveBack(school.owner, { attemptId, text: 'Find a wider pair.' }, later(1)));
    await handedIn(school.ann, assignmentId);
    expect((await cell()).state).not.toBe('returned');
  });

  test('the student reads why at once, also while marks are withheld', async () => {
    const held = await published(school, { feedback: 'when-released' });
    const work = await handedIn(school.ann, held);
    const aside = { attemptId: work, criterion: 'geometry', text: 'Later.' };
    valueOf(await writeComment(school.owner, aside, later(1)));
    valueOf(await giveBack(school.owner, { attemptId: work, text: 'Once more.' }, later(2)));
    const read = await getAttemptComments(school.ann, work, monday);
    expect(read?.comments.map(({ text }) => text)).toEqual(['Once more.']);
    expect(read?.returnedAt).toBe(later(2).now().toISOString());
  });
});

describe('what a form was opened on', () => {
  const newDue = afterDue(24).now().toISOString();
  const times = async () => {
    const of = await getDecisionTimes(school.owner, school.ann.studentId);
    if (of === null) throw new Error('the owner decides');
    return of(assignmentId);
  };

  test('a mark, an excuse and a due time are not put in the place of a colleague’s unseen', async () => {
    const { override, due } = await times();
    expect([override, due]).toEqual([null, null]);
    valueOf(await overrideMark(school.colleague, { ...target, mark: 50, note: 'Mine.' }, later(1)));
    const more = { ...target, dueAt: newDue, note: 'Ill.' };
    valueOf(await extendDue(school.colleague, more, later(1)));
    const late = { ...target, note: 'Too late.' };
    for (const answer of [
      await overrideMark(school.owner, { ...late, mark: 90, openedOn: override }, later(2)),
      await excuse(school.owner, { ...late, openedOn: override }, later(2)),
      await extendDue(school.owner, { ...late, dueAt: null, openedOn: due }, later(2)),
    ])
      expect(codeOf(answer)).toBe('changed-meanwhile');
    expect(await cell()).toMatchObject({ mark: 50, excused: false, extendedDueAt: newDue });
    expect((await trail()).lines).toHaveLength(2);
    const seen = await times();
    const again = { ...late, openedOn: seen.override };
    valueOf(await overrideMark(school.owner, { ...again, mark: 90 }, later(3)));
    valueOf(await extendDue(school.owner, { ...late, dueAt: null, openedOn: seen.due }, later(3)));
    expect(await cell()).toMatchObject({ mark: 90, extendedDueAt: null });
  });

  test('nor is a comment, whether it is written or goes with giving back', async () => {
    const input = { attemptId, text: 'The owner’s.', openedOn: null };
    const theirs = { attemptId, criterion: '', text: 'A colleague’s.', openedOn: null };
    valueOf(await writeComment(school.colleague, theirs, later(1)));
    const written = await writeComment(school.owner, { ...input, criterion: '' }, later(2));
    expect(codeOf(written)).toBe('changed-meanwhile');
    expect(codeOf(await giveBack(school.owner, input, later(2)))).toBe('changed-meanwhile');
    const read = await getAttemptComments(school.owner, attemptId, monday);
    expect(read?.comments).toMatchObject([{ text: 'A colleague’s.', by: 'colleague' }]);
    expect(read?.returnedAt).toBeNull();
    const openedOn = read?.comments[0]?.changedAt ?? null;
    valueOf(await giveBack(school.owner, { ...input, openedOn }, later(3)));
  });

  test('is known to those who may decide, and to nobody else', async () => {
    const { studentId } = school.ann;
    expect(await getDecisionTimes(school.colleague, studentId)).not.toBeNull();
    for (const viewer of [school.observer, school.stranger, school.ann, school.anonymous])
      expect(await getDecisionTimes(viewer, studentId)).toBeNull();
    valueOf(await overrideMark(school.owner, { ...target, mark: 50, note: 'Seen.' }, later(1)));
    expect(await getOverrideTimes(school.colleague, school.classId)).toMatchObject({
      [`${studentId} ${assignmentId}`]: later(1).now().toISOString(),
    });
    expect(await getOverrideTimes(school.observer, school.classId)).toEqual({});
  });
});

describe('several parts, students who left and means', () => {
  test('a part without work keeps the assignment in progress, with the mark so far', async () => {
    const [part] = await db().assignmentPart.findMany({ where: { assignmentId, kind: 'lab' } });
    if (part === undefined) throw new Error('an assignment has a part');
    const { scenarioVersionId, reference, templates, windowMinutes } = part;
    await db().assignmentPart.create({
      data: {
        assignmentId,
        scenarioVersionId,
        reference,
        windowMinutes,
        kind: 'lab',
        position: 90,
        weight: 3,
        templates: templates ?? [],
      },
    });
    const now = await cell();
    expect(now).toMatchObject({ state: 'in-progress', complete: false });
    expect(now.parts.map(({ state, weight }) => [state, weight])).toEqual([
      ['marked', 1],
      ['not-started', 3],
    ]);
    expect(now.mark).toBe(now.parts[0]?.mark);
    const [row] = (await getStudentGradebook(school.owner, target, monday))?.students ?? [];
    expect(row?.mean).toBeNull();
    valueOf(await overrideMark(school.owner, { ...target, mark: 71, note: 'Enough.' }, later(1)));
    expect(await cell()).toMatchObject({ state: 'complete', mark: 71, complete: true });
  });

  test('passed work waits for the sign-off where the assignment wants one', async () => {
    await db().assignment.update({ where: { id: assignmentId }, data: { needsSignOff: true } });
    valueOf(await overrideMark(school.owner, { ...target, mark: 80, note: 'Seen.' }, later(1)));
    expect(await cell()).toMatchObject({ state: 'needs-sign-off', toSignOff: ['choose-stars'] });
  });
});
