import type { ReactNode } from 'react';
import { templateText } from '@/components/grading/template-text';
import { AnswerLines } from '@/components/lab/bench/answer-lines';
import { Panel } from '@/components/ui/panel';
import type { AnswerKeyPreview } from '@/lib/data/assignments';
import { benchSampleLines } from './bench-sample-lines';
import { FaultSample } from './fault-sample';
import { PairSample } from './pair-sample';
import { QuestionSamples } from './question-samples';
import { RunSample } from './run-sample';

/** One drawn example of each kind of task, by its best answer. */
export function SampleTasks({ preview }: { preview: AnswerKeyPreview }) {
  if (preview.lab === 'lesson-questions') return <QuestionSamples variants={preview.variants} />;
  return (
    <Panel title="A sample of each kind of task" level={3}>
      <ul className="grid gap-x-8 gap-y-4 sm:grid-cols-2">
        {samplesOf(preview).map(({ template, sample }) => (
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

type OfOneTask = Exclude<AnswerKeyPreview, { lab: 'lesson-questions' }>;

function samplesOf(preview: OfOneTask): { template: string; sample: ReactNode }[] {
  switch (preview.lab) {
    case 'pick-the-pair':
      return preview.variants.map(({ template, sample }) => ({
        template,
        sample: <PairSample answerKey={preview.key} sample={sample} />,
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
