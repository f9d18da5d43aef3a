import { z } from 'zod';
import type { Skill } from '../course/skills';
import { eveningOf } from './evening';
import {
  judgesAlike,
  knownNoteSchema,
  outgoingSchema,
  type KnownNote,
  type Outgoing,
  type OutgoingAnswer,
  type OutgoingNote,
} from './sign-off-note';

/** Something on a device that the server has not taken yet. */
const waitingSchema = z.object({
  item: outgoingSchema,
  /** Was sent once at least: it may have arrived although no answer came. */
  tried: z.boolean(),
  state: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('queued') }),
    /** The assessor said otherwise that evening: waits for a choice. */
    z.object({ kind: z.literal('conflict'), existing: z.array(knownNoteSchema) }),
    z.object({ kind: z.literal('refused'), message: z.string() }),
  ]),
});
export type Waiting = z.infer<typeof waitingSchema>;

/** What a device has written down, item by item: one that cannot be read takes none of the others along. */
export function readWaiting(text: string | null): { waiting: Waiting[]; unread: unknown[] } {
  const waiting: Waiting[] = [];
  const unread: unknown[] = [];
  for (const one of listIn(text)) {
    const parsed = waitingSchema.safeParse(one);
    if (parsed.success) waiting.push(parsed.data);
    else unread.push(one);
  }
  return { waiting, unread };
}

/** What a device has written down, unread. What is no list, or no JSON, counts as one item. */
export function listIn(text: string | null): unknown[] {
  if (text === null) return [];
  try {
    const read: unknown = JSON.parse(text);
    return Array.isArray(read) ? read : [read];
  } catch {
    return [text];
  }
}

/** What waits on a device, oldest first, beside what is known to be on the server. */
export type Ledger = { waiting: readonly Waiting[]; known: readonly KnownNote[] };

const queued = { kind: 'queued' } as const;
const keyOf = ({ item }: Waiting): string => item.key;

/** Appends; several at once where one level was given to several students. */
export const noteDown = (ledger: Ledger, items: readonly Outgoing[]): Ledger => ({
  ...ledger,
  waiting: [...ledger.waiting, ...items.map((item) => ({ item, tried: false, state: queued }))],
});

/** The next to send, oldest first. A conflict or a refusal waits for somebody. */
export const nextToSend = (ledger: Ledger, most: number): Outgoing[] =>
  ledger.waiting
    .filter(({ state }) => state.kind === 'queued')
    .slice(0, most)
    .map(({ item }) => item);

export function markTried(ledger: Ledger, keys: readonly string[]): Ledger {
  const mark = (one: Waiting) => (keys.includes(keyOf(one)) ? { ...one, tried: true } : one);
  return { ...ledger, waiting: ledger.waiting.map(mark) };
}

/**
 * Undoes notes, sent or not. One that may have arrived is taken back there; what it took the place of
 * comes back.
 */
export function undo(ledger: Ledger, notes: readonly OutgoingNote[]): Ledger {
  return notes.reduce((left: Ledger, { key, over }) => {
    const one = left.waiting.find((waiting) => keyOf(waiting) === key);
    const without = {
      waiting: left.waiting.filter((waiting) => keyOf(waiting) !== key),
      known: left.known.filter((note) => note.key !== key),
    };
    const cannotHaveArrived = one !== undefined && (!one.tried || one.state.kind !== 'queued');
    if (cannotHaveArrived) return without;
    const restores = over?.how === 'replace' ? over.keys : [];
    return noteDown(without, [{ kind: 'take-back', key, restores }]);
  }, ledger);
}

