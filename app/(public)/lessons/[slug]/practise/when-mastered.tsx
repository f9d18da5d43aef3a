import { labText } from '@/components/grading/template-text';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import type { LessonSlug } from '@/lib/course/lessons';
import { skillTitles, type Skill } from '@/lib/course/skills';
import { reviewDays } from '@/lib/mastery/mastery';
import { labOfSkill } from '@/lib/mastery/lab-skills';
import { routes } from '@/lib/routes';

/** Said once three in a row are right, and what is worth doing next. */
export function WhenMastered({
  skill,
  nextLesson,
}: {
  skill: Skill;
  nextLesson: LessonSlug | null;
}) {
  const lab = labOfSkill[skill];
  return (
    <Notice tone="good" title={`Mastered: ${skillTitles[skill]}`}>
      <p>
        Three in a row, each of another kind. So that it stays, it comes back on your page after{' '}
        {reviewDays.slice(0, -1).join(', ')} and {reviewDays.at(-1)} days; one right answer then is
        enough. Now do it with your hands.
      </p>
      <p className="flex flex-wrap gap-2">
        <LinkButton href={routes.labs.one(lab)}>Lab: {labText[lab].name}</LinkButton>
        {nextLesson === null ? null : (
          <LinkButton href={routes.lessons.one(nextLesson)}>Next lesson</LinkButton>
        )}
      </p>
    </Notice>
  );
}
