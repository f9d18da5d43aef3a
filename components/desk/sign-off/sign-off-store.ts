import type {
  KnownNote,
  Outgoing,
  OutgoingAnswer,
  OutgoingNote,
} from '@/lib/mastery/sign-off-note';
import {
  applyAnswers,
  drop,
  markTried,
  nextToSend,
  noteDown,
  otherViews,
  retry,
  secondsBeforeTry,
  settle,
  undo,
  type Choice,
  type Ledger,
  type TwoViews,
  type Waiting,
} from '@/lib/mastery/sign-off-queue';
import type { SendNotes } from './send-notes';

export type Connection = 'idle' | 'sending' | 'no-answer' | 'signed-out' | 'not-allowed';
export type SignOffState = {
  ledger: Ledger;
  connection: Connection;
  /** The notes of the last tap, to undo. */
  last: readonly OutgoingNote[];
  /** False: this browser keeps nothing, and what waits is lost when the page goes. */
  kept: boolean;
  /** Notes on this device that cannot be read; they lie aside. */
  unread: number;
  /** Sent in this visit, where a colleague judged otherwise: both stand. */
  views: readonly TwoViews[];
};

/** Where the queue is kept between visits. */
export type QueueKeeper = {
  read: () => readonly Waiting[];
  write: (waiting: readonly Waiting[]) => boolean;
  /** How many that it could not read it has put aside. */
  unread: () => number;
};

/** A hundred notes are some 40 kB. */
const mostAtOnce = 100;
/** After tries without an answer: a slow connection may carry these. */
const mostWhenSlow = 10;

/** What was there already, under another number, was noted by an earlier tap: this one undoes nothing. */
function withoutMet(
  last: readonly OutgoingNote[],
  answers: readonly OutgoingAnswer[],
): readonly OutgoingNote[] {
  const met = answers.filter(
    (one) => one.outcome === 'already-there' && one.known?.key !== one.key,
  );
  return met.length === 0 ? last : last.filter(({ key }) => met.every((one) => one.key !== key));
}

/** The queue of one teacher and class on this device, and its sending. */
export class SignOffStore {
  private state: SignOffState;
  private readonly listeners = new Set<() => void>();
  private timer: ReturnType<typeof setTimeout> | null = null;
  private failed = 0;
  private busy = false;

  constructor(
    known: readonly KnownNote[],
    private readonly keeper: QueueKeeper,
    private readonly send: SendNotes,
    private readonly knownChanged: (known: readonly KnownNote[]) => void = () => undefined,
    /** False: the device knows itself that there is no connection, so nothing need be tried. */
    private readonly reachable: () => boolean = () => true,
  ) {
    this.state = {
      ledger: { waiting: [], known },
      connection: 'idle',
      last: [],
      kept: true,
      unread: 0,
      views: [],
    };
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  };
  readonly snapshot = (): SignOffState => this.state;

  /** Reads what an earlier visit left, and begins to send. */
  readonly start = (): void => {
    this.change((ledger) => ledger);
    this.sendNow();
  };

  /** Another page of this browser has changed the queue. */
  readonly reread = (): void => {
    this.change((ledger) => ledger);
  };

  readonly stop = (): void => {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
  };

  readonly note = (notes: readonly OutgoingNote[]): void => {
    this.change((ledger) => noteDown(ledger, notes));
    this.show({ last: notes });
    this.sendNow();
  };

  readonly undoLast = (): void => {
    const { last } = this.state;
    this.change((ledger) => undo(ledger, last));
    this.show({ last: [] });
    this.sendNow();
  };

  readonly settle = (key: string, choice: Choice): void => {
    this.change((ledger) => settle(ledger, key, choice));
    this.sendNow();
  };
  readonly drop = (key: string): void => {
    this.change((ledger) => drop(ledger, key));
  };
  readonly retry = (key: string): void => {
    this.change((ledger) => retry(ledger, key));
    this.sendNow();
  };

  /** Now, whatever the waiting time: the connection is back, or somebody pressed. */
  readonly sendNow = (): void => {
    this.failed = 0;
    void this.sendAll();
  };

  private async sendAll(): Promise<void> {
    if (this.busy) return;
    this.stop();
    this.busy = true;
    try {
      for (;;) {
        const items = nextToSend(this.state.ledger, this.failed > 1 ? mostWhenSlow : mostAtOnce);
        if (items.length === 0) {
          this.show({ connection: 'idle' });
          return;
        }
        if (!this.reachable()) {
          this.tryLater();
          return;
        }
        if (!(await this.sendSome(items))) return;
      }
    } finally {
      this.busy = false;
    }
  }

  /** Whether it may go on at once. */
  private async sendSome(items: readonly Outgoing[]): Promise<boolean> {
    const keys = items.map(({ key }) => key);
    this.change((ledger) => markTried(ledger, keys));
    this.show({ connection: 'sending' });
    const sent = await this.send(items);
    if (sent.kind === 'answers') {
      this.failed = 0;
      this.change((ledger) => applyAnswers(ledger, sent.answers));
      this.show({
        last: withoutMet(this.state.last, sent.answers),
        views: [...this.state.views, ...otherViews(sent.answers)],
      });
      // An answer that says nothing of what was sent would otherwise be asked for without end.
      if (sent.answers.some(({ key }) => keys.includes(key))) return true;
    }
    // Signed out or refused: a later try comes with a new visit, or by hand.
    if (sent.kind === 'answers' || sent.kind === 'no-answer') this.tryLater();
    else this.show({ connection: sent.kind });
    return false;
  }

  private tryLater(): void {
    this.show({ connection: 'no-answer' });
    this.failed += 1;
    this.timer = setTimeout(() => void this.sendAll(), secondsBeforeTry(this.failed) * 1000);
  }

  /** On what is stored now, since another page of the same browser may have written. */
  private change(by: (ledger: Ledger) => Ledger): void {
    const { ledger, kept } = this.state;
    const waiting = kept ? this.keeper.read() : ledger.waiting;
    const next = by({ ...ledger, waiting });
    const written = this.keeper.write(next.waiting);
    this.show({ ledger: next, kept: written, unread: this.keeper.unread() });
    if (next.known !== ledger.known) this.knownChanged(next.known);
  }

  private show(change: Partial<SignOffState>): void {
    this.state = { ...this.state, ...change };
    for (const listener of this.listeners) listener();
  }
}
