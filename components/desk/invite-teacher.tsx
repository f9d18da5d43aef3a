'use client';

import { useState, useSyncExternalStore, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { StatusLine } from '@/components/ui/status-line';
import { TextInput } from '@/components/ui/text-input';
import type { Result } from '@/lib/data/result';

type Role = 'teacher' | 'observer';

/** Makes an invitation link: one use, seven days, shown once. */
export function InviteTeacher({
  classes,
  invite,
}: {
  /** Classes the viewer may let others into. */
  classes: readonly { id: string; name: string }[];
  invite: (input: {
    classId: string | null;
    role: Role;
  }) => Promise<Result<{ path: string; expiresAt: string }>>;
}) {
  const [classId, setClassId] = useState('');
  const [role, setRole] = useState<Role>('teacher');
  const [made, setMade] = useState<{ path: string; expiresAt: string } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [said, setSaid] = useState('');
  const [busy, start] = useTransition();
  const origin = useSyncExternalStore(
    () => () => undefined,
    () => window.location.origin,
    () => '',
  );
  const link = made === null ? '' : `${origin}${made.path}`;

  function make(): void {
    start(async () => {
      try {
        const answer = await invite({ classId: classId === '' ? null : classId, role });
        setProblem(answer.ok ? null : answer.problem.message);
        setMade(answer.ok ? answer.value : null);
        setSaid('');
      } catch {
        setProblem('The server did not answer. Try again.');
      }
    });
  }

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(link);
      setSaid('Copied.');
    } catch {
      // Browsers forbid it on pages without https; the link can still be marked and copied by hand.
      setSaid('Copying is not allowed here: mark the link and copy it.');
    }
  }

  return (
    <div className="max-w-xl space-y-4">
      <Field
        label="To which class"
        hint="Without a class they get an account and a desk of their own."
      >
        {(control) => (
          <Select {...control} value={classId} onChange={(event) => setClassId(event.target.value)}>
            <option value="">none of mine</option>
            {classes.map((entry) => (
              <option key={entry.id} value={entry.id}>
                {entry.name}
              </option>
            ))}
          </Select>
        )}
      </Field>
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
        <StatusLine>{busy ? 'Making…' : said}</StatusLine>
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
          <TextInput
            aria-label="Invitation link"
            readOnly
            value={link}
            className="font-figures text-sm"
            onFocus={(event) => event.target.select()}
          />
          <Button onClick={() => void copy()}>Copy the link</Button>
        </Notice>
      )}
    </div>
  );
}
