import { act, replayRun, startRun } from '@/lib/alignment/alignment-run';
import type { Run } from '@/lib/alignment/run';
import type { RunInput } from '@/lib/alignment/run-input';
import type { RunAction, RunLog } from '@/lib/alignment/run-log';
import { longestLog, runActionSchema } from '@/lib/alignment/run-log';
import type { RunRefusal } from '@/lib/alignment/run-state';

/** Room that is kept for the judgement, which ends a run. */
const keptFree = 2;

/** The run and the log that leads to it. What is refused is not in the log. */
export class RunRecord {
  run: Run;
  log: RunLog;

  /** A log that no longer adds up (another version made it) is taken up as far as it does. */
  constructor(input: RunInput, log: RunLog) {
    const replay = replayRun(input, log);
    this.log = replay.ok ? log : log.slice(0, replay.action);
    const again = replay.ok ? replay : replayRun(input, this.log);
    this.run = again.ok ? again.run : startRun(input);
    // Whoever left with a hand on a strip has let go of it.
    if (this.stripsHeld) {
      this.take({ at: this.run.lastMs, do: 'rockers', azimuth: 0, altitude: 0 });
    }
  }

  /** Null when it was done, else why not. What is taken, the server takes too. */
  take(action: RunAction): RunRefusal | 'too-many' | 'too-far' | null {
    if (this.full && action.do !== 'judge') return 'too-many';
    if (!runActionSchema.safeParse(action).success) return 'too-far';
    const next = act(this.run, action);
    if (next.refusal !== null) return next.refusal;
    this.run = next;
    this.log = [...this.log, action];
    return null;
  }

  /** Nothing but the judgement has room any more. */
  get full(): boolean {
    return this.log.length >= longestLog - keptFree;
  }

  /** As if nothing had been done. */
  forget(): void {
    this.run = startRun(this.run.input);
    this.log = [];
  }

  /** Whether a strip was held when the log ends. */
  private get stripsHeld(): boolean {
    const last = this.log.findLast(({ do: what }) => what === 'rockers' || what === 'stop');
    return last?.do === 'rockers' && (last.azimuth !== 0 || last.altitude !== 0);
  }

  /** The judgement that ended the run, null before it. */
  get trusted(): boolean | null {
    const last = this.log.at(-1);
    return last?.do === 'judge' ? last.trust : null;
  }
}
