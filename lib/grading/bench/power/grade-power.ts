import { replay, type Happening } from '../../../power/act';
import { benchAtStart } from '../../../power/power-bench';
import { slewingV, terminalsOf } from '../../../power/terminals';
import { nightOf, type PowerVariant } from '../../../variants/bench/power/power-variant';
import type { BenchGrading } from '../bench-result';
import { judgePowerTask } from './judge-power-task';
import { powerGates, type PowerGate, type PowerResult, type PowerSlip } from './power-result';
import type { PowerSubmission } from './power-submission';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const powerGraderVersion = 1;

/**
 * Marks one "Power" from the stored task and what was done, played once more: a regrade is a replay.
 * A gate that failed stays failed, whatever was done afterwards: the volts were there.
 */
export function gradePower({
  variant,
  submission,
}: {
  variant: PowerVariant;
  submission: PowerSubmission;
}): BenchGrading<PowerResult> {
  const { setup } = variant;
  const played = replay(setup, benchAtStart(setup), submission.actions);
  if (played === null)
    return refused('impossible-action', 'One of these steps cannot be done on this bench.');
  if (Object.keys(submission.verdicts).some((id) => setup.supplies.every((one) => one.id !== id)))
    return refused('unknown-supply', 'This answer speaks of a supply that is not on the bench.');

  const { bench, happened } = played;
  const { criteria, slips } = judgePowerTask(variant, submission, { setup, bench, happened });
  const { volts, computer } = terminalsOf(setup, bench);
  const night = nightOf(variant);
  const { runTimeHours, slewingVolts } = submission;
  return {
    ok: true,
    result: {
      lab: 'power',
      graderVersion: powerGraderVersion,
      template: variant.template,
      total: totalOf(criteria),
      criteria,
      gates: gatesOf(happened),
      slips: [...harmDone(happened), ...slips],
      end: {
        bays: bench.bays.map(({ put }) => put && { cell: put.cell.id, plusEnd: put.plusEnd }),
        plugged: bench.plugged,
        handControl: bench.handControl,
        on: bench.on,
        volts,
        computer,
        slewingV: slewingV(setup, bench),
      },
      foretold:
        night === null || runTimeHours === null || slewingVolts === null
          ? null
          : { runTimeHours, slewingVolts },
    },
  };
}

const refused = (code: string, message: string): BenchGrading<never> => ({
  ok: false,
  refusal: { code, message },
});

const gatesOf = (happened: readonly Happening[]): PowerGate[] =>
  powerGates.filter((id) => happened.some(({ code }) => code === id)).map((id) => ({ id }));

/** What did harm, once of each kind; the order's own slips tell the rest. */
function harmDone(happened: readonly Happening[]): PowerSlip[] {
  const slips = new Map<string, PowerSlip>();
  for (const one of happened) {
    if (
      one.code === 'mains-outdoors' ||
      one.code === 'reverse-polarity' ||
      one.code === 'over-voltage'
    )
      slips.set(one.code, slips.get(one.code) ?? one);
  }
  return [...slips.values()];
}
