import { TableFrame } from '@/components/ui/table-frame';
import type { QuestionStatistics } from '@/lib/data/class-statistics-questions';
import { anchorOf } from './questions-table';
import { openOnPaper } from './open-on-paper';
import { ShareBar } from './share-bar';
import { answeredSentence, countText, noteWords } from './statistics-words';

/** What was answered instead, question by question: bars, and the counts beside them. */
export function QuestionAnswers({ questions }: { questions: readonly QuestionStatistics[] }) {
  return (
    <div className="divide-y divide-line border-y border-line">
      {questions.map((question) => (
        <details
          key={question.family}
          id={anchorOf(question)}
          className={`scroll-mt-20 py-2 ${openOnPaper}`}
        >
          <summary className="min-h-(--target-small)">
            <span className="font-semibold">{question.title}.</span>{' '}
            <span className="text-soft">{answeredSentence(question)}</span>
          </summary>
          <div className="mt-2 space-y-4">
            {question.note === null ? null : (
              <p className="max-w-measure text-sm">{noteWords[question.note].long}</p>
            )}
            {question.kinds.map((kind) => (
              <Kind key={kind.template} kind={kind} />
            ))}
          </div>
        </details>
      ))}
    </div>
  );
}

function Kind({ kind }: { kind: QuestionStatistics['kinds'][number] }) {
  const { example, people, choices, severalAtOnce } = kind;
  return (
    <TableFrame
      tall
      className="keep-together max-w-3xl"
      caption={`For example: “${example}” ${countText(people, 'student')} answered such a question${severalAtOnce ? '; several answers could be ticked' : ''}.`}
    >
      <thead>
        <tr>
          <th scope="col">Answer</th>
          <th scope="col">Is it right?</th>
          <th scope="col" className="w-1/4">
            Bar
          </th>
          <th scope="col" className="number">
            Students
          </th>
        </tr>
      </thead>
      <tbody>
        {choices.map((choice) => (
          <tr key={`${String(choice.right)} ${choice.text}`}>
            <th scope="row" className="font-normal!">
              {choice.text}
            </th>
            <td>{choice.right ? 'right' : 'not right'}</td>
            <td className="align-middle!">
              <ShareBar share={choice.people / people} tone={choice.right ? 'good' : 'wrong'} />
            </td>
            <td className="number">{choice.people}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
