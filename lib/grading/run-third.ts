import { act, startRun, viewAt } from '../alignment/alignment-run';
import type { RunInput } from '../alignment/run-input';
import type { RunLog } from '../alignment/run-log';
import { starSeenAt, trueSky } from '../alignment/run-sky';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { mergedStarOf } from '../pointing/merged-stars';
import { separationDeg } from '../units/vector';
import type { RunResult } from './run-result';

/**
 * By how much the last go-to after the result missed its star: where it landed, before anybody steered.
 * In the observing eyepiece's field or not. Null when no third star was gone to.
 */
export function judgeThird(input: RunInput, log: RunLog): RunResult['third'] {
  let run = startRun(input);
  let third: RunResult['third'] = null;
  for (const action of log) {
    run = act(run, action);
    if (action.do === 'start-again') third = null;
    if (action.do !== 'go-to' || viewAt(run, action.at).stage !== 'check-third') continue;
    const arrivesAtMs = run.arrivesAtMs ?? action.at;
    const star = starSeenAt(trueSky(input), action.hip, arrivesAtMs);
    if (star === null) continue;
    const { telescope, eyepiece } = input.scenario;
    const radius = fieldRadiusArcmin(telescope, eyepiece);
    const missArcmin = separationDeg(viewAt(run, arrivesAtMs).tube, star) * 60;
    third = {
      hip: action.hip,
      name: mergedStarOf(input.catalogue, action.hip)?.name ?? `HIP ${action.hip}`,
      missArcmin,
      inField: missArcmin <= radius,
      fieldRadiusArcmin: radius,
    };
  }
  return third;
}
