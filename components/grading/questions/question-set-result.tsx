import { FeedbackView } from '@/components/questions/feedback-view';
import { ItemPicture } from '@/components/questions/item-picture';
import { Meter } from '@/components/ui/meter';
import { Panel } from '@/components/ui/panel';
import { answerInWords } from '@/lib/items/answer-in-words';
import type {
  LessonQuestionsResult,
  QuestionOutcome,
} from '@/lib/grading/questions/question-result';
import type { QuestionSet } from '@/lib/items/question-set/question-set';
import { lessonName } from '@/lib/wording/lesson-name';
import { markText } from '../mark-text';
import { MarksTable } from '../marks-table';
import { questionsVerdict, unmarkedWords } from './question-set-words';

/** What came of a set of questions, one by one: the same to student and teacher. */
export function QuestionSetResult({
  set,
  result,
  markShownAbove = false,
}: {
  set: QuestionSet;
  result: LessonQuestionsResult;
  markShownAbove?: boolean;
}) {
  const worth = 100 / result.items.length;
  return (
    <div className="space-y-6">
      <div className="grid gap-6 lg:grid-cols-[minmax(0,1fr)_minmax(0,26rem)]">
        <div className="max-w-measure space-y-4">
          <p className="text-xl leading-snug font-semibold">{questionsVerdict(result)}</p>
          {markShownAbove ? null : (
            <Meter
              value={result.total}
              label="Mark"
              valueText={`${markText(result.total)} of 100`}
            />
          )}
        </div>
        <MarksTable
          rows={result.items.map((item, index) => ({
            id: String(index),
            name: `Question ${String(index + 1)}${lessonOf(set, index)}`,
            earned: (item.mark * worth) / 100,
            possible: worth,
          }))}
        />
      </div>
      {result.items.map((item, index) => (
        <Panel key={index} title={`Question ${String(index + 1)}${lessonOf(set, index)}`}>
          <AnsweredQuestion face={set.questions[index]?.face} outcome={item} />
        </Panel>
      ))}
    </div>
  );
}

function lessonOf(set: QuestionSet, index: number): string {
  const lesson = set.questions[index]?.lesson;
  return lesson === undefined || set.lessons.length === 1 ? '' : ` · ${lessonName(lesson)}`;
}

/** The question as it was asked, what was answered, and what is to be said of it. */
function AnsweredQuestion({
  face,
  outcome,
}: {
  face: QuestionSet['questions'][number]['face'] | undefined;
  outcome: QuestionOutcome;
}) {
  const { answer, feedback, notMarked } = outcome;
  return (
    <div className="space-y-3">
      {face === undefined ? null : (
        <>
          <p className="max-w-measure font-semibold">{face.prompt}</p>
          {face.drawing === undefined ? null : <ItemPicture drawing={face.drawing} />}
          {answer === null ? null : (
            <p className="max-w-measure">
              <span className="text-soft">Your answer: </span>
              {answerInWords(face, answer)}
            </p>
          )}
        </>
      )}
      <FeedbackView
        feedback={notMarked === null ? feedback : { ...feedback, said: [unmarkedWords[notMarked]] }}
      />
    </div>
  );
}
