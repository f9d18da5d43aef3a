import type { FaultDraft, FaultSubmission } from '../grading/fault-submission';
import type { FaultAnswerKey, FaultVariant } from '../variants/fault-variant';
import type { DemoSkill } from './demo-choice';

/**
 * An answer of that quality: the fault itself with its cure; one that showed the same on that evening,
 * or, where there is none, the right one with a wrong cure; a wrong one after looking at everything.
 */
export function demoFinding(
  variant: FaultVariant,
  answerKey: FaultAnswerKey,
  skill: DemoSkill,
): FaultSubmission {
  const { fault, alike, cures } = answerKey;
  const twin = alike.find((one) => one !== fault && variant.faults.includes(one));
  const wrong = variant.faults.find((one) => !alike.includes(one)) ?? fault;
  const rightCures = alike.flatMap((one) => cures[one] ?? []);
  const cureOf = (named: typeof fault) =>
    cures[named]?.find((cure) => variant.cures.includes(cure));
  const [anyCure] = variant.cures;
  const wrongCure = variant.cures.find((cure) => !rightCures.includes(cure)) ?? anyCure;
  const rightCure = cureOf(fault) ?? anyCure;
  if (rightCure === undefined || wrongCure === undefined) {
    throw new Error('a task offers at least one cure');
  }
  const unseen = (['first', 'second', 'outcome', 'card', 'observations'] as const).filter(
    (look) => !variant.open.includes(look),
  );
  const testSlew = variant.testSlews[0]?.hip ?? null;
  switch (skill) {
    case 'best':
      return { looked: unseen.slice(0, 1), testSlew: null, fault, cure: rightCure };
    case 'middling':
      return twin === undefined
        ? { looked: unseen.slice(0, 2), testSlew, fault, cure: wrongCure }
        : { looked: unseen.slice(0, 2), testSlew, fault: twin, cure: cureOf(twin) ?? rightCure };
    case 'poor':
      return { looked: unseen, testSlew, fault: wrong, cure: wrongCure };
  }
}

/** Something was looked at, and nothing concluded yet. */
export const demoFindingBegun = (variant: FaultVariant, answerKey: FaultAnswerKey): FaultDraft => ({
  ...demoFinding(variant, answerKey, 'middling'),
  fault: null,
  cure: null,
});
