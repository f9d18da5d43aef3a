import { templateText } from '@/components/grading/template-text';
import { ItemPicture } from '@/components/questions/item-picture';
import { Panel } from '@/components/ui/panel';
import { skillTitles } from '@/lib/course/skills';
import type { LabSamples } from '@/lib/data/lab-tasks/lab-tasks';

type Variants = Extract<LabSamples, { lab: 'lesson-questions' }>['variants'];

/** A drawn set on each lesson: each question with its right answer and how one gets there. */
export function QuestionSamples({ variants }: { variants: Variants }) {
  return variants.map(({ template, sample }) => (
    <Panel
      key={template}
      title={`A set on “${templateText('lesson-questions', template).name}”`}
      level={3}
    >
      <ol className="list-decimal space-y-5 ps-6">
        {sample.map(({ face, right, explanation, skill }, index) => (
          <li key={index} className="keep-together">
            <p className="max-w-measure font-semibold">{face.prompt}</p>
            {face.drawing === undefined ? null : <ItemPicture drawing={face.drawing} />}
            {face.kind === 'choice' || face.kind === 'several' ? (
              <p className="max-w-measure text-sm">
                <span className="text-soft">Offered: </span>
                {face.options.map(({ text }) => `“${text}”`).join(' · ')}
              </p>
            ) : null}
            <p className="max-w-measure">
              <strong className="font-semibold">Answer:</strong> {right}
            </p>
            <p className="max-w-measure text-sm text-soft">
              {explanation} (Skill: {skillTitles[skill]}.)
            </p>
          </li>
        ))}
      </ol>
    </Panel>
  ));
}
