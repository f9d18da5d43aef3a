import { benchTexts } from '@/components/lab/bench/bench-texts';
import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import type { AnswerKeyPreview } from '@/lib/data/assignments';
import type { Scenario } from '@/lib/pointing/scenario';
import { isBenchLab, type BenchLab } from '@/lib/variants/bench/bench-labs';
import type { Lab } from '@/lib/variants/labs';
import {
  BestPairsTable,
  MarkNote,
  TemptingStarsTable,
  UsableStarsTable,
} from './answer-key-tables';
import { KeyPicture } from './key-picture';
import { SampleTasks } from './sample-tasks';

const pairKeyLead =
  'For the moment of the setting itself; each student’s own moment lies within the window and is marked by its own key. “In the eyepiece” is the share of targets that a go-to would land inside the field (approximate).';
const keyLead: Readonly<Record<Exclude<Lab, BenchLab>, string>> = {
  'pick-the-pair': `${pairKeyLead} The mark is for choosing that pair with every look-alike named.`,
  'alignment-run': `${pairKeyLead} Where the stars are the student’s choice, the pair counts for a small part; each task’s telescope hides small errors of its own, and the samples tell what a perfect operator would get with them.`,
  'what-went-wrong':
    'Each student gets an evening and a fault of their own, drawn evenly among those that show under this sky. Below is one of each kind, as drawn for this page.',
  'lesson-questions':
    'Each student gets questions of their own on all these lessons, and others with each attempt; the mark is the mean of theirs. Below is a set on each lesson, as drawn for this page.',
};

/** Where two stars of the evening are what it is about. */
export const isUnderSky = (lab: Lab): boolean => lab === 'pick-the-pair' || lab === 'alignment-run';

/** The answer key of one part: what it is about, the sky where it counts, and a sample of each kind. */
export function PartKey({
  preview,
  scenario,
  title,
  stars,
}: {
  preview: AnswerKeyPreview;
  scenario: Scenario;
  /** null where there is one part only. */
  title: string | null;
  /** For picture and tables of the sky; parts share it, so that the first one shows it and the others get null. */
  stars: readonly SkyPictureStar[] | null;
}) {
  const { lab, key, frame } = preview;
  return (
    <div className="space-y-5">
      <div>
        {title === null ? null : <h3 className="text-lg font-semibold">{title}</h3>}
        <p className="max-w-measure print:max-w-none text-soft">
          {isBenchLab(lab) ? benchTexts[lab].keyLead : keyLead[lab]}
        </p>
      </div>
      {stars !== null && isUnderSky(lab) ? (
        <>
          <div className="grid grid-cols-[minmax(0,1fr)] items-start gap-6 xl:grid-cols-[minmax(0,26rem)_minmax(0,1fr)] print:block print:space-y-4">
            <KeyPicture answerKey={key} frame={frame} scenario={scenario} stars={stars} />
            <div className="space-y-3">
              <BestPairsTable answerKey={key} />
              <MarkNote answerKey={key} />
            </div>
          </div>
          <UsableStarsTable answerKey={key} />
          <TemptingStarsTable answerKey={key} />
        </>
      ) : null}
      <SampleTasks
        preview={preview}
        answerKey={key}
        // Two sections of one page do not share a name.
        {...(title === null ? {} : { title: `${title}: a sample of each kind of task` })}
      />
    </div>
  );
}
