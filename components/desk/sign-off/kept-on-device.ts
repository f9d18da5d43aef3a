import { z } from 'zod';
import { conditionsSchema } from '@/lib/mastery/sign-off-note';
import { listIn, readWaiting, type Waiting } from '@/lib/mastery/sign-off-queue';
import { signOffSheetSchema, type SignOffSheet } from '@/lib/mastery/sign-off-sheet';

/**
 * What a phone keeps, by class and teacher, in the browser's own storage: it is there without a connection
 * and without https, and outlives a reload. The queue holds no names. The sheet does, and no words beside
 * the levels; it is kept only when asked for, until noon of the next day or the sign-out.
 */
const queuePrefix = 'duskbench-sign-off-queue';
const sheetPrefix = 'duskbench-sign-off-sheet';
const eveningPrefix = 'duskbench-sign-off-evening';

export type Owner = { classId: string; teacherId: string };
const nameOf = (prefix: string, { classId, teacherId }: Owner): string =>
  `${prefix}:${classId}:${teacherId}`;

function storage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    // A browser may refuse storage altogether: then notes live as long as the page.
    return null;
  }
}

/** Whether it was written. */
function write(name: string, value: unknown): boolean {
  try {
    const store = storage();
    store?.setItem(name, JSON.stringify(value));
    return store !== null;
  } catch {
    return false;
  }
}

