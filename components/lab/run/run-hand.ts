import type { RunAction } from '@/lib/alignment/run-log';

/** A knob's many little turns become one entry in the log each so often. */
const focusEveryMs = 250;

const letGo = { azimuth: 0, altitude: 0 };

/**
 * The hand on the strips and on the knob: what is wanted now, and what the log has of it. The log
 * takes no more than one change of the strips a frame.
 */
export class RunHand {
  /** Steps of speed, −5 to 5: to the right along the horizon, and upward. */
  rockers: Readonly<{ azimuth: number; altitude: number }> = letGo;
  /** Turned to, and not in the log yet. */
  focus: { position: number; sinceMs: number } | null = null;
  private logged: Readonly<{ azimuth: number; altitude: number }> = letGo;

  /** The hand is off, and so is the log: another motion has taken the strips' place. */
  off(): void {
    this.rockers = this.logged = letGo;
  }

  turnFocus(position: number, atMs: number): void {
    this.focus = { position, sinceMs: this.focus?.sinceMs ?? atMs };
  }

  /** What is to be done now for the log to follow the hand; each once. */
  due(at: number, focusNow: boolean): RunAction[] {
    const actions: RunAction[] = [];
    const { rockers, logged, focus } = this;
    if (rockers.azimuth !== logged.azimuth || rockers.altitude !== logged.altitude) {
      this.logged = rockers;
      actions.push({ at, do: 'rockers', ...rockers });
    }
    if (focus !== null && (focusNow || at - focus.sinceMs >= focusEveryMs)) {
      this.focus = null;
      actions.push({ at, do: 'focus', position: focus.position });
    }
    return actions;
  }
}
