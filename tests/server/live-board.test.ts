import { beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { saveDraft, submitAttempt } from '@/lib/data/attempts';
import type { Clock } from '@/lib/data/clock';
import { db } from '@/lib/data/db';
import { getLiveBoard, getLiveChoices } from '@/lib/data/live-board';
import { readLiveOptions, type LiveOptions } from '@/lib/data/live-input';
import { noteReading } from '@/lib/data/live-reading';
import { liveStream } from '@/lib/data/live-stream';
import type { Ticker } from '@/lib/data/live-watch';
import { nextQuestion } from '@/lib/data/questions';
import { openSession, viewerOfToken } from '@/lib/data/sessions';
import { liveView } from '@/components/desk/live/live-view';
import { useSchoolDatabase } from '../support/school-database';
import {
  afterDue,
  answerFor,
  at,
  labPart,
  makeSchool,
  monday,
  published,
  started,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();

/** So many minutes into a lesson that begins at nine on Monday. */
const into = (minutes: number): Clock =>
  at(new Date(monday.now().getTime() + minutes * 60_000).toISOString());
const usual = readLiveOptions({});
const pick = { picks: [{ hip: 32349, lookAlike: null }], saysNone: false, proposalIndex: 0 };

async function arrive(viewer: Extract<Viewer, { kind: 'student' }>, clock = monday) {
  const { studentId } = viewer;
  await openSession({ studentId }, { device: 'A browser', previousToken: null }, clock);
}

async function tilesOf(school: School, clock: Clock, options: Partial<LiveOptions> = {}) {
  const asked = { ...usual, ...options };
  const board = await getLiveBoard(school.owner, school.classId, asked, clock);
  if (board === null) throw new Error('the owner may see the board');
  return board.tiles;
}
const tileOf = async (school: School, card: number, clock: Clock) =>
  (await tilesOf(school, clock)).find(({ cardNumber }) => cardNumber === card);

describe('who may see it', () => {
  let school: School;
  beforeAll(async () => {
    school = await makeSchool();
  });

  test('the class’s teachers, its observer and its substitute, and nobody else', async () => {
    const cover = (classId: string) =>
      ({ kind: 'cover', coverId: 'c', classId, displayName: 'Cover teacher' }) as const;
    const may = [school.owner, school.colleague, school.observer, cover(school.classId)];
    const mayNot = [
      ...[school.stranger, school.ann, school.dee, school.anonymous],
      cover(school.otherClassId),
    ];
    const { classId } = school;
    for (const viewer of may) {
      expect((await getLiveBoard(viewer, classId, usual, monday))?.tiles).toHaveLength(3);
      expect(await getLiveChoices(viewer, classId)).toEqual({ groups: [], assignments: [] });
    }
    for (const viewer of mayNot) {
      expect(await getLiveBoard(viewer, classId, usual, monday)).toBeNull();
      expect(await getLiveChoices(viewer, classId)).toBeNull();
    }
    expect(await getLiveBoard(school.owner, 'no such class', usual, monday)).toBeNull();
  });
});

describe('a lesson', () => {
  let school: School;
  let assignmentId: string;
  beforeAll(async () => {
    school = await makeSchool();
    assignmentId = await published(school);
  });

  test('shows a check from its start, how far it is, and that no step came', async () => {
    await arrive(school.ann);
    const attemptId = await started(school.ann, assignmentId, into(1));
    expect(await tileOf(school, 1, into(2))).toMatchObject({
      state: 'working',
      student: { displayName: 'Ann' },
      since: into(1).now(),
      place: { kind: 'attempt', lab: 'pick-the-pair', mode: 'check', title: 'Pick the pair' },
    });
    const saved = { sequence: 1, draft: pick };
    valueOf(await saveDraft(school.ann, attemptId, saved, into(3)));
    expect(await tileOf(school, 1, into(8.9))).toMatchObject({
      state: 'working',
      place: { stage: { kind: 'picked', count: 1 } },
    });
    expect(await tileOf(school, 1, into(9))).toMatchObject({
      state: 'needs-help',
      need: { why: 'no-new-step', since: into(3).now() },
    });
    const submission = await answerFor(attemptId, 'best');
    const answer = { submission, idempotencyKey: 'ann-hands-in' };
    valueOf(await submitAttempt(school.ann, attemptId, answer, into(10)));
    expect(await tileOf(school, 1, into(11))).toMatchObject({
      state: 'done',
      need: null,
      failed: null,
      place: { kind: 'handed-in', passed: true },
    });
  });

  test('shows practice on a lesson’s questions and the page of a lesson', async () => {
    await arrive(school.ben, into(2));
    valueOf(await nextQuestion(school.ben, { lesson: 'level-enough' }, into(3)));
    expect(await tileOf(school, 2, into(4))).toMatchObject({
      state: 'working',
      place: { kind: 'practice', lesson: 'level-enough' },
    });
    expect(await tileOf(school, 2, into(7))).toMatchObject({ need: { why: 'no-answer' } });
    noteReading(school.ben, 'level-enough', into(8));
    noteReading(school.owner, 'level-enough', into(8));
    expect(await tileOf(school, 2, into(9))).toMatchObject({
      state: 'here',
      place: { kind: 'reading', lesson: 'level-enough' },
    });
  });

  test('names the gate that failed in what was handed in last, and puts it before all else', async () => {
    await arrive(school.cy, into(2));
    const parts = [labPart('put-it-together', ['take-down'])];
    const takeDown = await published(school, {}, monday, { parts });
    const attemptId = await started(school.cy, takeDown, into(3));
    // Nobody holds the tube.
    const submission = {
      order: ['open-clamp'],
      hazards: { unfolding: [], lifting: [], finishing: [] },
    };
    const answer = { submission, idempotencyKey: 'cy-hands-in' };
    valueOf(await submitAttempt(school.cy, attemptId, answer, into(4)));
    const board = await getLiveBoard(school.owner, school.classId, usual, into(9));
    if (board === null) throw new Error('the owner may see the board');
    const [first] = board.tiles;
    expect(first).toMatchObject({ cardNumber: 3, state: 'needs-help', need: { why: 'gate' } });
    const view = liveView(board).tiles[0];
    expect(view?.gates?.text).toContain('the tube fell');
    expect(view?.gates?.href).toContain(attemptId);
  });

  test('what lateness takes below the pass mark has not passed', async () => {
    const apart = await makeSchool();
    const attemptId = await started(apart.ann, await published(apart));
    const submission = await answerFor(attemptId, 'best');
    const late = afterDue(25);
    await arrive(apart.ann, late);
    const answer = { submission, idempotencyKey: 'ann-is-late' };
    valueOf(await submitAttempt(apart.ann, attemptId, answer, late));
    // Two days late at 10 % a day leave 68 of it; 70 passes.
    await db().mark.updateMany({ where: { attemptId }, data: { total: 85 } });
    expect(await tileOf(apart, 1, late)).toMatchObject({
      place: { kind: 'handed-in', passed: false },
    });
  });

  test('by card, by group and by assignment shows whom it says', async () => {
    const cards = async (options: Partial<LiveOptions>) =>
      (await tilesOf(school, into(12), options)).map(({ cardNumber }) => cardNumber);
    expect(await cards({ order: 'card' })).toEqual([1, 2, 3]);
    const { id: group } = await db().group.create({
      data: {
        classId: school.classId,
        name: 'Wren',
        members: { create: { studentId: school.ben.studentId } },
      },
    });
    expect(await cards({ group })).toEqual([2]);
    expect(await cards({ assignment: assignmentId })).toEqual([1]);
    const choices = await getLiveChoices(school.owner, school.classId);
    expect(choices?.groups).toEqual([{ id: group, label: 'Wren' }]);
    expect(choices?.assignments).toContainEqual({ id: assignmentId, label: 'Pick the pair' });
  });

  test('with names hidden neither name, id nor mark leaves the server', async () => {
    const options = { ...usual, names: 'hidden' } as const;
    const board = await getLiveBoard(school.owner, school.classId, options, into(11));
    if (board === null) throw new Error('the owner may see the board');
    const sent = JSON.stringify(liveView(board));
    expect(sent).toContain('Card 1');
    const students = await db().student.findMany({ where: { classId: school.classId } });
    const attempts = await db().attempt.findMany({ select: { id: true } });
    for (const { displayName, id } of students) {
      expect(sent).not.toContain(`"${displayName}"`);
      expect(sent).not.toContain(id);
    }
    for (const { id } of attempts) expect(sent).not.toContain(id);
    expect(sent).not.toContain('passed');
    expect(
      JSON.stringify(liveView({ ...board, tiles: await tilesOf(school, into(11)) })),
    ).toContain('passed');
  });

  test('leaves out who has left the class, and an hour later everybody is away', async () => {
    const hour = await tilesOf(school, into(75));
    expect(hour.map(({ state }) => state)).toEqual(['away', 'away', 'away']);
    await db().student.update({
      where: { id: school.cy.studentId },
      data: { leftAt: into(12).now() },
    });
    expect(await tilesOf(school, into(13))).toHaveLength(2);
  });
});

describe('the stream of events', () => {
  /** Looks when it is told to, and no sooner. */
  function handTurned() {
    let begin: (run: () => Promise<void>) => void = () => undefined;
    const begun = new Promise<() => Promise<void>>((resolve) => {
      begin = resolve;
    });
    let started = false;
    let stopped = false;
    const ticker: Ticker = (run) => {
      started = true;
      begin(run);
      return () => {
        stopped = true;
      };
    };
    const look = async (): Promise<void> => (await begun)();
    return { ticker, look, started: () => started, stopped: () => stopped };
  }
  async function nextEvent(reader: ReadableStreamDefaultReader<Uint8Array>) {
    const { value, done } = await reader.read();
    if (done) return 'closed';
    const [name, data] = new TextDecoder().decode(value).split('\n');
    return { name, data: data ?? '' };
  }

  function watching(viewer: Viewer, school: School, clock: { now: () => Date }) {
    const turned = handTurned();
    const gone = new AbortController();
    let current = viewer;
    const stream = liveStream({
      viewer: () => Promise.resolve(current),
      classId: school.classId,
      options: usual,
      present: liveView,
      signal: gone.signal,
      clock,
      ticker: turned.ticker,
    });
    return {
      ...turned,
      reader: stream.getReader(),
      gone,
      becomes: (next: Viewer) => {
        current = next;
      },
    };
  }

  test('sends the board, stays silent while nothing changes, and sends it again when something did', async () => {
    const school = await makeSchool();
    const assignmentId = await published(school);
    let now = monday.now();
    const { look, reader, gone, stopped } = watching(school.owner, school, {
      now: () => now,
    });
    await look();
    const first = await nextEvent(reader);
    expect(first).toMatchObject({ name: 'event: board' });
    await look();
    await arrive(school.ann, into(1));
    await started(school.ann, assignmentId, into(1));
    now = into(2).now();
    await look();
    // What was not sent cannot be read: the next event is the change.
    const second = await nextEvent(reader);
    expect(second).toMatchObject({ name: 'event: board' });
    expect(JSON.stringify(second)).toContain('Pick the pair');
    expect(JSON.stringify(first)).not.toContain('Pick the pair');
    gone.abort();
    expect(await nextEvent(reader)).toBe('closed');
    expect(stopped()).toBe(true);
  });

  test('says it is alive every fifth look, and shows out who may no longer see the class', async () => {
    const school = await makeSchool();
    const { look, reader, becomes, stopped } = watching(school.owner, school, monday);
    for (let count = 0; count < 6; count += 1) await look();
    expect(await nextEvent(reader)).toMatchObject({ name: 'event: board' });
    expect(await nextEvent(reader)).toMatchObject({ name: 'event: heard' });
    becomes(school.anonymous);
    for (let count = 0; count < 5; count += 1) await look();
    expect(await nextEvent(reader)).toEqual({ name: 'event: signed-out', data: 'data: {}' });
    expect(await nextEvent(reader)).toBe('closed');
    expect(stopped()).toBe(true);
  });

  test('tells a stranger nothing but that, and reads nothing for one', async () => {
    const school = await makeSchool();
    const { started: looked, reader } = watching(school.stranger, school, monday);
    expect(await nextEvent(reader)).toMatchObject({ name: 'event: signed-out' });
    expect(await nextEvent(reader)).toBe('closed');
    expect(looked()).toBe(false);
  });

  test('of two watchers takes one look, and goes on until the last one leaves', async () => {
    const school = await makeSchool();
    const one = watching(school.owner, school, monday);
    const other = watching(school.colleague, school, monday);
    await one.look();
    expect(await nextEvent(one.reader)).toMatchObject({ name: 'event: board' });
    expect(await nextEvent(other.reader)).toMatchObject({ name: 'event: board' });
    await one.reader.cancel();
    expect(one.stopped()).toBe(false);
    other.gone.abort();
    expect(one.stopped()).toBe(true);
  });

  test('keeps no session alive: after twelve hours without a hand on it the board is signed out', async () => {
    const { teacherId } = (await makeSchool()).owner;
    const token = await openSession(
      { teacherId },
      { device: 'A projector', previousToken: null },
      monday,
    );
    const asked = async (hours: number, countsAsUse: boolean) =>
      (await viewerOfToken(token, into(60 * hours), { countsAsUse })).kind;
    expect(await asked(11, false)).toBe('teacher');
    expect(await asked(12, false)).toBe('anonymous');
    expect(await asked(11, true)).toBe('teacher');
    expect(await asked(12, false)).toBe('teacher');
  });
});
