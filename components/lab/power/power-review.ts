import type { PowerAction } from '@/lib/power/power-bench';
import type { PowerDraft } from '@/lib/grading/bench/power/power-submission';
import { isWired, type PowerVariant } from '@/lib/variants/bench/power/power-variant';
import type { AnswerLine } from '../bench/bench-parts';
import { benchOf } from './power-play';
import { bayName, labelText, planNames, plugName, verdictNames, ways } from './power-words';

/** An answer at "Power" in words: for its student before it is sent, and for the teacher's answer key. */
export function powerReview(draft: PowerDraft, variant: PowerVariant): readonly AnswerLine[] {
  return [...answers(draft, variant), ...(isWired(variant) ? wiring(draft, variant) : [])];
}

function answers(draft: PowerDraft, { template, setup }: PowerVariant): AnswerLine[] {
  if (template === 'choose-the-supply')
    return setup.supplies.map((supply) => {
      const verdict = draft.verdicts[supply.id];
      return {
        asked: `Supply ${supply.id}: ${labelText(supply)}`,
        answer: verdict === undefined ? 'nothing said' : verdictNames[verdict],
      };
    });
  if (template === 'find-the-reversed')
    return [
      {
        asked: 'Cells that were the wrong way round',
        answer: draft.reversedCount === null ? 'not said' : String(draft.reversedCount),
      },
    ];
  if (template === 'last-the-night')
    return [
      { asked: 'Mean current', answer: numberText(draft.meanMilliamperes, 'mA') },
      { asked: 'Run time', answer: numberText(draft.runTimeHours, 'hours') },
      { asked: 'Volts while slewing', answer: numberText(draft.slewingVolts, 'V') },
      {
        asked: 'Does a slew make the computer start afresh?',
        answer: draft.resets === null ? 'not said' : draft.resets ? 'yes' : 'no',
      },
      { asked: 'Plan', answer: draft.plan === null ? 'not said' : planNames[draft.plan] },
    ];
  return [];
}

const numberText = (value: number | null, unit: string): string =>
  value === null ? 'not said' : `${String(value)} ${unit}`;

function wiring(draft: PowerDraft, variant: PowerVariant): AnswerLine[] {
  const { bench } = benchOf(variant, draft);
  const isOpen = variant.template === 'fill-the-holder' || variant.template === 'switch-on';
  const inBays = bench.bays.map(({ put }, i) =>
    put === null
      ? `${bayName(i)} empty`
      : `${bayName(i)} cell ${put.cell.id}, ${ways[put.plusEnd]}`,
  );
  return [
    ...(isOpen ? [{ asked: 'In the holder', answer: inBays.join('; ') }] : []),
    {
      asked: 'What you did, in this order',
      answer: draft.actions.map(stepText).join(' → ') || 'nothing',
    },
  ];
}

function stepText(action: PowerAction): string {
  switch (action.do) {
    case 'put':
      return `cell ${action.cell} into ${bayName(action.bay)}`;
    case 'take':
      return `cell out of ${bayName(action.bay)}`;
    case 'turn':
      return `turn the cell in ${bayName(action.bay)}`;
    case 'plug':
      return `plug in ${plugName(action.supply)}`;
    case 'unplug':
      return 'unplug';
    case 'hand-control':
      return action.connected ? 'connect the hand control' : 'take the hand control off';
    case 'switch':
      return action.on ? 'switch on' : 'switch off';
    case 'slew':
      return 'slew';
    case 'read':
      return `read stud ${String(action.red)} against stud ${String(action.black)}`;
  }
}
