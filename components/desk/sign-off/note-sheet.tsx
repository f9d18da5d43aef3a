'use client';

import { useState } from 'react';
import { Minus, Plus } from 'lucide-react';
import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { Dialog } from '@/components/ui/dialog';
import { TextInput } from '@/components/ui/text-input';
import { skillTitles, type Skill } from '@/lib/course/skills';
import { helpLevels, helpWords, type HelpLevel } from '@/lib/mastery/sign-off';
import { failedGatesText, gatesOfSkill, gateText, type GateId } from '@/lib/mastery/sign-off-gates';
import { longestNote, mostPrompts } from '@/lib/mastery/sign-off-note';
import type { SeenNote } from '@/lib/mastery/sign-off-queue';
import type { SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { eveningText } from './cell-view';

export type Said = {
  studentIds: readonly string[];
  level: HelpLevel;
  gates: readonly GateId[];
  prompts: number;
  note: string;
  /** Beside what was noted earlier this evening, instead of in its place. */
  beside: boolean;
};

/**
 * What is said of one skill, of one student or of several: gates and prompts first, and the level last,
 * under the thumb, which notes it down and closes the sheet.
 */
export function NoteSheet({
  skill,
  students,
  notes,
  noted,
  startWith,
  onSay,
  onClose,
}: {
  skill: Skill;
  students: readonly SignOffStudent[];
  /** Of the one student; empty for several. */
  notes: readonly SeenNote[];
  /** Who has a note of this teacher’s of this evening already. */
  noted: readonly SignOffStudent[];
  /** Of several: who is chosen at first. One tap must not note a class that nobody meant. */
  startWith: 'all' | 'nobody';
  onSay: (said: Said) => void;
  onClose: () => void;
}) {
  const several = students.length > 1;
  const everybody = students.map(({ id }) => id);
  const [chosen, setChosen] = useState<readonly string[]>(
    several && startWith === 'nobody' ? [] : everybody,
  );
  const [gates, setGates] = useState<readonly GateId[]>([]);
  const [prompts, setPrompts] = useState(0);
  const [note, setNote] = useState('');
  const [beside, setBeside] = useState(false);
  const earlier = noted.filter(({ id }) => chosen.includes(id));
  const [only] = students;
  const toggled = <T,>(list: readonly T[], one: T): T[] =>
    list.includes(one) ? list.filter((other) => other !== one) : [...list, one];
  return (
    <Dialog
      open
      onOpenChange={(open) => {
        if (!open) onClose();
      }}
      title={several ? skillTitles[skill] : `${only?.displayName ?? ''}: ${skillTitles[skill]}`}
      description={several ? 'One level for all who are chosen.' : <SoFar notes={notes} />}
    >
      <div className="space-y-3">
        {/* Before the list of a whole class, which would push them under the levels. */}
        {gatesOfSkill[skill].length === 0 ? null : (
          <Switches
            legend="Gates: press what failed"
            choices={gatesOfSkill[skill].map((id) => ({ id, text: gateText[id].failed }))}
            on={gates}
            words={['it happened', 'no']}
            onToggle={(id) => setGates(toggled(gates, id))}
          />
        )}
        {several ? (
          <>
            <div className="flex items-center justify-between gap-3">
              <p role="status">
                {chosen.length === 0
                  ? 'Nobody is chosen yet.'
                  : `${String(chosen.length)} of ${String(students.length)} chosen.`}
              </p>
              <Button
                className="min-h-11"
                onClick={() => setChosen(chosen.length === students.length ? [] : everybody)}
              >
                {chosen.length === students.length ? 'Nobody' : 'All'}
              </Button>
            </div>
            <Switches
              legend="Who"
              choices={students.map(({ id, displayName }) => ({ id, text: displayName }))}
              on={chosen}
              words={['in', 'out']}
              onToggle={(id) => setChosen(toggled(chosen, id))}
            />
          </>
        ) : null}
        <div className="flex items-center justify-between gap-3">
          <span id="prompts-label" className="font-semibold">
            Prompts given
          </span>
          <span role="group" aria-labelledby="prompts-label" className="flex items-center gap-2">
            <Step
              label="One prompt fewer"
              onPress={() => setPrompts(Math.max(0, prompts - 1))}
              sign={<Minus aria-hidden="true" className="size-5" />}
            />
            <output className="min-w-8 text-center text-lg font-semibold">{prompts}</output>
            <Step
              label="One prompt more"
              onPress={() => setPrompts(Math.min(mostPrompts, prompts + 1))}
              sign={<Plus aria-hidden="true" className="size-5" />}
            />
          </span>
        </div>
        <div>
          <label htmlFor="sign-off-word" className="text-sm text-soft">
            A word beside it, if you like
          </label>
          <TextInput
            id="sign-off-word"
            value={note}
            maxLength={longestNote}
            autoComplete="off"
            onChange={(event) => setNote(event.target.value)}
          />
        </div>
        {earlier.length > 0 ? (
          <Checkbox
            className="min-h-11"
            label="Keep this evening’s earlier note, too"
            hint={`Otherwise the new one takes its place: ${earlier.map(({ displayName }) => displayName).join(', ')}.`}
            checked={beside}
            onChange={(event) => setBeside(event.target.checked)}
          />
        ) : null}
        <fieldset className="sticky -bottom-5 -mx-5 border-t border-line bg-panel px-5 pt-2 pb-5 sm:-bottom-6 sm:-mx-6 sm:px-6 sm:pb-6">
          <legend className="sr-only">The level of help, which notes it down</legend>
          <div className="grid grid-cols-2 gap-2">
            {helpLevels.map((level) => (
              <button
                key={level}
                type="button"
                disabled={chosen.length === 0}
                onClick={() => {
                  onSay({ studentIds: chosen, level, gates, prompts, note: note.trim(), beside });
                }}
                className="flex min-h-16 items-center gap-2 rounded-md border-2 border-strong bg-panel px-3 py-1.5 text-start leading-tight hover:border-ink hover:bg-sunken disabled:opacity-60"
              >
                <span className="text-2xl font-semibold">{level}</span>
                <span className="text-sm">{helpWords[level]}</span>
              </button>
            ))}
          </div>
        </fieldset>
      </div>
    </Dialog>
  );
}

function SoFar({ notes }: { notes: readonly SeenNote[] }) {
  if (notes.length === 0) return <p>Nothing noted so far.</p>;
  const inOrder = notes.toSorted((one, other) => one.evening.localeCompare(other.evening));
  return (
    <ul className="text-sm">
      {inOrder.slice(-4).map(({ key, evening, level, gates, mine, waiting }) => (
        <li key={key}>
          {eveningText(evening)}: level {level}
          {gates.length === 0 ? '' : `, ${failedGatesText(gates) ?? ''}`}
          {mine ? '' : ' (a colleague)'}
          {waiting ? ' (waits on this device)' : ''}
        </li>
      ))}
    </ul>
  );
}

function Step({
  label,
  onPress,
  sign,
}: {
  label: string;
  onPress: () => void;
  sign: React.ReactNode;
}) {
  return (
    <button
      type="button"
      aria-label={label}
      onClick={onPress}
      className="inline-flex size-12 items-center justify-center rounded-md border border-strong bg-panel hover:bg-sunken"
    >
      {sign}
    </button>
  );
}

function Switches<Id extends string>({
  legend,
  choices,
  on,
  words: [onWord, offWord],
  onToggle,
}: {
  legend: string;
  choices: readonly { id: Id; text: string }[];
  on: readonly Id[];
  words: readonly [string, string];
  onToggle: (id: Id) => void;
}) {
  return (
    <fieldset>
      <legend className="mb-1 font-semibold">{legend}</legend>
      <div className="divide-y divide-line border-y border-line">
        {choices.map(({ id, text }) => {
          const isOn = on.includes(id);
          return (
            <button
              key={id}
              type="button"
              role="switch"
              aria-checked={isOn}
              onClick={() => onToggle(id)}
              className="flex min-h-11 w-full items-center justify-between gap-3 px-1 text-start leading-tight hover:bg-sunken"
            >
              <span className={isOn ? 'font-semibold' : ''}>{text}</span>
              <span
                aria-hidden="true"
                className={`shrink-0 rounded-md border px-2 text-sm ${isOn ? 'border-accent bg-accent font-semibold text-on-accent' : 'border-line text-soft'}`}
              >
                {isOn ? onWord : offWord}
              </span>
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}
