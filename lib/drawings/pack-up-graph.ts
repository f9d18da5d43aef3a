import { packedUp, packUpSteps, type PackUpRule, type PackUpStep } from '../rehearsal/pack-up';
import { consequences, packUpName } from './pack-up-words';

/** The rules between two steps alone: what `packedUp` says of doing them the wrong way round. */
const ruleBetween = (before: PackUpStep, after: PackUpStep): PackUpRule | undefined =>
  packedUp([after, before]).broken.find((rule) => rule.before === before && rule.after === after);

/** All rules of packing up. */
const packUpRules: readonly PackUpRule[] = packUpSteps.flatMap((before) =>
  packUpSteps.flatMap((after) => ruleBetween(before, after) ?? []),
);

/** Whether the one must come before the other, be it through others. */
export function mustPrecede(before: PackUpStep, after: PackUpStep): boolean {
  return packUpRules.some(
    (rule) => rule.before === before && (rule.after === after || mustPrecede(rule.after, after)),
  );
}

/** The steps that may be done now without breaking a rule. */
export const readyToDo = (done: readonly PackUpStep[]): PackUpStep[] =>
  packUpSteps.filter(
    (step) =>
      !done.includes(step) &&
      packUpRules.every(({ before, after }) => after !== step || done.includes(before)),
  );

/** Why a step may not be done yet: the rule that it would break, in words; null where none. */
export function whyNotYet(step: PackUpStep, done: readonly PackUpStep[]): string | null {
  const broken = packUpRules.filter(
    ({ before, after }) => after === step && !done.includes(before),
  );
  const worst = broken.find(({ danger }) => danger) ?? broken[0];
  return worst === undefined ? null : consequences(worst.before, worst.after);
}

/** Why a step comes before another, told by the first rule on the way from the one to the other. */
export function whyBefore(first: PackUpStep, then: PackUpStep): string {
  const rule = packUpRules.find(
    ({ before, after }) => before === first && (after === then || mustPrecede(after, then)),
  );
  if (rule === undefined) return 'either may come first.';
  const told = consequences(rule.before, rule.after);
  return rule.after === then ? told : `between them comes “${packUpName(rule.after)}”, and ${told}`;
}
