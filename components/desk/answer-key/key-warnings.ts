import type { AnswerKeyPreview } from '@/lib/data/assignments';
import { templateText } from '@/components/grading/template-text';

export type KeyWarning = { title: string; text: string };

/** What a teacher should know about a task before students get it. */
export function keyWarnings(
  preview: Pick<AnswerKeyPreview, 'key' | 'frame' | 'variants'>,
  templates: readonly string[],
): KeyWarning[] {
  const warnings: KeyWarning[] = [];
  const { pairs } = preview.key;
  if (preview.frame.sun.trueAltitudeDeg > -0.833) {
    warnings.push({
      title: 'The Sun is up at this time',
      text: 'No star can be seen. Choose a later time, or an evening further on.',
    });
  }
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
  const empty = preview.variants.filter(
    (variant) => variant.sample === null && variant.template !== 'none-usable',
  );
  if (pairs.length > 0 && empty.length > 0) {
    warnings.push({
      title: `Some tasks have no good pair: ${empty.map((variant) => `“${templateText('pick-the-pair', variant.template).name}”`).join(', ')}`,
      text: 'In the sample drawn, saying so is the right answer there.',
    });
  }
  if (templates.length === 1) {
    warnings.push({
      title: 'One kind of task only',
      text: 'Students who sit together get much the same question. Two kinds or more keep answers their own.',
    });
  }
  return warnings;
}
