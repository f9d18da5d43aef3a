import { brokenEdges } from '../../../assembly/graph';
import { isHazard } from '../../../assembly/hazards';
import { standAfter } from '../../../assembly/stand';
import { neededSteps, type AssemblyStep } from '../../../assembly/steps';
import type { PutItTogetherVariant } from '../../../variants/bench/put-it-together/put-it-together-variant';
import type { BenchGrading } from '../bench-result';
import type {
  PutItTogetherGate,
  PutItTogetherResult,
  PutItTogetherSlip,
} from './put-it-together-result';
import type { PutItTogetherSubmission } from './put-it-together-submission';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const putItTogetherGraderVersion = 1;

const orderMark = 50;
const completeMark = 20;
const momentMark = 10;
/** So many broken rules leave nothing of the mark for the order. */
const brokenForNothing = 5;
/** So many steps missing or out of place leave nothing of the mark for having it all. */
const wrongForNothing = 4;

type Work = { variant: PutItTogetherVariant; submission: PutItTogetherSubmission };

/** Marks one answer to "Put it together" from the stored variant alone, so that a regrade is a replay. */
export function gradePutItTogether({
  variant,
  submission,
}: Work): BenchGrading<PutItTogetherResult> {
  const { order } = submission;
  const onBench = new Set<AssemblyStep>(variant.cards);
  if (new Set(order).size !== order.length || order.some((step) => !onBench.has(step)))
    return {
      ok: false,
      refusal: { code: 'not-on-the-bench', message: 'Each part lies on the bench once.' },
    };

  const needed = new Set(neededSteps(variant));
  const inOrder = orderSlips({ variant, submission });
  const complete: PutItTogetherSlip[] = [
    ...variant.cards
      .filter((step) => needed.has(step) && !order.includes(step))
      .map((step) => ({ code: 'missing' as const, step })),
    ...order.filter((step) => !needed.has(step)).map((step) => ({ code: 'stray' as const, step })),
  ];
  const moments = variant.moments.map((one) => judgeMoment(one, submission));
  const criteria: PutItTogetherResult['criteria'] = [
    {
      id: 'order',
      earned: order.length === 0 ? 0 : orderMark * left(inOrder.length, brokenForNothing),
      possible: orderMark,
    },
    {
      id: 'complete',
      earned: completeMark * left(complete.length, wrongForNothing),
      possible: completeMark,
    },
    ...moments.map(({ moment, share }) => ({
      id: moment,
      possible: momentMark,
      earned: momentMark * share,
    })),
  ];
  return {
    ok: true,
    result: {
      lab: 'put-it-together',
      graderVersion: putItTogetherGraderVersion,
      template: variant.template,
      total: totalOf(criteria),
      criteria,
      gates: gatesAfter(variant, order),
      slips: [...inOrder, ...complete, ...moments.flatMap(({ slips }) => slips)],
      order,
    },
  };
}

const left = (wrong: number, forNothing: number): number => Math.max(0, 1 - wrong / forNothing);

/** What was done too early; what was broken before the student came does not count against them. */
function orderSlips({ variant, submission }: Work): PutItTogetherSlip[] {
  const { done } = variant;
  const forgotten = forgottenStep(variant);
  const mine = new Set<AssemblyStep>(submission.order);
  const broken = brokenEdges(variant, [...done, ...submission.order])
    .filter(({ after }) => mine.has(after))
    // A step that is missing altogether is told as missing, once, and not again for all that rests on it.
    .filter(({ before }) => done.includes(before) || mine.has(before));
  const late =
    forgotten !== null && submission.order.length > 0 && submission.order[0] !== forgotten
      ? [{ code: 'left-undone' as const, step: forgotten }]
      : [];
  return [...late, ...broken.map((edge) => ({ code: 'too-early' as const, ...edge }))];
}

/** What whoever began has left out: something that was done rests on it. Null where nothing is. */
export function forgottenStep(variant: PutItTogetherVariant): AssemblyStep | null {
  return brokenEdges(variant, variant.done)[0]?.before ?? null;
}

function judgeMoment(
  { moment, seen }: PutItTogetherVariant['moments'][number],
  { hazards }: PutItTogetherSubmission,
) {
  const marked = hazards[moment];
  const dangers = seen.filter(isHazard);
  const missed = dangers.filter((sight) => !marked.includes(sight));
  const wrongly = seen.filter((sight) => !isHazard(sight) && marked.includes(sight));
  const share = Math.max(0, 1 - (missed.length + wrongly.length) / dangers.length);
  const slips: PutItTogetherSlip[] = [
    ...missed.map((sight) => ({ code: 'hazard-missed' as const, moment, sight })),
    ...wrongly.map((sight) => ({ code: 'not-a-hazard' as const, moment, sight })),
  ];
  return { moment, share, slips };
}

/** What became dangerous on the way through these steps. */
export function gatesAfter(
  variant: PutItTogetherVariant,
  order: readonly AssemblyStep[],
): PutItTogetherGate[] {
  const from = variant.kind === 'take-down' ? 'built' : 'packed';
  const before = standAfter(variant.done, from);
  const stand = standAfter([...variant.done, ...order], from);
  return [
    ...(stand.tube === 'fallen' ? [{ id: 'tube-fell' as const }] : []),
    // What already stood badly is somebody else's; what was put on top of it is not.
    ...(stand.tipped && (!before.tipped || orderLoads(variant, order))
      ? [{ id: 'tipped-over' as const }]
      : []),
    ...(variant.kind === 'build-by-day' && order.includes('caps-off')
      ? [{ id: 'caps-off-by-day' as const }]
      : []),
  ];
}

/** Whether the tube was put on a stand that still lacked what had been left out. */
function orderLoads(variant: PutItTogetherVariant, order: readonly AssemblyStep[]): boolean {
  const forgotten = forgottenStep(variant);
  const tube = order.indexOf('tube-on');
  return forgotten !== null && tube >= 0 && !order.slice(0, tube).includes(forgotten);
}