function read<T>(name: string, schema: z.ZodType<T>): T | null {
  try {
    const text = storage()?.getItem(name) ?? null;
    if (text === null) return null;
    const parsed = schema.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

const names = (prefix: string): string[] =>
  Object.keys(storage() ?? {}).filter((name) => name.startsWith(`${prefix}:`));

const asideName = (owner: Owner): string => `${nameOf(queuePrefix, owner)}:unread`;
/** Earlier versions of the page put each note aside under a name of its own, which begins alike. */
const asideNames = (owner: Owner): string[] =>
  names(queuePrefix).filter((name) => name.startsWith(asideName(owner)));

const textAt = (name: string): string | null => storage()?.getItem(name) ?? null;
const unreadInQueue = (owner: Owner): unknown[] =>
  readWaiting(textAt(nameOf(queuePrefix, owner))).unread;

/** Those that are not in the list yet: a page may have gone between putting aside and shortening the queue. */
function newIn(unread: readonly unknown[], aside: readonly unknown[]): unknown[] {
  const known = new Set(aside.map((one) => JSON.stringify(one)));
  return unread.filter((one) => !known.has(JSON.stringify(one)));
}

/**
 * Notes that another version of the page has written are put aside, never written over. Where there is no
 * room to put them aside, they stay in the queue.
 */
export function readQueue(owner: Owner): Waiting[] {
  const { waiting, unread } = readWaiting(textAt(nameOf(queuePrefix, owner)));
  if (unread.length > 0) {
    const aside = listIn(textAt(asideName(owner)));
    // First there, then no longer here: at every instant each is in one of the two at least.
    if (write(asideName(owner), [...aside, ...newIn(unread, aside)])) {
      writeOnly(owner, waiting);
    }
  }
  return waiting;
}

/** How many notes lie on this device, since this version of the page cannot read them. */
export function countUnread(owner: Owner): number {
  const aside = asideNames(owner).flatMap((name) => listIn(textAt(name)));
  return aside.length + newIn(unreadInQueue(owner), aside).length;
}

function writeOnly(owner: Owner, items: readonly unknown[]): boolean {
  const name = nameOf(queuePrefix, owner);
  if (items.length > 0) return write(name, items);
  storage()?.removeItem(name);
  return true;
}

/** False when the browser keeps nothing. What could not be put aside stays. */
export const writeQueue = (owner: Owner, waiting: readonly Waiting[]): boolean =>
  writeOnly(owner, [...unreadInQueue(owner), ...waiting]);

export const isQueueOf = (owner: Owner, name: string | null): boolean =>
  name === nameOf(queuePrefix, owner);

type Queue = Owner & { count: number };

/** What waits on this device, by class and teacher. */
function queuesHere(): Queue[] {
  const queues = new Map<string, Queue>();
  for (const name of names(queuePrefix)) {
    const [, classId, teacherId, aside] = name.split(':');
    if (classId === undefined || teacherId === undefined) continue;
    const { waiting, unread } = readWaiting(storage()?.getItem(name) ?? null);
    const count = aside === undefined ? waiting.length + unread.length : 0;
    const before = queues.get(`${classId}:${teacherId}`)?.count ?? 0;
    queues.set(`${classId}:${teacherId}`, { classId, teacherId, count: before + count });
  }
  return [...queues.values()].filter(({ count }) => count > 0);
}

/** The classes of which notes of this teacher have not been sent yet. */
export const waitingOf = (teacherId: string): Queue[] =>
  queuesHere().filter((one) => one.teacherId === teacherId);

/** How many notes of this teacher, of whatever class, have not been sent yet. */
export const countWaiting = (teacherId: string): number =>
  waitingOf(teacherId).reduce((sum, { count }) => sum + count, 0);

/** How many notes of other teachers wait here: they go when those sign in. */
export const countOthersWaiting = (teacherId: string): number =>
  queuesHere()
    .filter((one) => one.teacherId !== teacherId)
    .reduce((sum, { count }) => sum + count, 0);

const keptSheetSchema = z.object({ until: z.iso.datetime(), sheet: signOffSheetSchema });

/** Noon of the next day, by the device's clock. */
export function noonTomorrow(now: Date): Date {
  const noon = new Date(now);
  noon.setDate(noon.getDate() + 1);
  noon.setHours(12, 0, 0, 0);
  return noon;
}

/** Without the words beside the levels, anybody's: no page that is opened outside shows them. */
export function keepSheet(owner: Owner, sheet: SignOffSheet, until: Date): boolean {
  const notes = sheet.notes.map((one) => ({ ...one, note: '' }));
  return write(nameOf(sheetPrefix, owner), {
    until: until.toISOString(),
    sheet: { ...sheet, notes, agreement: null },
  });
}

export type KeptSheet = { until: Date; sheet: SignOffSheet };

function asKept(name: string, now: Date): KeptSheet | null {
  const kept = read(name, keptSheetSchema);
  if (kept === null) return null;
  const until = new Date(kept.until);
  return until > now ? { until, sheet: kept.sheet } : null;
}

export const keptSheet = (owner: Owner, now: Date): KeptSheet | null =>
  asKept(nameOf(sheetPrefix, owner), now);

/** The sheet of a class, whoever kept it: without a connection nobody can say who is signed in. */
export function anyKeptSheet(classId: string, now: Date): KeptSheet | null {
  const all = names(`${sheetPrefix}:${classId}`).flatMap((name) => asKept(name, now) ?? []);
  return all.toSorted((one, other) => other.until.getTime() - one.until.getTime())[0] ?? null;
}

/** Clears sheets; whether there were any and none is left, so that nothing need open without a connection. */
function forget(goes: (name: string) => boolean): boolean {
  const here = names(sheetPrefix);
  const gone = here.filter(goes);
  for (const name of gone) storage()?.removeItem(name);
  return gone.length > 0 && gone.length === here.length;
}

/** Clears the sheets that are past their time. */
export const forgetOldSheets = (now: Date): boolean => forget((name) => asKept(name, now) === null);

/** Clears what another teacher, whose session ran out, had kept: it is not for who signs in next. */
export const forgetSheetsOfOthers = (teacherId: string): boolean =>
  forget((name) => !name.endsWith(`:${teacherId}`));

/** Clears every sheet: at sign-out, or when it is no longer wanted here. The queue stays. */
export const forgetSheets = (): boolean => forget(() => true);

/** Gives up what waits of a class, for good. */
export function forgetQueue(owner: Owner): void {
  storage()?.removeItem(nameOf(queuePrefix, owner));
  for (const name of asideNames(owner)) storage()?.removeItem(name);
}

const eveningSchema = z.object({
  /** YYYY-MM-DD: what was set holds for that evening. */
  evening: z.string(),
  conditions: conditionsSchema,
  /** Empty: each group's own. */
  telescope: z.string(),
});
export type EveningSettings = z.infer<typeof eveningSchema>;

export const readEvening = (owner: Owner): EveningSettings | null =>
  read(nameOf(eveningPrefix, owner), eveningSchema);
export const writeEvening = (owner: Owner, settings: EveningSettings): boolean =>
  write(nameOf(eveningPrefix, owner), settings);