/** What the server said to what was sent. An answer to what waits no longer changes nothing. */
export function applyAnswers(ledger: Ledger, answers: readonly OutgoingAnswer[]): Ledger {
  return answers.reduce((left: Ledger, answer) => {
    const { key } = answer;
    if (!left.waiting.some((one) => keyOf(one) === key)) return left;
    const settled = left.waiting.filter((one) => keyOf(one) !== key);
    const stays = (state: Waiting['state']): Ledger => ({
      ...left,
      waiting: left.waiting.map((one) => (keyOf(one) === key ? { ...one, state } : one)),
    });
    switch (answer.outcome) {
      case 'stored':
        return {
          waiting: settled,
          known: merged(left.known, [answer.known, ...(answer.colleagues ?? [])], answer.gone),
        };
      case 'already-there': {
        const known = answer.known === null ? [] : [answer.known];
        return { waiting: settled, known: merged(left.known, known, [key]) };
      }
      case 'taken-back':
        return { waiting: settled, known: merged(left.known, answer.back, [key]) };
      case 'conflict':
        return stays({ kind: 'conflict', existing: answer.existing });
      case 'refused':
        return stays({ kind: 'refused', message: answer.message });
    }
  }, ledger);
}

function merged(
  known: readonly KnownNote[],
  added: readonly KnownNote[],
  gone: readonly string[],
): KnownNote[] {
  const out = [...gone, ...added.map(({ key }) => key)];
  return [...known.filter(({ key }) => !out.includes(key)), ...added];
}

export type TwoViews = { mine: KnownNote; theirs: KnownNote };

/** Where the answers say that a colleague judged the same look otherwise. */
export const otherViews = (answers: readonly OutgoingAnswer[]): TwoViews[] =>
  answers.flatMap((answer) =>
    answer.outcome === 'stored'
      ? (answer.colleagues ?? [])
          .filter((theirs) => !judgesAlike(answer.known, theirs))
          .map((theirs) => ({ mine: answer.known, theirs }))
      : [],
  );

export type Choice = 'keep-old' | 'take-new' | 'keep-both';

/** A conflict's outcome: the old note stays alone, the new one takes its place, or both stand. */
export function settle(ledger: Ledger, key: string, choice: Choice): Ledger {
  if (choice === 'keep-old') return drop(ledger, key);
  const waiting = ledger.waiting.map((one): Waiting => {
    if (keyOf(one) !== key || one.item.kind !== 'note' || one.state.kind !== 'conflict') return one;
    const keys = one.state.existing.map((note) => note.key);
    const how = choice === 'take-new' ? 'replace' : 'beside';
    return { ...one, item: { ...one.item, over: { keys, how } }, state: queued };
  });
  return { ...ledger, waiting };
}

/** Gives up a note that was refused. */
export const drop = (ledger: Ledger, key: string): Ledger => ({
  ...ledger,
  waiting: ledger.waiting.filter((one) => keyOf(one) !== key),
});

/** Sends once more what was refused. */
export const retry = (ledger: Ledger, key: string): Ledger => ({
  ...ledger,
  waiting: ledger.waiting.map((one) => (keyOf(one) === key ? { ...one, state: queued } : one)),
});

const eveningOfNote = ({ observedAt, conditions }: OutgoingNote, timeZone: string): string =>
  observedAt.length === 10
    ? observedAt
    : eveningOf(new Date(observedAt), timeZone, conditions.light);

export type SeenNote = KnownNote & { waiting: boolean };

/** The notes of one student and skill as they will stand when all that is queued has arrived. */
export function notesOf(
  { waiting, known }: Ledger,
  studentId: string,
  skill: Skill,
  timeZone: string,
): SeenNote[] {
  const here = (one: { studentId: string; skill: Skill }) =>
    one.studentId === studentId && one.skill === skill;
  let seen: SeenNote[] = known.filter(here).map((note) => ({ ...note, waiting: false }));
  for (const { item, state } of waiting) {
    if (state.kind !== 'queued') continue;
    if (item.kind === 'take-back') {
      seen = seen.filter(({ key }) => key !== item.key);
      continue;
    }
    if (!here(item)) continue;
    const { over } = item;
    if (over?.how === 'replace') seen = seen.filter(({ key }) => !over.keys.includes(key));
    const { key, level, gates, prompts, note } = item;
    const said = { key, studentId, skill, level, gates, prompts, note };
    seen.push({ ...said, evening: eveningOfNote(item, timeZone), mine: true, waiting: true });
  }
  return seen;
}

/** After so many tries without an answer, seconds to wait: 2, 4, 8 … and no more than a minute. */
export const secondsBeforeTry = (failed: number): number => Math.min(60, 2 ** Math.max(1, failed));
