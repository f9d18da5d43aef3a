/**
 * How often a run's log is saved while one steers. The whole log goes each time, so a long one goes
 * less often: a class late in its evening then sends no more than at its beginning.
 */
const leastMs = 3000;
const msAnAction = 15;

/** Hands on the latest log at most every few seconds; the last one always arrives. */
export class LogThrottle<Log extends { readonly length: number }> {
  private waiting: Log | null = null;
  private timer: ReturnType<typeof setTimeout> | null = null;

  constructor(private readonly pass: (log: Log) => void) {}

  push(log: Log): void {
    this.waiting = log;
    this.timer ??= setTimeout(
      () => {
        this.flush();
      },
      Math.max(leastMs, log.length * msAnAction),
    );
  }

  /** What waits is handed on now. */
  flush(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    const { waiting } = this;
    this.waiting = null;
    if (waiting !== null) this.pass(waiting);
  }

  /** What waits is given up: it has been sent otherwise. */
  drop(): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    this.waiting = null;
  }
}
