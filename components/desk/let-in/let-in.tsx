'use client';

import { useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { Panel } from '@/components/ui/panel';
import { Select } from '@/components/ui/select';
import { StatusLine } from '@/components/ui/status-line';
import type { Result } from '@/lib/data/result';
import type { ScreenCard } from '@/lib/data/student-unlock';
import { codeText } from '../class-text';

/** New words for one student, shown large enough to be read across a table, once. */
export function LetIn({
  students,
  letIn,
}: {
  students: readonly { studentId: string; displayName: string; cardNumber: number }[];
  letIn: (studentId: string) => Promise<Result<ScreenCard>>;
}) {
  const [studentId, setStudentId] = useState('');
  const [card, setCard] = useState<ScreenCard | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [busy, start] = useTransition();
  const chosen = students.find((student) => student.studentId === studentId);

  function make(): void {
    if (chosen === undefined) {
      setProblem('Choose the student first.');
      return;
    }
    start(async () => {
      try {
        const answer = await letIn(chosen.studentId);
        setProblem(answer.ok ? null : answer.problem.message);
        setCard(answer.ok ? answer.value : null);
      } catch {
        setProblem('The server did not answer. Try again: only the words made last work.');
      }
    });
  }

  if (card !== null) {
    return (
      <Panel title={`For ${card.displayName}`}>
        <dl className="grid gap-x-8 gap-y-3 sm:grid-cols-[auto_auto_1fr]">
          <CardPart name="Class code" text={codeText(card.classCode)} />
          <CardPart name="Card number" text={String(card.cardNumber)} />
          <CardPart name="Words" text={card.words} />
        </dl>
        <p className="mt-4 max-w-measure text-soft">
          Let {card.displayName} type or copy them now: they are shown this once and kept nowhere.
          The old card works no longer.
        </p>
        <div className="mt-3">
          <Button
            variant="primary"
            onClick={() => {
              setCard(null);
              setStudentId('');
            }}
          >
            Done: take it off the screen
          </Button>
        </div>
      </Panel>
    );
  }
  return (
    <form
      noValidate
      className="max-w-md space-y-4"
      onSubmit={(event) => {
        event.preventDefault();
        if (!busy) make();
      }}
    >
      {problem === null ? null : <Notice tone="danger" live="alert" title={problem} />}
      <Field label="Student" hint="One at a time; the old words stop working.">
        {(control) => (
          <Select
            {...control}
            value={studentId}
            onChange={(event) => {
              setStudentId(event.target.value);
              setProblem(null);
            }}
          >
            <option value="">choose</option>
            {students.map((student) => (
              <option key={student.studentId} value={student.studentId}>
                {student.displayName}, card {student.cardNumber}
              </option>
            ))}
          </Select>
        )}
      </Field>
      <div className="flex flex-wrap items-center gap-3">
        <Button type="submit" variant="primary" busy={busy}>
          Make new words
        </Button>
        <StatusLine>{busy ? 'Making…' : ''}</StatusLine>
      </div>
    </form>
  );
}

function CardPart({ name, text }: { name: string; text: string }) {
  return (
    <div>
      <dt className="text-sm text-soft">{name}</dt>
      <dd className="font-figures text-2xl font-semibold">{text}</dd>
    </div>
  );
}
