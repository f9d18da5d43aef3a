import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { KnownNote, Outgoing, OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { Waiting } from '@/lib/mastery/sign-off-queue';
import type { Sent } from './send-notes';
import { SignOffStore } from './sign-off-store';

const note = (letter: string): OutgoingNote => ({
  kind: 'note',
  key: letter.repeat(32),
  studentId: 'ann',
  skill: 'level',
  level: 3,
  gates: [],
  prompts: 0,
  note: '',
  instrument: 'Wren',
  over: null,
  conditions: { light: 'night', cloud: 'clear' },
  observedAt: '2026-12-05T20:00:00Z',
});

/** A device's storage, and a server that says what it is told to. */
function device(reachable = () => true) {
  const disk: { queue: readonly Waiting[]; works: boolean; unread: number } = {
    queue: [],
    works: true,
    unread: 0,
  };
  const server: { says: Sent | 'stores'; got: Outgoing[] } = { says: 'stores', got: [] };
  const store = (items: readonly Outgoing[]): Sent => ({
    kind: 'answers',
    answers: items.map(({ key, kind }) => {
      if (kind === 'take-back') return { outcome: 'taken-back', key, back: [] };
      const known: KnownNote = { ...note('a'), key, evening: '2026-12-05', mine: true };
      return { outcome: 'stored', key, known, gone: [] };
    }),
  });
  const open = () =>
    new SignOffStore(
      [],
      {
        read: () => disk.queue,
        write: (queue) => {
          if (disk.works) disk.queue = queue;
          return disk.works;
        },
        unread: () => disk.unread,
      },
      (items) => {
        server.got.push(...items);
        return Promise.resolve(server.says === 'stores' ? store(items) : server.says);
      },
      undefined,
      reachable,
    );
  return { disk, server, open };
}

const settled = () => vi.advanceTimersByTimeAsync(0);
const waiting = (store: SignOffStore): number => store.snapshot().ledger.waiting.length;

describe('the queue on a device', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('writes a note down before it sends it, and forgets it only when it has arrived', async () => {
    const { disk, server, open } = device();
    const store = open();
    store.note([note('a')]);
    expect(disk.queue).toHaveLength(1);
    await settled();
    expect(disk.queue).toEqual([]);
    expect(server.got).toHaveLength(1);
    expect(store.snapshot()).toMatchObject({ connection: 'idle', ledger: { waiting: [] } });
    expect(store.snapshot().ledger.known).toHaveLength(1);
  });

  it('keeps what has no answer over a reload, and sends the same note again', async () => {
    const { server, open } = device();
    server.says = { kind: 'no-answer' };
    const first = open();
    first.note([note('a')]);
    await settled();
    first.stop();
    expect(first.snapshot().connection).toBe('no-answer');
    server.says = 'stores';
    const second = open();
    second.start();
    await settled();
    expect(server.got.map(({ key }) => key)).toEqual([note('a').key, note('a').key]);
    expect(waiting(second)).toBe(0);
  });

  it('tries by itself, ever less often, until the connection is back', async () => {
    const { server, open } = device();
    server.says = { kind: 'no-answer' };
    const store = open();
    store.note([note('a')]);
    await settled();
    expect(server.got).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(2000);
    expect(server.got).toHaveLength(2);
    await vi.advanceTimersByTimeAsync(3999);
    expect(server.got).toHaveLength(2);
    server.says = 'stores';
    await vi.advanceTimersByTimeAsync(1);
    expect(server.got).toHaveLength(3);
    expect(waiting(store)).toBe(0);
  });

  it('keeps all when signed out, and tries no more by itself', async () => {
    const { disk, server, open } = device();
    server.says = { kind: 'signed-out' };
    const store = open();
    store.note([note('a'), note('b')]);
    await vi.advanceTimersByTimeAsync(600_000);
    expect(server.got).toHaveLength(2);
    expect(store.snapshot().connection).toBe('signed-out');
    expect(disk.queue).toHaveLength(2);
  });

  it('does not ask without end when the answers speak of something else', async () => {
    const { server, open } = device();
    server.says = { kind: 'answers', answers: [] };
    const store = open();
    store.note([note('a')]);
    await settled();
    expect(server.got).toHaveLength(1);
    expect(waiting(store)).toBe(1);
  });

  it('loses nothing that another page of the same browser wrote', async () => {
    const { disk, server, open } = device();
    server.says = { kind: 'no-answer' };
    const [one, other] = [open(), open()];
    one.note([note('a')]);
    other.note([note('b')]);
    await settled();
    expect(disk.queue.map(({ item }) => item.key)).toEqual([note('a').key, note('b').key]);
    one.reread();
    expect(waiting(one)).toBe(2);
  });

  it('says how many notes of an earlier visit cannot be read', () => {
    const { disk, open } = device();
    disk.unread = 2;
    const store = open();
    store.start();
    expect(store.snapshot().unread).toBe(2);
  });

  it('works on in a browser that keeps nothing, and says so', async () => {
    const { disk, server, open } = device();
    disk.works = false;
    server.says = { kind: 'no-answer' };
    const store = open();
    store.note([note('a')]);
    store.note([note('b')]);
    await settled();
    expect(store.snapshot().kept).toBe(false);
    expect(waiting(store)).toBe(2);
    server.says = 'stores';
    store.sendNow();
    await settled();
    expect(waiting(store)).toBe(0);
  });

  it('tries nothing where the device itself has no connection, so that an undo leaves no trace', async () => {
    const { disk, server, open } = device(() => false);
    const store = open();
    store.note([note('a')]);
    await settled();
    expect(store.snapshot().connection).toBe('no-answer');
    store.undoLast();
    expect(server.got).toEqual([]);
    expect(disk.queue).toEqual([]);
  });

  it('undoes the last tap once', async () => {
    const { server, open } = device();
    const store = open();
    store.note([note('a')]);
    await settled();
    store.undoLast();
    expect(store.snapshot().last).toEqual([]);
    expect(store.snapshot().ledger.known).toEqual([]);
    store.undoLast();
    await settled();
    expect(server.got.map(({ kind }) => kind)).toEqual(['note', 'take-back']);
    expect(waiting(store)).toBe(0);
  });

  it('offers no undo of a note that was there already under another number', async () => {
    const { server, open } = device();
    const store = open();
    const known: KnownNote = { ...note('o'), evening: '2026-12-05', mine: true };
    const same = { outcome: 'already-there', key: note('a').key, known } as const;
    const again = { outcome: 'already-there', key: note('b').key, known: { ...known } } as const;
    server.says = {
      kind: 'answers',
      answers: [same, { ...again, known: { ...known, key: again.key } }],
    };
    store.note([note('a'), note('b')]);
    await settled();
    // The other one is its own, sent twice: that can be undone.
    expect(store.snapshot().last.map(({ key }) => key)).toEqual([note('b').key]);
  });

  it('tells where a colleague judged otherwise, and where both agree says nothing', async () => {
    const { server, open } = device();
    const mine: KnownNote = { ...note('a'), evening: '2026-12-05', mine: true };
    const theirs: KnownNote = { ...mine, key: 'c'.repeat(32), level: 1, mine: false };
    const alike: KnownNote = { ...mine, key: 'd'.repeat(32), prompts: 2, mine: false };
    const answer = { outcome: 'stored' as const, key: mine.key, known: mine, gone: [] };
    server.says = { kind: 'answers', answers: [{ ...answer, colleagues: [theirs, alike] }] };
    const store = open();
    store.note([note('a')]);
    await settled();
    expect(store.snapshot().views).toEqual([{ mine, theirs }]);
    // Both stand beside one's own, as after a reload.
    expect(store.snapshot().ledger.known).toEqual([mine, theirs, alike]);
  });
});
