import { CircleCheck, CircleSlash } from 'lucide-react';
import { FeedbackView } from '@/components/questions/feedback-view';
import { ItemPicture } from '@/components/questions/item-picture';
import { TextLink } from '@/components/ui/text-link';
import type { RecordedPiece } from '@/lib/data/skill-progress';
import { answerInWords } from '@/lib/items/answer-in-words';
import { routes } from '@/lib/routes';
import { markText } from '../mark-text';
import { zonedTimeText } from '../zoned-time';
import { changeWords, outcomeWords, pieceWords } from './piece-words';

/** Every piece of evidence, oldest first: when, what, how it came out, and what it changed. */
export function EvidenceList({
  pieces,
  timeZone,
}: {
  pieces: readonly RecordedPiece[];
  timeZone: string;
}) {
  return (
    <ol className="divide-y divide-line rounded-b-lg border border-t-2 border-line border-t-strong bg-panel">
      {pieces.map((piece, index) => (
        <li key={index} className="p-3 sm:px-4">
          <Piece piece={piece} timeZone={timeZone} />
        </li>
      ))}
    </ol>
  );
}

function Piece({ piece, timeZone }: { piece: RecordedPiece; timeZone: string }) {
  const { at, mode, source, passed, gateFailed, withheld } = piece;
  const byGate = source.kind === 'lab' && source.from === 'gates';
  const notes = [
    mode,
    outcomeWords(piece, markText),
    gateFailed && !byGate ? 'a safety gate failed' : '',
    changeWords(piece.made),
    withheld ? 'the student is not shown this yet' : '',
  ].filter((note) => note !== '');
  const what = pieceWords(piece);
  return (
    <>
      <div className="grid gap-x-4 sm:grid-cols-[11rem_minmax(0,1fr)_auto]">
        <p className="text-sm text-soft">{zonedTimeText(at.toISOString(), timeZone)}</p>
        <div className="min-w-0">
          <p className="font-semibold">
            {source.kind === 'question' ? (
              what
            ) : (
              <TextLink href={routes.teacher.attempt(source.attemptId)}>{what}</TextLink>
            )}
          </p>
          <p className="text-sm text-soft">{notes.join(' · ')}</p>
        </div>
        <Outcome passed={passed} />
      </div>
      {piece.question === null ? null : <Question question={piece.question} />}
    </>
  );
}

function Outcome({ passed }: { passed: boolean }) {
  const Icon = passed ? CircleCheck : CircleSlash;
  return (
    <p
      className={`inline-flex items-center gap-1 self-start whitespace-nowrap ${passed ? 'text-good' : 'text-caution'}`}
    >
      <Icon aria-hidden="true" className="size-4 shrink-0" />
      {passed ? 'passed' : 'not passed'}
    </p>
  );
}

/** As the student was asked it and told of it: "you" is the student. */
function Question({ question }: { question: NonNullable<RecordedPiece['question']> }) {
  const { face, answer, feedback } = question;
  return (
    <details className="mt-1 sm:ms-[12rem]">
      <summary className="flex min-h-(--target-small) items-center text-sm text-soft underline decoration-dotted underline-offset-4">
        The question, the answer and what was said of it
      </summary>
      <div className="space-y-3 border-s-2 border-line ps-4 pt-1">
        <p className="max-w-measure font-semibold">{face.prompt}</p>
        {face.drawing === undefined ? null : <ItemPicture drawing={face.drawing} />}
        <p className="max-w-measure">
          <span className="text-soft">Answered:</span> {answerInWords(face, answer)}
        </p>
        <FeedbackView feedback={feedback} />
      </div>
    </details>
  );
}
