import type { ReactNode } from 'react';
import { PracticeQuestion } from '@/components/questions/practice-question';
import { skillStanding } from '@/components/questions/skill-standing';
import { EmptyState } from '@/components/ui/empty-state';
import type { Viewer } from '@/lib/auth/policy';
import { course, type LessonSlug } from '@/lib/course/lessons';
import type { Skill } from '@/lib/course/skills';
import { systemClock } from '@/lib/data/clock';
import { nextQuestion } from '@/lib/data/questions';
import { familiesOf } from '@/lib/items/item-bank';
import { routes } from '@/lib/routes';
import { answerOwnQuestion } from './actions';
import { WhenMastered } from './when-mastered';

/** The student's open question of the lesson, or the next one. */
export async function StudentPractice({
  viewer,
  lesson,
  skill: only,
}: {
  viewer: Viewer;
  lesson: LessonSlug;
  /** For a review: that skill alone. */
  skill: Skill | null;
}) {
  const asked = await nextQuestion(viewer, { lesson, skill: only });
  if (!asked.ok) {
    return (
      <EmptyState title="There are no questions here yet">
        <p>{asked.problem.message} Go back to the lesson; its own questions are there.</p>
      </EmptyState>
    );
  }
  const { id, face, skill, standing, timeZone } = asked.value;
  return (
    <PracticeQuestion
      question={{ key: id, face }}
      standing={skillStanding(skill, standing, { timeZone, now: systemClock.now() })}
      answerAction={answerOwnQuestion.bind(null, id)}
      nextAddress={routes.lessons.practise(lesson, { skill: only })}
      whenMastered={whenMastered(lesson)}
    />
  );
}

/** By skill: without script the page has drawn the next question when the outcome of the last is shown. */
function whenMastered(lesson: LessonSlug): Partial<Record<Skill, ReactNode>> {
  const here = course.findIndex(({ slug }) => slug === lesson);
  const nextLesson = course[here + 1]?.slug ?? null;
  const asked = new Set(familiesOf(lesson).map(({ skill }) => skill));
  return Object.fromEntries(
    [...asked].map((skill) => [skill, <WhenMastered key={skill} {...{ skill, nextLesson }} />]),
  );
}
