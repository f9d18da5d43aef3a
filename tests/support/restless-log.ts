import { act, startRun, viewAt } from '@/lib/alignment/alignment-run';
import type { OperatorStars } from '@/lib/alignment/operator-stars';
import type { RunInput } from '@/lib/alignment/run-input';
import { longestLog, type RunAction } from '@/lib/alignment/run-log';

/** Between two changes of the strips: a log of the most actions then fills its two hours. */
const everyMs = 1700;
/** Start, two stars with a go-to and a confirm each, and the judgement. */
const others = 6;

/** A finished run, as long as a log may be, of a hand that goes full speed to and fro between two stars. */
export function restlessLog(input: RunInput, [first, second]: OperatorStars): RunAction[] {
  let run = startRun(input);
  const log: RunAction[] = [];
  const done = (action: RunAction): void => {
    run = act(run, action);
    if (run.refusal !== null) throw new Error(`refused: ${run.refusal.code}`);
    log.push(action);
  };
  const confirm = (at: number): void => {
    done({ at, do: 'this-is-the-star', readings: viewAt(run, at).readings });
  };
  const goTo = (hip: number): void => {
    done({ at: run.lastMs, do: 'go-to', hip });
  };

  done({ at: 0, do: 'set-start', azimuthDeg: 0, altitudeDeg: 0 });
  goTo(first);
  let at = run.arrivesAtMs ?? 0;
  while (log.length < longestLog - others + 2) {
    const way = log.length % 2 === 0 ? 5 : -5;
    done({ at, do: 'rockers', azimuth: way, altitude: -way });
    at += everyMs;
  }
  confirm(at);
  goTo(second);
  confirm(run.arrivesAtMs ?? at);
  done({ at: run.lastMs, do: 'judge', trust: false });
  return log;
}
