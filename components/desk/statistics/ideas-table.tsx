import Link from 'next/link';
import { lessonName } from '@/lib/wording/lesson-name';
import { TableFrame } from '@/components/ui/table-frame';
import type { CommonIdea } from '@/lib/data/class-statistics-ideas';
import { routes } from '@/lib/routes';
import { ShareBar } from './share-bar';
import { countText } from './statistics-words';

type Student = { id: string; displayName: string };

/** Which beginners' ideas this class's work gave away, and the lesson that answers each. */
export function IdeasTable({
  ideas,
  students,
}: {
  ideas: readonly CommonIdea[];
  students: readonly Student[];
}) {
  const names = new Map(students.map((student) => [student.id, student]));
  return (
    <TableFrame caption="Common misunderstandings in this class" captionHidden tall>
      <thead>
        <tr>
          <th scope="col" className="min-w-48">
            What is so
          </th>
          <th scope="col" className="min-w-36">
            Students who took it otherwise
          </th>
          <th scope="col" className="min-w-32">
            The lesson that answers it
          </th>
        </tr>
      </thead>
      <tbody>
        {ideas.map((idea) => (
          <tr key={idea.id}>
            <th scope="row" className="font-normal!">
              {idea.sentence}
            </th>
            <td>
              <ShareBar share={idea.studentIds.length / students.length} tone="wrong" />
              <details className="mt-1">
                <summary>
                  {idea.studentIds.length} of {students.length}
                </summary>
                <p className="mt-1 text-xs text-soft">{whereText(idea)}</p>
                <ul className="mt-1 flex flex-wrap gap-x-3">
                  {idea.studentIds.flatMap((id) => {
                    const student = names.get(id);
                    return student === undefined ? (
                      []
                    ) : (
                      <li key={id}>
                        <Link
                          className="link inline-flex min-h-(--target-small) items-center"
                          href={routes.teacher.student(id)}
                        >
                          {student.displayName}
                        </Link>
                      </li>
                    );
                  })}
                </ul>
              </details>
            </td>
            <td>
              <Link
                className="link inline-flex min-h-(--target-small) items-center"
                href={routes.lessons.one(idea.lesson)}
              >
                {lessonName(idea.lesson)}
              </Link>
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

function whereText({ inQuestions, inLabs }: CommonIdea): string {
  const parts = [
    ...(inQuestions === 0
      ? []
      : [countText(inQuestions, 'answer to a question', 'answers to questions')]),
    ...(inLabs === 0
      ? []
      : [countText(inLabs, 'first attempt at a lab', 'first attempts at labs')]),
  ];
  return `In ${parts.join(' and ')}.`;
}
