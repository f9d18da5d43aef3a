import { readySteps } from '../../../assembly/graph';
import { isHazard, type HazardMoment } from '../../../assembly/hazards';
import type { AssemblyStep } from '../../../assembly/steps';
import type { PutItTogetherVariant } from '../../../variants/bench/put-it-together/put-it-together-variant';
import { forgottenStep } from './grade-put-it-together';
import type { PutItTogetherSubmission } from './put-it-together-submission';

/** What somebody who makes no mistake hands in. */
export function putItTogetherModelAnswer(variant: PutItTogetherVariant): PutItTogetherSubmission {
  const forgotten = forgottenStep(variant);
  const order: AssemblyStep[] = forgotten === null ? [] : [forgotten];
  for (;;) {
    const [next] = readySteps(variant, [...variant.done, ...order]);
    if (next === undefined) break;
    order.push(next);
  }
  const dangersAt = (moment: HazardMoment) =>
    variant.moments.find((one) => one.moment === moment)?.seen.filter(isHazard) ?? [];
  return {
    order,
    hazards: {
      unfolding: dangersAt('unfolding'),
      lifting: dangersAt('lifting'),
      finishing: dangersAt('finishing'),
    },
  };
}
