'use client';

import { useState } from 'react';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { StatusLine } from '@/components/ui/status-line';
import { mostProblemsShown, problemText, type FileProblem } from '@/lib/roster/file-problem';
import type { OneRosterClass } from '@/lib/roster/one-roster/classes-of';
import type { TransferMode } from '@/lib/roster/one-roster/fields';
import { shownNames, type NameForm } from '@/lib/roster/one-roster/shown-names';
import { FileInput } from './file-input';

/** A zip that was read, and what was chosen of it. */
export type OpenZip = {
  source: string;
  mode: TransferMode;
  classes: readonly OneRosterClass[];
  chosenId: string;
  form: NameForm;
};

/**
 * The school office's export. It is unpacked and read in this page: email addresses, telephone numbers
 * and whatever else it holds never leave the computer.
 */
export function OneRosterWay({
  zip,
  onZip,
  onRefuse,
  rememberedId,
  className,
  today,
}: {
  zip: OpenZip | null;
  onZip: (zip: OpenZip | null) => void;
  onRefuse: (messages: readonly string[]) => void;
  /** The class of the file that this one was last filled from. */
  rememberedId: string | null;
  className: string;
  today: string;
}) {
  const [reading, setReading] = useState(false);

  async function open(file: File): Promise<void> {
    setReading(true);
    try {
      const [{ largestZipBytes }, { readOneRoster }] = await Promise.all([
        import('@/lib/roster/open-zip'),
        import('@/lib/roster/one-roster/read-one-roster'),
      ]);
      onZip(null);
      if (file.size > largestZipBytes) {
        onRefuse([
          `${file.name}: larger than ${largestZipBytes / 1024 / 1024} MB, which no class list is. Ask for an export of fewer classes.`,
        ]);
        return;
      }
      const read = readOneRoster(file.name, new Uint8Array(await file.arrayBuffer()), today);
      if (!read.ok) {
        onRefuse(shownProblems(read.problems));
        return;
      }
      const chosen = likelyClass(read.classes, rememberedId, className);
      if (chosen === null) {
        onRefuse([`${file.name}: there is no class with students in it.`]);
        return;
      }
      onRefuse([]);
      onZip({
        source: file.name,
        mode: read.mode,
        classes: read.classes,
        chosenId: chosen.sourcedId,
        form: zip?.form ?? 'initial',
      });
    } finally {
      setReading(false);
    }
  }

  const chosen = zip?.classes.find((one) => one.sourcedId === zip.chosenId);
  const [sample] = chosen?.students ?? [];
  const example = (form: NameForm): string =>
    sample === undefined ? '' : `: ${shownNames([sample], form)[0] ?? ''}`;
  return (
    <div className="space-y-4">
      <Field
        id="roster-zip"
        label="OneRoster 1.2 zip"
        hint="As the school office exports it, not unpacked. It is read on this computer; only names and ids of the class you choose are sent."
      >
        {(control) => (
          <FileInput
            control={control}
            accept=".zip,application/zip"
            onFile={(file) => void open(file)}
          />
        )}
      </Field>
      <StatusLine>
        {reading
          ? 'Reading…'
          : zip === null
            ? ''
            : `${zip.source} read: ${zip.classes.length} ${zip.classes.length === 1 ? 'class' : 'classes'}.`}
      </StatusLine>
      {zip === null || chosen === undefined ? null : (
        <>
          <Field label="Which class of the file is this one?">
            {(control) => (
              <Select
                {...control}
                className="max-w-md"
                value={zip.chosenId}
                onChange={(event) => onZip({ ...zip, chosenId: event.target.value })}
              >
                {zip.classes.map((one) => (
                  <option key={one.sourcedId} value={one.sourcedId}>
                    {one.title}, {one.students.length}{' '}
                    {one.students.length === 1 ? 'student' : 'students'}
                    {one.sourcedId === rememberedId ? ' (taken last time)' : ''}
                  </option>
                ))}
              </Select>
            )}
          </Field>
          <RadioGroup
            legend="Names to show"
            name="name-form"
            value={zip.form}
            options={[
              { value: 'given', label: `given name${example('given')}` },
              { value: 'initial', label: `given name and initial${example('initial')}` },
              { value: 'full', label: `full name${example('full')}` },
            ]}
            onValueChange={(form) => onZip({ ...zip, form })}
          />
          <p className="max-w-measure text-sm text-soft">
            The shorter, the better; who would share a name gets the longer form. The rest of the
            name stays on this computer.
          </p>
          {zip.mode === 'bulk' ? null : (
            <Notice title="This file holds changes only">
              <p>
                Students whom it does not name stay as they are. A change of name alone comes with
                the next whole (bulk) file.
              </p>
            </Notice>
          )}
        </>
      )}
    </div>
  );
}

function shownProblems(problems: readonly FileProblem[]): string[] {
  const shown = problems.slice(0, mostProblemsShown).map(problemText);
  const more = problems.length - shown.length;
  return more > 0 ? [...shown, `and ${more} more like these. Nothing was taken.`] : shown;
}

function likelyClass(
  classes: readonly OneRosterClass[],
  rememberedId: string | null,
  className: string,
): OneRosterClass | null {
  const same = className.trim().toLowerCase();
  return (
    classes.find((one) => one.sourcedId === rememberedId) ??
    classes.find((one) => one.title.toLowerCase() === same) ??
    classes.find((one) => one.students.length + one.gone.length > 0) ??
    null
  );
}
