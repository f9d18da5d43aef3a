import { Check } from 'lucide-react';
import { answerState } from '@/components/questions/answer-state';
import { classNames } from '@/components/ui/class-names';
import type { ItemAnswer } from '@/lib/items/item-answer';
import type { QuestionSet } from '@/lib/items/question-set/question-set';

/** All questions of the set, which of them have an answer, and the way to each. */
export function QuestionStrip({
  questions,
  answers,
  at,
  onGo,
}: {
  questions: QuestionSet['questions'];
  answers: readonly (ItemAnswer | null)[];
  at: number | 'review';
  onGo: (to: number | 'review') => void;
}) {
  return (
    <nav aria-label="The questions">
      <ol className="flex flex-wrap gap-1.5">
        {questions.map(({ face }, index) => {
          const answered = answerState(face, answers[index] ?? null) === 'answered';
          return (
            <li key={index}>
              <button
                type="button"
                aria-current={at === index ? 'step' : undefined}
                aria-label={`Question ${String(index + 1)}, ${answered ? 'answered' : 'not answered yet'}`}
                onClick={() => onGo(index)}
                className={classNames(look, at === index && current)}
              >
                <span className="font-figures">{index + 1}</span>
                {answered ? (
                  <Check aria-hidden="true" className="size-4" />
                ) : (
                  <span aria-hidden="true" className="size-2 rounded-full border border-strong" />
                )}
              </button>
            </li>
          );
        })}
        <li>
          <button
            type="button"
            aria-current={at === 'review' ? 'step' : undefined}
            onClick={() => onGo('review')}
            className={classNames(look, 'px-3', at === 'review' && current)}
          >
            Read once more
          </button>
        </li>
      </ol>
    </nav>
  );
}

const look =
  'flex min-h-11 min-w-11 items-center justify-center gap-1 rounded-md border border-strong bg-panel px-2 font-semibold hover:border-ink hover:bg-sunken';
const current = 'border-2 border-ink bg-accent-soft underline underline-offset-4';
