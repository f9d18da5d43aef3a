import { runAdviceInWords, sunGateInWords } from '@/components/grading/run/run-result-words';
import { markText } from '@/components/grading/mark-text';
import type { SlipWords } from '@/components/grading/bench-result-view';
import type {
  DressRehearsalCriterion,
  DressRehearsalGate,
  DressRehearsalResult,
  DressRehearsalSlip,
  RehearsedSkill,
} from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-result';
import { packUpSteps } from '@/lib/rehearsal/pack-up';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { benchGateWords, benchSlipWords } from './bench-result-words';
import { packUpConsequence, packUpName } from './pack-up-words';
import { notReadyWords, stageWords } from './stage-words';

export const criterionWords = (id: DressRehearsalCriterion): string => stageWords[id].title;

export function verdictOf({ readyForTheField, gates, total }: DressRehearsalResult): string {
  if (readyForTheField)
    return 'Ready for the field: the whole evening held together, and nobody was in danger.';
  if (gates.length > 0)
    return gates.length === 1
      ? 'Not yet ready for the field: one thing that was done is dangerous, and no mark makes up for it.'
      : `Not yet ready for the field: ${String(gates.length)} things that were done are dangerous, and no mark makes up for them.`;
  return total >= 50
    ? 'Not yet ready for the field: a good part of the evening held. Below stands what it cost.'
    : 'Not yet ready for the field: much of the evening is still to be done, or to be done again.';
}

/** A gate in the words of the stage's own lab. */
export function gateWords(
  gate: DressRehearsalGate,
  result: DressRehearsalResult,
): { title: string; text: string } {
  if (gate.id === 'alignment-run') {
    const [first] = result.run?.gates ?? [];
    return {
      title: 'too close to the Sun',
      text: first === undefined ? 'The tube pointed too close to the Sun.' : sunGateInWords(first),
    };
  }
  if (gate.id === 'pack-up') {
    const rule = result.slips
      .flatMap((slip) => (slip.code === 'packed-up' ? slip.broken : []))
      .find(({ after, danger }) => danger && after === gate.gate);
    return {
      title: 'packed up dangerously',
      text:
        rule === undefined
          ? 'Something was taken apart before it was safe.'
          : `“${packUpName(rule.after)}” came before “${packUpName(rule.before)}”. ${packUpConsequence(rule.before, rule.after)}`,
    };
  }
  return benchGateWords(gate.id, gate.gate, result);
}

const percent = (share: number): string => `${String(Math.round(100 * share))} in 100`;

export function slipWords(
  slip: DressRehearsalSlip,
  result: DressRehearsalResult,
  variant: DressRehearsalVariant,
): SlipWords {
  switch (slip.code) {
    case 'not-done':
      return {
        what: `${stageWords[slip.stage].title}: not finished.`,
        why: 'What is not done in the rehearsal has to be done in the dark, with others waiting.',
        next: `Go through “${stageWords[slip.stage].title}” to its end next time; the panel says what is missing.`,
      };
    case 'bench': {
      const { what, why, next } = benchSlipWords(slip.stage, result, variant);
      return { what: `${stageWords[slip.stage].title}: ${what}`, why, next };
    }
    case 'planned-pair':
      return {
        what: `With the pair you planned ${percent(slip.hitRate)} targets would be in the eyepiece; with the best pair ${percent(slip.bestHitRate)}.`,
        why: 'How the two stars lie to each other decides how well two centrings tie the sky down.',
        next: 'Look for two stars about nine fists apart along the sky, neither low nor overhead.',
      };
    case 'not-ready': {
      const { title, text } = notReadyWords[slip.reason];
      return { what: `The alignment never began. ${title}.`, why: '', next: text };
    }
    case 'alignment-run':
      return {
        what: `Align on two stars: ${markText(slip.lostMarks)} marks were lost here.`,
        why: '',
        next: result.run === null ? '' : runAdviceInWords(result.run.advice),
      };
    case 'packed-up':
      return packedUpWords(slip);
    case 'does-not-last':
      return {
        what:
          slip.resetsAtSlew !== null
            ? `At slew ${String(slip.resetsAtSlew)} the supply sags below what the computer needs.`
            : `The supply lasts ${slip.hours === null ? 'nobody knows how long' : `${slip.hours.toFixed(1)} hours`}.`,
        why: 'When the voltage goes, even for a moment, the alignment goes with it.',
        next: 'Reckon the night before it begins: cells for this cold and this load, a second set, or another supply.',
      };
  }
}

function packedUpWords({
  broken,
  missing,
}: Extract<DressRehearsalSlip, { code: 'packed-up' }>): SlipWords {
  const [rule] = broken;
  if (rule !== undefined)
    return {
      what: `Pack up: “${packUpName(rule.after)}” came before “${packUpName(rule.before)}”.`,
      why: packUpConsequence(rule.before, rule.after),
      next: 'Power first, while it can still help; then what went on last comes off first.',
    };
  return {
    what: `Pack up: ${String(missing.length)} of ${String(packUpSteps.length)} things were left undone.`,
    why: `Left: ${missing.map((step) => packUpName(step).toLowerCase()).join(', ')}.`,
    next: 'The evening ends when the ground is as you found it.',
  };
}

export const skillWords: Readonly<Record<RehearsedSkill, string>> = {
  kit: 'Know the kit',
  assemble: 'Put it together',
  level: 'Level',
  balance: 'Balance',
  finder: 'Set the finder',
  power: 'Power it safely',
  'clock-and-place': 'Give it time and place',
  'choose-stars': 'Choose two stars',
  align: 'Align',
  diagnose: 'Notice a bad alignment',
  safety: 'Safety',
};

export function powerInWords(power: DressRehearsalResult['power']): string {
  if (power === null) return 'The computer was dark: nothing lasted at all.';
  const { hours, resetsAtSlew } = power;
  const lasts =
    hours === null
      ? 'Your supply says nothing of how long it lasts.'
      : `Your supply would have carried the evening for ${hours.toFixed(1)} hours.`;
  return resetsAtSlew === null
    ? lasts
    : `${lasts} At slew ${String(resetsAtSlew)} the computer loses its voltage and, with it, the alignment.`;
}
