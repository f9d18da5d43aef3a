import Link from 'next/link';
import { lessonName } from '@/lib/wording/lesson-name';
import { TableFrame } from '@/components/ui/table-frame';
import type { QuestionStatistics } from '@/lib/data/class-statistics-questions';
import { footingOf } from '@/lib/measurement/small-class';
import { routes } from '@/lib/routes';
import { ShareBar } from './share-bar';
import {
  answeredSentence,
  coefficientText,
  noteWords,
  percentText,
  tooFewText,
  withTheRest,
} from './statistics-words';

/** Every family of questions somebody answered: how hard it was here, and how it goes with the rest. */
export function QuestionsTable({ questions }: { questions: readonly QuestionStatistics[] }) {
  return (
    <TableFrame caption="Questions, by what they are about" captionHidden stickyFirstColumn>
      <thead>
        <tr>
          <th scope="col" className="min-w-40">
            What they are about
          </th>
          <th scope="col" className="min-w-56">
            Right
          </th>
          <th scope="col" className="min-w-44">
            Goes with the rest
          </th>
          <th scope="col" className="min-w-36">
            To note
          </th>
        </tr>
      </thead>
      <tbody>
        {questions.map((question) => (
          <tr key={question.family}>
            <th scope="row">
              {question.kinds.length === 0 ? (
                question.title
              ) : (
                <a
                  className="link inline-flex min-h-(--target-small) items-center"
                  href={`#${anchorOf(question)}`}
                >
                  {question.title}
                </a>
              )}
              <Link
                className="link flex min-h-(--target-small) w-fit items-center text-xs font-normal"
                href={routes.lessons.one(question.lesson)}
              >
                {lessonName(question.lesson)}
              </Link>
            </th>
            <td>
              <Right question={question} />
            </td>
            <td>
              <WithTheRest question={question} />
            </td>
            <td>{question.note === null ? '' : noteWords[question.note].short}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

export const anchorOf = ({ family }: Pick<QuestionStatistics, 'family'>): string =>
  `answers-${family}`;

function Right({ question }: { question: QuestionStatistics }) {
  const countsOnly = footingOf(question.people) === 'counts-only';
  return (
    <>
      <span className="flex items-center gap-2">
        <ShareBar share={countsOnly ? question.right / question.people : question.difficulty} />
        {countsOnly ? null : (
          <span className="number min-w-11 shrink-0">{percentText(question.difficulty)}</span>
        )}
      </span>
      <span className="text-xs text-soft">{answeredSentence(question)}</span>
    </>
  );
}

function WithTheRest({ question }: { question: QuestionStatistics }) {
  const { itemRest, itemRestPeople, upperLower } = question;
  const footing = footingOf(itemRestPeople);
  if (footing === 'counts-only')
    return <span className="text-soft">fewer than ten: counts only</span>;
  if (itemRest === null) return <span className="text-soft">cannot be told: all did alike</span>;
  return (
    <span className={footing === 'enough' ? '' : 'text-soft italic'}>
      {withTheRest(itemRest)} ({coefficientText(itemRest)})
      {upperLower === null ? null : (
        <span className="block text-xs">
          best 27 % less weakest 27 %: {percentText(upperLower)}
        </span>
      )}
      {footing === 'enough' ? null : <span className="block text-xs">{tooFewText}</span>}
    </span>
  );
}
