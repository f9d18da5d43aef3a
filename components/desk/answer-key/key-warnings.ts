import type { AnswerKeyPreview } from '@/lib/data/assignments';
import { templateText } from '@/components/grading/template-text';
import { isBenchLab } from '@/lib/variants/bench/bench-labs';

export type KeyWarning = { title: string; text: string };

type KeyAndSamples = AnswerKeyPreview extends infer P
  ? P extends AnswerKeyPreview
    ? Pick<P, 'lab' | 'key' | 'frame' | 'variants'>
    : never
  : never;

/** What a teacher should know about a task before students get it. */
export function keyWarnings(preview: KeyAndSamples, templates: readonly string[]): KeyWarning[] {
  // A set of questions needs no sky, and one on a single lesson still has other questions for each student.
  if (preview.lab === 'lesson-questions') return [];
  const sky = isBenchLab(preview.lab) ? [] : skyWarnings(preview);
  return [...sky, ...labWarnings(preview), ...kindWarnings(templates)];
}

function skyWarnings({ frame }: Pick<KeyAndSamples, 'frame'>): KeyWarning[] {
  if (frame.sun.trueAltitudeDeg <= -0.833) return [];
  return [
    {
      title: 'The Sun is up at this time',
      text: 'No star can be seen. Choose a later time, or an evening further on.',
    },
  ];
}

function labWarnings(preview: KeyAndSamples): KeyWarning[] {
  switch (preview.lab) {
    case 'pick-the-pair':
      return pairWarnings(preview);
    case 'alignment-run':
      return runWarnings(preview);
    case 'what-went-wrong':
      // The evenings are drawn so that a fault shows; whether a pair is good does not matter.
      return [];
    default:
      // A bench needs no stars.
      return [];
  }
}

function pairWarnings({
  key: { pairs },
  variants,
}: Extract<KeyAndSamples, { lab: 'pick-the-pair' }>): KeyWarning[] {
  const warnings: KeyWarning[] = [];
  if (pairs.length === 0) {
    warnings.push({
      title: 'No pair is usable at this time: every student will get “say so”',
      text: 'That is a fair question once. For choosing a pair, change the time, the horizon or the limits.',
    });
  } else if (pairs.length < 4) {
    warnings.push({
      title: `Only ${pairs.length} usable ${pairs.length === 1 ? 'pair' : 'pairs'} at this time`,
      text: 'There is little to choose from, and answers are easily passed on. A later time or a more open site gives more.',
    });
  } else if (pairs.every((pair) => pair.mark > 90)) {
    warnings.push({
      title: 'Almost any two usable stars earn full marks tonight',
      text: 'The task then asks only for usable stars. A narrower eyepiece or a smaller piece of sky makes the choice matter.',
    });
  }
  const empty = variants.filter(
    (variant) => variant.sample === null && variant.template !== 'none-usable',
  );
  if (pairs.length > 0 && empty.length > 0) {
    warnings.push({
      title: `Some tasks have no good pair: ${empty.map((variant) => `“${templateText('pick-the-pair', variant.template).name}”`).join(', ')}`,
      text: 'In the sample drawn, saying so is the right answer there.',
    });
  }
  return warnings;
}

function runWarnings({
  key: { pairs },
  variants,
}: Extract<KeyAndSamples, { lab: 'alignment-run' }>): KeyWarning[] {
  if (pairs.length > 0 && variants.every(({ sample }) => sample !== null)) return [];
  return [
    {
      title: 'No pair is usable at this time: a run cannot go well',
      text: 'The mount cannot be aligned well on what there is. Change the time, the horizon or the limits.',
    },
  ];
}

function kindWarnings(templates: readonly string[]): KeyWarning[] {
  if (templates.length !== 1) return [];
  return [
    {
      title: 'One kind of task only',
      text: 'Students who sit together get much the same question. Two kinds or more keep answers their own.',
    },
  ];
}
