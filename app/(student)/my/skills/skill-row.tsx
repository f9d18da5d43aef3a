import { RowOfThree } from '@/components/grading/skills/row-of-three';
import { SkillStateMark } from '@/components/grading/skills/skill-state-mark';
import { standingWords } from '@/components/grading/skills/standing-words';
import { labText } from '@/components/grading/template-text';
import { LinkButton } from '@/components/ui/link-button';
import { TextLink } from '@/components/ui/text-link';
import { lessonOfSkill } from '@/lib/course/lessons';
import { skillTitles } from '@/lib/course/skills';
import type { SkillStanding } from '@/lib/data/skill-progress';
import { labOfSkill } from '@/lib/mastery/lab-skills';
import { routes } from '@/lib/routes';
import { startPracticeRound } from '../actions';
import { StartForm } from '../start-form';

/** One skill: how it stands, and the ways on: questions, the lab, the lesson. */
export function SkillRow({
  standing,
  day,
}: {
  standing: SkillStanding;
  /** A date as the student's calendar has it. */
  day: (at: Date) => string;
}) {
  const { skill, state, inARow } = standing;
  const title = skillTitles[skill];
  const lesson = lessonOfSkill(skill).slug;
  const lab = labOfSkill[skill];
  return (
    <li
      aria-labelledby={`skill-${skill}`}
      className="grid gap-x-8 gap-y-3 rounded-b-lg border border-t-2 border-line border-t-strong bg-panel p-4 md:grid-cols-[minmax(0,1fr)_auto]"
    >
      <div>
        <div className="flex flex-wrap items-center gap-x-4 gap-y-1">
          <h2 id={`skill-${skill}`} className="text-lg font-semibold">
            {title}
          </h2>
          <SkillStateMark state={state} />
          {state === 'practising' ? <RowOfThree inARow={inARow} /> : null}
        </div>
        <p className="text-soft">{standingWords(standing, day)}</p>
      </div>
      <div className="grid grid-cols-2 items-center gap-3 self-center md:grid-cols-[auto_12.5rem_auto] md:gap-4">
        <TextLink
          href={routes.lessons.one(lesson)}
          aria-label={`Lesson: ${title}`}
          className="order-last inline-flex min-h-(--target-small) items-center md:order-none"
        >
          Lesson
        </TextLink>
        <div className="[&_button]:w-full [&_form]:block">
          <StartForm
            action={startPracticeRound}
            values={{ lab }}
            label={`Lab: ${labText[lab].name}`}
            variant="quiet"
          />
        </div>
        <LinkButton
          href={routes.lessons.practise(lesson, { skill })}
          aria-label={`Questions: ${title}`}
          variant={state === 'review-due' ? 'primary' : 'quiet'}
        >
          Questions
        </LinkButton>
      </div>
    </li>
  );
}
