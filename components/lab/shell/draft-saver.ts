import type { Result } from '@/lib/data/result';
import { forgetDraft, keepDraft } from './kept-draft';

export type SaveDraft<Draft> = (input: {
  sequence: number;
  draft: Draft;
}) => Promise<Result<{ sequence: number }>>;

/**
 * 'saved': the server has it. 'saving': on its way. 'kept': only this device has it; it will be sent
 * again. 'refused': the server will not take it, and says why.
 */
export type SaveState =
  { state: 'saved' | 'saving' | 'kept' } | { state: 'refused'; message: string };

export type DraftSaverOptions<Draft> = {
  attemptKey: string;
  nextSequence: number;
  save: SaveDraft<Draft>;
  /** Waits for more changes before sending. */
  pauseMs?: number;
  /** Waits before sending again what did not arrive. */
  retryMs?: number;
};

/**
 * Sends drafts one after another, the latest only, numbered so that a late one cannot overwrite a
 * newer. What cannot be sent is kept in memory and in the tab's storage, and sent again.
 *
 * A number stands for one draft for good. Where no answer came, the server may have the draft or not:
 * the same is sent again under the same number, which does no harm, and a newer choice follows under
 * the next. A new number for the old draft would get past the server's check for a second window.
 */
export class DraftSaver<Draft> {
  private sequence: number;
  private waiting: Draft | null = null;
  /** Sent under `sequence` and not answered yet. */
  private underway: Draft | null = null;
  private sending = false;
  private stopped = false;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private shown: SaveState = { state: 'saved' };
  private readonly listeners = new Set<() => void>();

  constructor(private readonly options: DraftSaverOptions<Draft>) {
    this.sequence = options.nextSequence;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  };

  readonly state = (): SaveState => this.shown;

  /** True while leaving the page would lose something. */
  unsaved(): boolean {
    return this.waiting !== null || this.underway !== null;
  }

  push(draft: Draft): void {
    this.waiting = draft;
    // A page loaded again takes up only what the server has not overtaken: see `draftLeftBehind`.
    const sequence = this.underway === null ? this.sequence : this.sequence + 1;
    keepDraft(this.options.attemptKey, { sequence, draft });
    if (this.shown.state === 'saved') this.show({ state: 'saving' });
    this.schedule(this.options.pauseMs ?? 700);
  }

  /** Sends now what is waiting; for a returned connection. */
  retryNow(): void {
    if (this.unsaved()) this.schedule(0);
  }

  /** The attempt is over: nothing more is sent. */
  stop(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    this.stopped = true;
    this.waiting = null;
    this.underway = null;
    forgetDraft(this.options.attemptKey);
  }

  /** Whether another change came while one was being sent. */
  private hasNewer(): boolean {
    return this.waiting !== null;
  }

  private schedule(delayMs: number): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      this.timer = null;
      void this.send();
    }, delayMs);
  }

  private async send(): Promise<void> {
    if (this.sending) return;
    this.underway ??= this.takeWaiting();
    const draft = this.underway;
    if (draft === null) return;
    this.sending = true;
    this.show({ state: 'saving' });
    const answer = await this.options
      .save({ sequence: this.sequence, draft })
      // No answer at all: the connection is gone.
      .catch(() => null);
    this.sending = false;
    if (this.stopped) return;
    if (answer === null) {
      this.show({ state: 'kept' });
      this.schedule(this.options.retryMs ?? 5000);
      return;
    }
    this.underway = null;
    if (!answer.ok) {
      this.show({ state: 'refused', message: answer.problem.message });
      return;
    }
    this.sequence = answer.value.sequence + 1;
    if (this.hasNewer()) {
      this.schedule(0);
    } else {
      forgetDraft(this.options.attemptKey);
      this.show({ state: 'saved' });
    }
  }

  private takeWaiting(): Draft | null {
    const draft = this.waiting;
    this.waiting = null;
    return draft;
  }

  private show(next: SaveState): void {
    this.shown = next;
    for (const listener of this.listeners) listener();
  }
}
