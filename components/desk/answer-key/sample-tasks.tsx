import type { ReactNode } from 'react';
import { templateText } from '@/components/grading/template-text';
import { AnswerLines } from '@/components/lab/bench/answer-lines';
import { Panel } from '@/components/ui/panel';
import type { LabSamples } from '@/lib/data/lab-tasks/lab-tasks';
import type { AnswerKey } from '@/lib/pointing/answer-key';
import { benchSampleLines } from './bench-sample-lines';
import { FaultSample } from './fault-sample';
import { PairSample } from './pair-sample';
import { QuestionSamples } from './question-samples';
import { RunSample } from './run-sample';

/** One drawn example of each kind of task, or the one task of an attempt, by its best answer. */
export function SampleTasks({
  preview,
  answerKey,
  title = 'A sample of each kind of task',
}: {
  preview: LabSamples;
  /** Of the sky that the tasks are set under; null where no star is looked for. */
  answerKey: AnswerKey | null;
  title?: string;
}) {
  if (preview.lab === 'lesson-questions') return <QuestionSamples variants={preview.variants} />;
  return (
    <Panel title={title} level={3}>
      <ul className="grid gap-x-8 gap-y-4 sm:grid-cols-2">
        {samplesOf(preview, answerKey).map(({ template, sample }) => (
          <li key={template}>
            <p className="font-semibold">{templateText(preview.lab, template).name}</p>
            <p className="text-sm text-soft">{templateText(preview.lab, template).hint}</p>
            <div className="space-y-1 text-sm">{sample}</div>
          </li>
        ))}
      </ul>
    </Panel>
  );
}

type OfOneTask = Exclude<LabSamples, { lab: 'lesson-questions' }>;

function samplesOf(
  preview: OfOneTask,
  answerKey: AnswerKey | null,
): { template: string; sample: ReactNode }[] {
  switch (preview.lab) {
    case 'pick-the-pair':
      return preview.variants.map(({ template, sample }) => ({
        template,
        sample: answerKey === null ? null : <PairSample answerKey={answerKey} sample={sample} />,
      }));
    case 'alignment-run':
      return preview.variants.map(({ template, sample }) => ({
        template,
        sample: <RunSample sample={sample} />,
      }));
    case 'what-went-wrong':
      return preview.variants.map(({ template, sample }) => ({
        template,
        sample: <FaultSample sample={sample} />,
      }));
    default:
      return benchSampleLines(preview).map(({ template, lines }) => ({
        template,
        sample: <AnswerLines lines={lines} />,
      }));
  }
}
