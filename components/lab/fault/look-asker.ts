import type { Result } from '@/lib/data/result';
import { seenWith, type FaultAsk, type FaultSeen } from '@/lib/variants/fault-seen';
import type { Look } from '@/lib/variants/fault-variant';

/** Fetches what one question shows. The same one again shows the same and is counted once. */
export type LookUp = (ask: FaultAsk) => Promise<Result<FaultSeen>>;

/** 'no-answer': it may have arrived or not, so the same is asked again. */
export type AskState =
  { state: 'waiting' } | { state: 'no-answer' } | { state: 'refused'; message: string };

/** The questions that can be asked, the test slew as one of them. */
export type AskName = Look | 'test-slew';

export type Looking = {
  seen: FaultSeen;
  /** What has been asked for and is not here. */
  asked: Readonly<Partial<Record<AskName, AskState | undefined>>>;
};

const nameOf = (ask: FaultAsk): AskName => (typeof ask === 'string' ? ask : 'test-slew');

/** Asks for evidence piece by piece and holds what has come. */
export class LookAsker {
  private shown: Looking;
  private readonly listeners = new Set<() => void>();

  constructor(
    seen: FaultSeen,
    private readonly lookUp: LookUp,
  ) {
    this.shown = { seen, asked: {} };
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  };

  readonly state = (): Looking => this.shown;

  /** What all is seen once it has come; null when it did not, or is on its way already. */
  async ask(ask: FaultAsk): Promise<FaultSeen | null> {
    const name = nameOf(ask);
    if (this.shown.asked[name]?.state === 'waiting') return null;
    this.show(this.shown.seen, name, { state: 'waiting' });
    const answer = await this.lookUp(ask).catch(() => null);
    if (answer === null) this.show(this.shown.seen, name, { state: 'no-answer' });
    else if (!answer.ok)
      this.show(this.shown.seen, name, { state: 'refused', message: answer.problem.message });
    else {
      this.show(seenWith(this.shown.seen, answer.value), name, undefined);
      return this.shown.seen;
    }
    return null;
  }

  private show(seen: FaultSeen, name: AskName, state: AskState | undefined): void {
    this.shown = { seen, asked: { ...this.shown.asked, [name]: state } };
    for (const listener of this.listeners) listener();
  }
}
