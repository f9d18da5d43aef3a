import type { CureId } from '../faults/fault-ids';
import type { FaultAnswerKey, FaultVariant } from '../variants/fault-variant';
import type { FaultCriterion, FaultResult } from './fault-result';
import type { FaultRefusal, FaultSubmission } from './fault-submission';
import { totalOf } from './total-of';

/** Goes up whenever the same submission could earn other marks. */
export const faultGraderVersion = 1;

const faultMark = 60;
const cureMark = 30;
export const looksMark = 10;
/** What each look beyond what was told costs, and the test slew. */
export const lookCost = 2;

export type FaultGrading = { ok: true; result: FaultResult } | { ok: false; refusal: FaultRefusal };

/**
 * Marks one answer to "What went wrong?" from the stored variant and key alone, so that a regrade is a
 * replay. A fault that showed the same that evening is as right as the real one, and so is its cure; a
 * cure of the real one counts whatever was named, since it would have put the evening right.
 */
export function gradeFault({
  variant,
  answerKey,
  submission,
}: {
  variant: FaultVariant;
  answerKey: FaultAnswerKey;
  submission: FaultSubmission;
}): FaultGrading {
  const { fault: named, cure, testSlew } = submission;
  const offered =
    variant.faults.includes(named) &&
    variant.cures.includes(cure) &&
    (testSlew === null || variant.testSlews.some(({ hip }) => hip === testSlew));
  if (!offered) return { ok: false, refusal: { code: 'not-offered' } };

  const right = answerKey.alike.includes(named);
  const rightCures = curesFor(answerKey, right ? [named, answerKey.fault] : [answerKey.fault]);
  const looked = [...new Set(submission.looked)].filter((look) => !variant.open.includes(look));
  const cost = lookCost * (looked.length + (testSlew === null ? 0 : 1));
  const criteria: FaultCriterion[] = [
    { id: 'fault', earned: right ? faultMark : 0, possible: faultMark },
    { id: 'cure', earned: rightCures.includes(cure) ? cureMark : 0, possible: cureMark },
    { id: 'looks', earned: Math.max(0, looksMark - cost), possible: looksMark },
  ];
  return {
    ok: true,
    result: {
      lab: 'what-went-wrong',
      graderVersion: faultGraderVersion,
      template: variant.template,
      total: totalOf(criteria),
      criteria,
      named,
      cure,
      fault: answerKey.fault,
      alike: answerKey.alike,
      rightCures,
      looked,
      testSlew,
      tellTale: right ? null : (answerKey.tellTales[named] ?? null),
      ...namedSlew(variant, answerKey, submission),
    },
  };
}

function namedSlew(
  { testSlews: [onOffer] }: FaultVariant,
  { testSlewsIf = {} }: FaultAnswerKey,
  { fault: named, testSlew }: FaultSubmission,
): Pick<FaultResult, 'namedSlew'> {
  const slews = testSlewsIf[named];
  const star = testSlew ?? onOffer?.hip;
  return slews === undefined ? {} : { namedSlew: slews.find(({ hip }) => hip === star) ?? null };
}

const curesFor = (
  { cures }: FaultAnswerKey,
  faults: readonly (keyof FaultAnswerKey['cures'])[],
): CureId[] => [...new Set(faults.flatMap((fault) => cures[fault] ?? []))];
