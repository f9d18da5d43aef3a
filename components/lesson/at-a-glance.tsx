import type { ReactNode } from 'react';
import type { LessonView } from '@/lib/content/lesson-view';

/** What the lesson is for, how long it takes and what to have at hand. */
export function AtAGlance({ lesson }: { lesson: LessonView['lesson'] }) {
  const { learn, practise } = lesson.minutes;
  return (
    <section className="my-8" aria-labelledby="at-a-glance">
      <h2 id="at-a-glance" className="text-xl font-semibold">
        In this lesson
      </h2>
      <ul className="mt-2 list-disc space-y-0.5 ps-6">
        {lesson.objectives.map((objective) => (
          <li key={objective.id}>{objective.text}</li>
        ))}
      </ul>
      <dl className="mt-3 grid gap-x-6 gap-y-1 text-sm sm:grid-cols-[auto_1fr]">
        <Line name="Time">
          about {learn + practise} minutes: {learn} to learn, {practise} to practise
        </Line>
        <Line name="For">{lesson.level}</Line>
        <Line name="You need">{lesson.equipment.join(' · ')}</Line>
      </dl>
    </section>
  );
}

function Line({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div className="contents">
      <dt className="font-semibold text-soft">{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
