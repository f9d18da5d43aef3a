'use client';

import { useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { StatusLine } from '@/components/ui/status-line';
import type { Result } from '@/lib/data/result';
import { CopyLink } from './copy-link';

type Role = 'teacher' | 'observer';

/** Makes an invitation link: one use, seven days, shown once. */
export function InviteTeacher({
  into,
  invite,
}: {
  /** The class it is to, or those that the viewer may let others into and chooses among. */
  into: string | readonly { id: string; name: string }[];
  invite: (input: {
    classId: string | null;
    role: Role;
  }) => Promise<Result<{ path: string; expiresAt: string }>>;
}) {
  const [classId, setClassId] = useState(typeof into === 'string' ? into : '');
  const [role, setRole] = useState<Role>('teacher');
  const [made, setMade] = useState<{ path: string; expiresAt: string } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [busy, start] = useTransition();

  function make(): void {
    start(async () => {
      try {
        const answer = await invite({ classId: classId === '' ? null : classId, role });
        setProblem(answer.ok ? null : answer.problem.message);
        setMade(answer.ok ? answer.value : null);
      } catch {
        setProblem('The server did not answer. Try again.');
      }
    });
  }

  return (
    <div className="max-w-xl space-y-4">
      {typeof into === 'string' ? null : (
        <Field
          label="To which class"
          hint="Without a class they get an account and a desk of their own."
        >
          {(control) => (
            <Select
              {...control}
              value={classId}
              onChange={(event) => setClassId(event.target.value)}
            >
              <option value="">none of mine</option>
              {into.map((entry) => (
                <option key={entry.id} value={entry.id}>
                  {entry.name}
                </option>
              ))}
            </Select>
          )}
        </Field>
      )}
      {classId === '' ? null : (
        <RadioGroup
          legend="As"
          name="role"
          value={role}
          options={[
            { value: 'teacher', label: 'teacher', hint: 'Roster, cards, assignments and marks.' },
            { value: 'observer', label: 'observer', hint: 'Reads, changes nothing.' },
          ]}
          onValueChange={setRole}
        />
      )}
      <div className="flex flex-wrap items-center gap-3">
        <Button variant="primary" busy={busy} onClick={make}>
          Make the link
        </Button>
        <StatusLine>{busy ? 'Making…' : ''}</StatusLine>
      </div>
      {problem === null ? null : <Notice tone="danger" live="alert" title={problem} />}
      {made === null ? null : (
        <Notice tone="caution" live="status" title="Shown this once: copy it now">
          <p>
            Whoever opens it first gets the account. It works once, until{' '}
            {new Date(made.expiresAt).toLocaleDateString('en-GB', {
              day: 'numeric',
              month: 'long',
              year: 'numeric',
            })}
            . Give it to your colleague in person or by a message that only they read.
          </p>
          <CopyLink label="Invitation link" path={made.path} />
        </Notice>
      )}
    </div>
  );
}
