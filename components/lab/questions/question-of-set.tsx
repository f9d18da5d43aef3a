'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/components/ui/button';
import { answerState } from '@/components/questions/answer-state';
import { lessonName } from '@/lib/wording/lesson-name';
import { emptyAnswer } from '@/components/questions/answers';
import { QuestionFields } from '@/components/questions/question-fields';
import type { ItemAnswer } from '@/lib/items/item-answer';
import type { QuestionSet } from '@/lib/items/question-set/question-set';

const promptId = 'question-prompt';

/** One question of a set; nothing is said of the answer before the whole set is handed in. */
export function QuestionOfSet({
  question,
  number,
  count,
  answer,
  onAnswer,
  onGo,
}: {
  question: QuestionSet['questions'][number];
  /** From 1. */
  number: number;
  count: number;
  answer: ItemAnswer | null;
  onAnswer: (answer: ItemAnswer) => void;
  onGo: (to: number | 'review') => void;
}) {
  const { face, lesson } = question;
  const noNumber = answerState(face, answer) === 'not-a-number';
  // Told on going on, not while typing; and told still when the question is come back to.
  const [told, setTold] = useState(noNumber);
  const name = `answer-${String(number)}`;
  useEffect(() => {
    document.getElementById(promptId)?.focus();
  }, []);
  return (
    <form
      className="mt-2 space-y-4"
      onSubmit={(event) => {
        event.preventDefault();
        // Once: whoever goes on all the same may, and finds it again before handing in.
        if (noNumber && !told) {
          setTold(true);
          document.getElementById(name)?.focus();
          return;
        }
        onGo(number === count ? 'review' : number);
      }}
    >
      <p className="text-sm text-soft">
        Question {number} of {count} · {lessonName(lesson)}
      </p>
      <QuestionFields
        face={face}
        answer={answer ?? emptyAnswer(face)}
        onAnswer={(given) => {
          if (answerState(face, given) !== 'not-a-number') setTold(false);
          onAnswer(given);
        }}
        name={name}
        numberNeeded={told && noNumber}
        promptId={promptId}
      />
      {face.kind === 'order' && answer === null ? (
        <p className="flex flex-wrap items-center gap-3 text-sm">
          <span className="text-soft">Nothing is moved yet, so this counts as not answered.</span>
          <Button onClick={() => onAnswer(emptyAnswer(face))}>It is right as it stands</Button>
        </p>
      ) : null}
      <div className="flex flex-wrap gap-3">
        {number > 1 ? <Button onClick={() => onGo(number - 2)}>Back</Button> : null}
        <Button
          type="submit"
          variant="primary"
          onClick={(event) => {
            // The second half of a double click would leave out the question that came up.
            if (event.detail > 1) event.preventDefault();
          }}
        >
          {number === count ? 'Read once more' : 'Next question'}
        </Button>
      </div>
    </form>
  );
}
