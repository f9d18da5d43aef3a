/** Where time is never pressing: in the table, and while one reads once more what will be sent. */
export type Waiting = 'table' | 'review';

/** The sky's own time ends here: a log may not go beyond two hours. */
export const lastMomentMs = 7_190_000;

/** A frame that took longer than this was no frame: the page was hidden, or the machine slept. */
const longestStepMs = 1000;

/**
 * The sky's own time, in milliseconds since the run began. It runs with the time of the wall while
 * the scene is open, and stands still while paused, while it waits for a decision, and while the page
 * is hidden.
 */
export class RunClock {
  private readonly waits = new Set<Waiting>();
  private pausedSinceMs: number | null = null;
  private beforeMs: number | null = null;
  private skyMs: number;

  constructor(startMs: number) {
    this.skyMs = startMs;
  }

  get held(): boolean {
    return this.waits.size > 0;
  }

  /** False when nothing changes by it. */
  wait(waits: boolean, where: Waiting): boolean {
    if (this.waits.has(where) === waits) return false;
    if (waits) this.waits.add(where);
    else this.waits.delete(where);
    return true;
  }

  get paused(): boolean {
    return this.pausedSinceMs !== null;
  }

  /** Whole milliseconds, as the log has them. */
  get atMs(): number {
    return Math.floor(this.skyMs);
  }

  get running(): boolean {
    return !this.paused && !this.held && this.skyMs < lastMomentMs;
  }

  /** The wall's time now, from any fixed moment. True when the sky has moved on. */
  tick(nowMs: number): boolean {
    const stepMs = this.beforeMs === null ? 0 : nowMs - this.beforeMs;
    this.beforeMs = nowMs;
    if (!this.running || stepMs <= 0) return false;
    this.skyMs = Math.min(lastMomentMs, this.skyMs + Math.min(longestStepMs, stepMs));
    return true;
  }

  /** `wallMs` as for `tick`. */
  pause(wallMs: number): void {
    this.pausedSinceMs = wallMs;
  }

  /** How long the sky stood still, in whole milliseconds, a day at most: what a log may say. */
  goOn(wallMs: number): number {
    const waitedMs = Math.round(wallMs - (this.pausedSinceMs ?? wallMs));
    this.pausedSinceMs = null;
    return Math.min(86_400_000, Math.max(0, waitedMs));
  }

  /** Back to the run's first instant. */
  restart(): void {
    this.skyMs = 0;
  }

  /** Straight to a later moment, as for a slew that is not to be watched. */
  jumpTo(atMs: number): void {
    this.skyMs = Math.min(lastMomentMs, Math.max(this.skyMs, atMs));
  }
}
