import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { readBoardRows } from './live-demo';
import type { LabResult } from './lab-tasks/lab-tasks';
import type { LiveOptions } from './live-input';
import type { LiveRow } from './live-rows';
import type { LiveNeed, LivePlace, LiveStanding, LiveState } from './live-standing';

export type { LiveNeed, LivePlace, LiveStanding, LiveState } from './live-standing';
export { liveRules } from './live-standing';

export type LiveTile = {
  cardNumber: number;
  /** Null with names hidden: then neither name nor id leaves lib/data. */
  student: { id: string; displayName: string } | null;
  state: LiveState;
  place: LivePlace;
  since: Date | null;
  need: LiveNeed | null;
  last: LiveStanding['last'];
  /** Where a safety gate failed in what was handed in last: that result, and its attempt with names shown. */
  failed: { attemptId: string | null; result: LabResult } | null;
};
export type LiveBoard = {
  at: Date;
  tiles: LiveTile[];
  /** Students of the class that the chosen group or assignment leaves out. */
  leftOut: number;
};

/** What each student of a class is at, this minute; for everybody who may see the class. */
export async function getLiveBoard(
  viewer: Viewer,
  classId: string,
  options: LiveOptions,
  clock: Clock = systemClock,
): Promise<LiveBoard | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  const now = clock.now();
  return liveBoardOf(await readBoardRows(classId, now), options, now);
}

export type LiveChoices = Record<'groups' | 'assignments', { id: string; label: string }[]>;

/** What a board can be narrowed down to. */
export async function getLiveChoices(viewer: Viewer, classId: string): Promise<LiveChoices | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  const [groups, assignments] = await Promise.all([
    db().group.findMany({
      where: { classId },
      orderBy: { name: 'asc' },
      select: { id: true, name: true },
    }),
    db().assignment.findMany({
      where: { classId, state: 'published' },
      orderBy: [{ publishedAt: 'desc' }, { id: 'asc' }],
      select: { id: true, title: true },
    }),
  ]);
  return {
    groups: groups.map(({ id, name }) => ({ id, label: name })),
    assignments: assignments.map(({ id, title }) => ({ id, label: title })),
  };
}

/** The rows as one watcher asked for them. */
export function liveBoardOf(rows: readonly LiveRow[], options: LiveOptions, at: Date): LiveBoard {
  const { group, assignment, names, order } = options;
  const shown = rows.filter(
    ({ groupIds, standing }) =>
      (group === null || groupIds.includes(group)) &&
      (assignment === null || standing.assignmentId === assignment),
  );
  const ordered = order === 'card' ? shown : shown.toSorted(whoNeedsMeFirst);
  return {
    at,
    tiles: ordered.map((row) => tileOf(row, names === 'hidden')),
    leftOut: rows.length - shown.length,
  };
}

function tileOf(row: LiveRow, hidden: boolean): LiveTile {
  const { cardNumber, studentId: id, displayName, standing, failed } = row;
  const { state, since, need, last } = standing;
  // The whole class may be looking: whose mark passed is for no one else's eyes.
  const place =
    hidden && standing.place.kind === 'handed-in'
      ? { ...standing.place, passed: null }
      : standing.place;
  return {
    cardNumber,
    state,
    place,
    since,
    need,
    last,
    student: hidden ? null : { id, displayName },
    failed: failed === null ? null : { ...failed, attemptId: hidden ? null : failed.attemptId },
  };
}

const stateOrder: Readonly<Record<LiveState, number>> = {
  'needs-help': 0,
  working: 1,
  here: 2,
  done: 3,
  away: 4,
};

/** Safety before everything, then who has waited longest; otherwise by state and card. */
function whoNeedsMeFirst(one: LiveRow, other: LiveRow): number {
  const [a, b] = [one.standing, other.standing];
  return (
    stateOrder[a.state] - stateOrder[b.state] ||
    waitingSince(a.need) - waitingSince(b.need) ||
    one.cardNumber - other.cardNumber
  );
}

function waitingSince(need: LiveNeed | null): number {
  if (need === null) return 0;
  if (need.why === 'gate') return -Infinity;
  return 'since' in need ? need.since.getTime() : 0;
}
