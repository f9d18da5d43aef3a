import { lowerFirst } from '@/lib/wording/capital';
import { landingInWords, missDeg } from '@/components/lab/fault/evidence/landing-words';
import { lookWords } from '@/components/lab/fault/evidence/look-words';
import { outcomeInWords } from '@/components/lab/fault/evidence/outcome-words';
import { cureWords } from '@/components/lab/fault/cure-words';
import type { WholeFaultView } from '@/components/lab/fault/fault-view';
import { faultWords } from '@/components/lab/fault/fault-words';
import { angleInWords } from '@/components/sky/angle-words';
import type { Landing } from '@/lib/faults/evidence';
import type { FaultId } from '@/lib/faults/fault-ids';
import type { FaultCriterion, FaultResult } from '@/lib/grading/fault-result';
import type { Look } from '@/lib/variants/fault-variant';

export const namedRightly = ({ alike, named }: FaultResult): boolean => alike.includes(named);
export const curedRightly = ({ rightCures, cure }: FaultResult): boolean =>
  rightCures.includes(cure);

export const tellTaleTitle = (tellTale: Look | 'test-slew'): string =>
  tellTale === 'test-slew' ? 'A test slew' : lookWords[tellTale].title;

/** How many things were asked for beyond what lay open. */
export const lookCount = ({ looked, testSlew }: FaultResult): number =>
  looked.length + (testSlew === null ? 0 : 1);

/** A fault by its name, as it stood in the list: some names are whole sentences. */
export const quoted = (fault: FaultId): string => `“${faultWords[fault].name}”`;

/** What it was, and whether it was found. */
export function verdictInWords(result: FaultResult): string {
  const { fault, named } = result;
  if (named === fault) return `You found it: ${lowerFirst(faultWords[fault].name)}.`;
  if (namedRightly(result))
    return `That counts. You named ${quoted(named)}, and it was ${quoted(fault)}: tonight the two look the same.`;
  return `It was ${quoted(fault)}. You named ${quoted(named)}.`;
}

/** Less than this on the sky is hard to tell by hand and eye. */
const plainDeg = 2;

/** What a test slew teaches of the two faults; null where the real one was named. */
export function slewLessonInWords(result: FaultResult, landing: Landing): string | null {
  const { fault, named, namedSlew } = result;
  if (named === fault || namedSlew === undefined) return null;
  if (namedRightly(result)) return 'Too little lies between the two to tell them apart tonight.';
  if (namedSlew === null)
    return `This slew could only be made because it was not ${quoted(named)}. Before a test slew, say where each fault you think of would send the tube.`;
  const apartDeg = Math.hypot(
    landing.rightDeg - namedSlew.rightDeg,
    landing.upDeg - namedSlew.upDeg,
  );
  const apart = `The two lie ${angleInWords(apartDeg * 60)} apart.`;
  return apartDeg >= plainDeg
    ? `${apart} Before a test slew, say where each fault you think of would send the tube: then one look decides.`
    : `${apart} That is little: look at other evidence too, or choose a star in another part of the sky.`;
}

/** The one thing to do differently next time. */
export function faultAdviceInWords(result: FaultResult, open: readonly Look[]): string {
  const { tellTale, looked, testSlew, cure } = result;
  if (!namedRightly(result)) {
    if (tellTale === null)
      return 'Next time, set your answer against each thing you know before you name it: every one has to fit.';
    const had =
      tellTale === 'test-slew'
        ? testSlew !== null
        : open.includes(tellTale) || looked.includes(tellTale);
    const title = tellTaleTitle(tellTale);
    return had
      ? `What told the two apart lay before you: ${lowerFirst(title)}. Next time, ask of each thing whether it fits your answer.`
      : `Next time, ask for what would tell the two likeliest faults apart. Here: ${lowerFirst(title)}.`;
  }
  if (!curedRightly(result))
    return `Next time, ask of a cure what it changes. “${cureWords[cure].name}” does not touch this fault.`;
  if (lookCount(result) > 2)
    return 'Next time, say before each look which two faults it would tell apart: fewer looks will do.';
  return 'Nothing to change: you looked at little and named what fits all of it.';
}

export function faultCriterionInWords(criterion: FaultCriterion, result: FaultResult): string {
  switch (criterion.id) {
    case 'fault':
      return 'The fault named';
    case 'cure':
      return 'The cure named';
    case 'looks': {
      const count = lookCount(result);
      if (count === 0) return 'Looks: none beyond what lay open';
      return `Looks: ${String(count)} beyond what lay open`;
    }
  }
}

/** What one item of evidence says, in figures. */
export function evidenceInFigures(
  look: Look,
  { evidence }: Pick<WholeFaultView, 'evidence'>,
): string {
  switch (look) {
    case 'first':
      return `${evidence.first.name}: ${landingInWords(evidence.first)}`;
    case 'second':
      return `${evidence.second.name}: ${landingInWords(evidence.second)}`;
    case 'outcome':
      return outcomeInWords(evidence.outcome);
    case 'later': {
      const worst = [...evidence.later].sort((a, b) => missDeg(b) - missDeg(a))[0];
      return worst === undefined
        ? 'none, there was no alignment to go by'
        : `at worst ${worst.name}: ${landingInWords(worst)}`;
    }
    case 'card':
      return 'beside a right clock and map, below';
    case 'observations':
      return 'below, in their words';
  }
}
