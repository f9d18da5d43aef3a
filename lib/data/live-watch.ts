import 'server-only';
import { systemClock, type Clock } from './clock';
import { newBoardMemory, readBoardRows } from './live-demo';
import type { LiveRow } from './live-rows';

/** One look at a class, or what looking failed of. */
export type LiveLook =
  { ok: true; rows: readonly LiveRow[]; at: Date } | { ok: false; error: unknown };
type Listener = (look: LiveLook) => Promise<void>;

/** Runs something again and again until it is told to stop; each run waits for the one before. */
export type Ticker = (run: () => Promise<void>) => () => void;

const lookEveryMs = 2000;

/** Not an interval: a slow database must not have several looks at once. */
const everyTwoSeconds: Ticker = (run) => {
  let stopped = false;
  let timer: NodeJS.Timeout | null = null;
  const again = async (): Promise<void> => {
    await run();
    if (!stopped) timer = setTimeout(() => void again(), lookEveryMs).unref();
  };
  void again();
  return () => {
    stopped = true;
    if (timer !== null) clearTimeout(timer);
  };
};

type Watch = { listeners: Set<Listener>; stop: () => void };
const watches = new Map<string, Watch>();

/**
 * Looks at a class every two seconds for as long as anybody watches: one reading, however many boards
 * are open. It asks the database and no messenger, since several processes may serve one school. Answers
 * how to stop. Internal: called after authorising.
 */
export function watchClass(
  classId: string,
  listener: Listener,
  { clock = systemClock, ticker = everyTwoSeconds }: { clock?: Clock; ticker?: Ticker } = {},
): () => void {
  const there = watches.get(classId);
  if (there === undefined) {
    const listeners = new Set([listener]);
    const memory = newBoardMemory();
    const look = async (): Promise<void> => {
      const at = clock.now();
      // A look that fails is told to the watchers, whose pages then ask anew: nothing else waits for it.
      const seen: LiveLook = await readBoardRows(classId, at, memory).then(
        (rows) => ({ ok: true, rows, at }),
        (error: unknown) => ({ ok: false, error }),
      );
      await Promise.all([...listeners].map((tell) => tell(seen)));
    };
    // Entered before it starts: a watcher that stops at once must find it.
    const watch: Watch = { listeners, stop: () => undefined };
    watches.set(classId, watch);
    watch.stop = ticker(look);
  } else {
    there.listeners.add(listener);
  }
  return () => {
    const watch = watches.get(classId);
    if (watch === undefined || !watch.listeners.delete(listener)) return;
    if (watch.listeners.size > 0) return;
    watches.delete(classId);
    watch.stop();
  };
}
