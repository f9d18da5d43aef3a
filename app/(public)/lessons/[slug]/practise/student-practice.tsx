import { PracticeQuestion } from '@/components/questions/practice-question';
import { skillStanding } from '@/components/questions/skill-standing';
import { EmptyState } from '@/components/ui/empty-state';
import type { Viewer } from '@/lib/auth/policy';
import { course, type LessonSlug } from '@/lib/course/lessons';
import { systemClock } from '@/lib/data/clock';
import { nextQuestion } from '@/lib/data/questions';
import { routes } from '@/lib/routes';
import { answerOwnQuestion } from './actions';
import { WhenMastered } from './when-mastered';

/** The student's open question of the lesson, or the next one. */
export async function StudentPractice({ viewer, lesson }: { viewer: Viewer; lesson: LessonSlug }) {
  const asked = await nextQuestion(viewer, lesson);
  if (!asked.ok) {
    return (
      <EmptyState title="There are no questions here yet">
        <p>{asked.problem.message} Go back to the lesson; its own questions are there.</p>
      </EmptyState>
    );
  }
  const { id, face, skill, standing } = asked.value;
  const here = course.findIndex(({ slug }) => slug === lesson);
  return (
    <PracticeQuestion
      question={{ key: id, face }}
      standing={skillStanding(skill, standing, systemClock.now())}
      answerAction={answerOwnQuestion.bind(null, id)}
      nextAddress={routes.lessons.practise(lesson)}
      whenMastered={<WhenMastered skill={skill} nextLesson={course[here + 1]?.slug ?? null} />}
    />
  );
}
