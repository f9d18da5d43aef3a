import 'server-only';
import { db } from './db';
import { demoImportName } from './demo-import';
import { newLiveMemory, readLiveRows, type LiveMemory, type LiveRow } from './live-rows';
import type { LiveNeed, LiveStanding } from './live-standing';

/** So often the invented class's lesson begins anew. Our judgement: long enough to see it move. */
export const demoLapMinutes = 5;
const lapMs = demoLapMinutes * 60_000;

/** What need not be read again from one look to the next. */
export type BoardMemory = {
  rows: LiveMemory;
  /** Its own, or each reading would forget what the other had read. */
  laid: LiveMemory;
  /** See {@link demoMadeAt}; undefined: not asked yet. It does not change while anybody watches. */
  madeAt: Date | null | undefined;
};
export const newBoardMemory = (): BoardMemory => ({
  rows: newLiveMemory(),
  laid: newLiveMemory(),
  madeAt: undefined,
});

/**
 * The rows of any class, which for the invented one never run out: its lesson comes round again and again,
 * as it stood when the class was made. Nothing is written for it. Whoever has done anything since is shown
 * as they are, and of a real class everybody always. Internal: called after authorising.
 */
export async function readBoardRows(
  classId: string,
  now: Date,
  memory: BoardMemory = newBoardMemory(),
): Promise<LiveRow[]> {
  const [rows, madeAt] = await Promise.all([
    readLiveRows(classId, now, memory.rows),
    memory.madeAt === undefined ? demoMadeAt(classId) : memory.madeAt,
  ]);
  memory.madeAt = madeAt;
  if (madeAt === null || now <= madeAt) return rows;
  const sinceMs = now.getTime() - madeAt.getTime();
  const by = sinceMs - (sinceMs % lapMs);
  const laid = await readLiveRows(classId, new Date(now.getTime() - by), memory.laid);
  const laidOf = new Map(laid.map((row) => [row.studentId, row]));
  return rows.map((row) => {
    const then = laidOf.get(row.studentId);
    if (then === undefined || hasSign(row, madeAt) || hasSign(then, madeAt)) return row;
    return { ...then, standing: later(then.standing, by) };
  });
}

/** When the invented class was made to its end; null for every other. */
async function demoMadeAt(classId: string): Promise<Date | null> {
  const demo = await db().class.findFirst({
    where: { id: classId, isDemo: true },
    select: { id: true },
  });
  if (demo === null) return null;
  const made = await db().contentImport.findUnique({
    where: { name: demoImportName },
    select: { importedAt: true },
  });
  return made?.importedAt ?? null;
}

const hasSign = ({ standing: { last } }: LiveRow, since: Date): boolean =>
  last !== null && last.at > since;

/** The same, so many milliseconds later. */
function later(standing: LiveStanding, by: number): LiveStanding {
  const { since, need, last } = standing;
  const moved = (at: Date): Date => new Date(at.getTime() + by);
  const movedNeed: LiveNeed | null =
    need !== null && 'since' in need ? { why: need.why, since: moved(need.since) } : need;
  return {
    ...standing,
    since: since === null ? null : moved(since),
    need: movedNeed,
    last: last === null ? null : { what: last.what, at: moved(last.at) },
  };
}
