import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { mayWithClass } from './access';
import type { Clock } from './clock';
import { liveBoardOf, type LiveBoard } from './live-board';
import type { LiveOptions } from './live-input';
import { watchClass, type LiveLook, type Ticker } from './live-watch';

export type LiveStreamInput = {
  /** Who is asking, at the time of asking: a session may have ended meanwhile. */
  viewer: () => Promise<Viewer>;
  classId: string;
  options: LiveOptions;
  /** What goes over the wire of a board; what stays the same is not sent again. */
  present: (board: LiveBoard) => object;
  /** Aborted when the browser is gone. */
  signal: AbortSignal;
  clock?: Clock;
  ticker?: Ticker;
};

/** Looks from one question "may they still?" to the next, and from one sign of life to the next: 10 s. */
const looksBetween = 5;

/**
 * Server-sent events (WHATWG HTML, "Server-sent events"): `board` when something changed, `heard` now
 * and then so that proxies and the page know the line is alive, `signed-out` when the viewer may no
 * longer see the class, after which the stream ends. A look that fails ends it too; browsers come again.
 */
export function liveStream(input: LiveStreamInput): ReadableStream<Uint8Array> {
  const { classId, options, present, signal, clock, ticker } = input;
  const encoder = new TextEncoder();
  let stop = (): void => undefined;
  let open = true;
  return new ReadableStream<Uint8Array>({
    start(controller) {
      let looks = 0;
      let sent = '';
      const end = (): void => {
        if (!open) return;
        open = false;
        stop();
        controller.close();
      };
      const fail = (error: unknown): void => {
        if (!open) return;
        open = false;
        stop();
        controller.error(error);
      };
      const send = (event: string, data: object): void => {
        if (!open) return;
        controller.enqueue(encoder.encode(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`));
      };
      /** Asked before anything is read, and again and again; shows out whoever may not. */
      const mayLook = async (): Promise<boolean> => {
        if (await mayWithClass(await input.viewer(), classId, canSeeClass)) return true;
        send('signed-out', {});
        end();
        return false;
      };
      const tell = async (look: LiveLook): Promise<void> => {
        const asksAgain = looks > 0 && looks % looksBetween === 0;
        looks += 1;
        if (asksAgain && !(await mayLook())) return;
        if (!look.ok) {
          fail(look.error);
          return;
        }
        const board = present(liveBoardOf(look.rows, options, look.at));
        const text = JSON.stringify(board);
        const at = look.at.toISOString();
        if (text !== sent) send('board', { at, board });
        else if (asksAgain) send('heard', { at });
        sent = text;
      };
      const watch = async (): Promise<void> => {
        // Gone meanwhile: then nothing is to be looked at.
        if (!(await mayLook()) || !open) return;
        stop = watchClass(classId, (look) => tell(look).catch(fail), {
          ...(clock === undefined ? {} : { clock }),
          ...(ticker === undefined ? {} : { ticker }),
        });
      };
      signal.addEventListener('abort', end);
      if (signal.aborted) end();
      else watch().catch(fail);
    },
    cancel: () => {
      open = false;
      stop();
    },
  });
}
