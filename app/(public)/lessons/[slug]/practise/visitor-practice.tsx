import { PracticeQuestion } from '@/components/questions/practice-question';
import { EmptyState } from '@/components/ui/empty-state';
import { Notice } from '@/components/ui/notice';
import { visitorMayAskQuestion } from '@/lib/auth/session';
import { visitorQuestion, type QuestionAddress } from '@/lib/data/visitor-question';
import { routes } from '@/lib/routes';
import { answerVisitorQuestion } from './actions';

const addressOf = ({ lesson, round, number, family, template }: QuestionAddress): string =>
  routes.lessons.practise(lesson, {
    round,
    family,
    template,
    question: number === 1 ? null : number,
  });

/** Questions for a visitor or a teacher: the address holds the round, nothing else does. */
export async function VisitorPractice({ address }: { address: QuestionAddress }) {
  if (!(await visitorMayAskQuestion())) {
    return (
      <Notice tone="caution" title="Very many questions have been asked from your network">
        Wait ten minutes, then load the page again.
      </Notice>
    );
  }
  const asked = visitorQuestion(address);
  if (!asked.ok) {
    return (
      <EmptyState title="There are no questions here yet">
        <p>{asked.problem.message} Go back to the lesson; its own questions are there.</p>
      </EmptyState>
    );
  }
  const key = addressOf(address);
  return (
    <>
      <p className="mb-3 text-sm text-soft">
        Question {address.number}
        {address.family === null ? '' : ` · ${asked.value.family}, ${asked.value.template}`}
      </p>
      <PracticeQuestion
        question={{ key, face: asked.value.face }}
        standing={null}
        answerAction={answerVisitorQuestion.bind(null, { ...address, key })}
        nextAddress={addressOf({ ...address, number: address.number + 1 })}
        whenMastered={{}}
      />
    </>
  );
}
