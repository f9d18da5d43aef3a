import { Panel } from '@/components/ui/panel';
import type { AnswerKeyPreview } from '@/lib/data/assignments';
import type { AnswerKey } from '@/lib/pointing/answer-key';
import { templateText } from '@/components/grading/template-text';

/** One drawn example of each kind of task, by its best answer. */
export function SampleTasks({
  answerKey,
  variants,
}: {
  answerKey: AnswerKey;
  variants: AnswerKeyPreview['variants'];
}) {
  const names = new Map(answerKey.stars.map((star) => [star.hip, star.name]));
  const nameOf = (hip: number): string => names.get(hip) ?? `HIP ${hip}`;
  return (
    <Panel title="A sample of each kind of task" level={3}>
      <ul className="grid gap-x-8 gap-y-3 sm:grid-cols-2">
        {variants.map(({ template, sample }) => (
          <li key={template}>
            <p className="font-semibold">{templateText('pick-the-pair', template).name}</p>
            <p className="text-sm text-soft">{templateText('pick-the-pair', template).hint}</p>
            <p className="text-sm">
              {sample === null
                ? 'Best answer in the sample: say that there is no good pair.'
                : `Best in its sky: ${nameOf(sample.stars[0])} and ${nameOf(sample.stars[1])}, ${sample.separationDeg.toFixed(0)}° apart, ${(sample.hitRate * 100).toFixed(0)} of 100 targets in the eyepiece.`}
            </p>
          </li>
        ))}
      </ul>
    </Panel>
  );
}
