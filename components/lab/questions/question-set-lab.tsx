'use client';

import dynamic from 'next/dynamic';
import { useEffect, useState, useSyncExternalStore } from 'react';
import { PageHeader } from '@/components/ui/page-header';
import { StatusLine } from '@/components/ui/status-line';
import { questionSubmissionSchema } from '@/lib/grading/questions/question-submission';
import type { ItemAnswer } from '@/lib/items/item-answer';
import { LabOutcome } from '../shell/lab-outcome';
import { saveInWords } from '../shell/save-words';
import { SendingBox } from '../shell/sending-box';
import { SubmissionSender } from '../shell/submission-sender';
import { draftLeftBehind, useDraftSaving } from '../shell/use-draft-saving';
import { useInBrowser } from '../shell/use-in-browser';
import { QuestionOfSet } from './question-of-set';
import type { QuestionSetProps } from './question-set-props';
import { QuestionSetReview } from './question-set-review';
import { QuestionStrip } from './question-strip';

const QuestionSetResult = dynamic(() =>
  import('@/components/grading/questions/question-set-result').then(
    ({ QuestionSetResult: view }) => view,
  ),
);

const title = 'Questions on lessons';

/** A set of questions: one at a time, in any order, read once more, handed in. */
export function QuestionSetLab(props: QuestionSetProps) {
  // This tab may keep a newer draft than the server's page was made with: the set waits to see.
  if (useInBrowser()) return <OpenSet {...props} />;
  return (
    <div className="grid min-h-[26rem] place-items-center p-6">
      <p role="status">The questions are being laid out …</p>
    </div>
  );
}

const readDraft = (json: unknown) => questionSubmissionSchema.safeParse(json).data ?? null;

function OpenSet(props: QuestionSetProps) {
  const { set, mode, attemptKey, nextSequence } = props;
  const { questions } = set;
  const saving = useDraftSaving({ attemptKey, nextSequence, save: props.onSave, readDraft });
  const [answers, setAnswers] = useState<readonly (ItemAnswer | null)[]>(() => {
    const { answers: kept } = draftLeftBehind(attemptKey, nextSequence, readDraft) ?? props.draft;
    return questions.map((_, index) => kept[index] ?? null);
  });
  // Goes on where it was left: at the first question without an answer.
  const [at, setAt] = useState<number | 'review'>(() => Math.max(0, answers.indexOf(null)));
  const [sender] = useState(() => new SubmissionSender(attemptKey, props.onSubmit));
  const sent = useSyncExternalStore(sender.subscribe, sender.state, sender.state);
  const { stop } = saving;
  const done = sent.state === 'done';
  useEffect(() => {
    if (done) stop();
    // `stop` is made anew on each render and does the same each time.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [done]);

  if (sent.state === 'done') {
    const { result, late } = sent;
    return (
      <LabOutcome
        title={`${title}: how it came out`}
        result={result === null ? null : <QuestionSetResult {...{ set, result }} />}
        late={late}
        withheldText={props.withheldText}
      >
        {props.afterwards}
      </LabOutcome>
    );
  }

  const answer = (index: number, given: ItemAnswer) => {
    const next = answers.map((one, place) => (place === index ? given : one));
    setAnswers(next);
    saving.push({ answers: [...next] });
  };
  const question = at === 'review' ? undefined : questions[at];
  return (
    <div className="mx-auto w-full max-w-[48rem] px-4 py-6 sm:px-6">
      <PageHeader title={title} lead={props.about} />
      <QuestionStrip {...{ questions, answers, at, onGo: setAt }} />
      <StatusLine>{saveInWords(saving.saveState)}</StatusLine>
      {at === 'review' || question === undefined ? (
        <QuestionSetReview {...{ questions, answers, mode, onGo: setAt }}>
          <SendingBox
            state={sent}
            mode={mode}
            practiceLabel="Show how it came out"
            onSend={() => void sender.send({ answers: [...answers] })}
          />
        </QuestionSetReview>
      ) : (
        <QuestionOfSet
          key={at}
          {...{ question, number: at + 1, count: questions.length, answer: answers[at] ?? null }}
          onAnswer={(given) => answer(at, given)}
          onGo={setAt}
        />
      )}
    </div>
  );
}
