'use client';

import { QuestionSetLab } from '@/components/lab/questions/question-set-lab';
import type { QuestionSetProps } from '@/components/lab/questions/question-set-props';
import { AttemptLab, type AttemptProps } from './attempt-lab';

/** An attempt at the questions of lessons. */
export function QuestionsAttempt({
  save,
  send,
  resultAddress,
  ...lab
}: AttemptProps<QuestionSetProps>) {
  const { attemptKey, nextSequence } = lab;
  return (
    <AttemptLab
      title="Questions on lessons"
      {...{ attemptKey, nextSequence, save, send, resultAddress }}
    >
      {({ onSave, onSubmit }) => <QuestionSetLab {...lab} {...{ onSave, onSubmit }} />}
    </AttemptLab>
  );
}
