'use client';

import { useState, useSyncExternalStore } from 'react';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { SunCaution } from '@/components/ui/sun-caution';
import type { Skill } from '@/lib/course/skills';
import { eveningOf } from '@/lib/mastery/evening';
import { notesOf } from '@/lib/mastery/sign-off-queue';
import type { SignOffSheet, SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import type { OutgoingNote } from '@/lib/mastery/sign-off-note';
import { routes } from '@/lib/routes';
import { groupWithTelescope } from '@/lib/wording/group-name';
import { cellView } from './cell-view';
import { EveningChoice } from './evening-choice';
import {
  countOthersWaiting,
  readEvening,
  writeEvening,
  type EveningSettings,
} from './kept-on-device';
import { newKey } from './new-key';
import { NotedBar } from './noted-bar';
import { NoteSheet, type Said } from './note-sheet';
import { QueueLine } from './queue-line';
import { SignOffGrid, SignOffLegend } from './sign-off-grid';
import { TakeOutside } from './take-outside';
import { TypingTable } from './typing-table';
import { useSignOff } from './use-sign-off';
import { useTyping } from './use-typing';

/** In the address and in the list: everybody who is in no group. */
const nobodys = 'none';

const studentsIn = (sheet: SignOffSheet, group: string): readonly SignOffStudent[] =>
  group === ''
    ? sheet.students
    : sheet.students.filter(({ groupId }) => (groupId ?? nobodys) === group);

/** Skills seen at the real telescope, noted with one thumb; works while there is no connection. */
export function SignOffBoard({
  sheet,
  teacherId,
  group: firstGroup,
  today,
}: {
  sheet: SignOffSheet;
  teacherId: string;
  /** A group's id, 'none', or empty for all. */
  group: string;
  /** UTC, ISO 8601: when the page was made, until the device's own clock is asked. */
  today: string;
}) {
  const { store, state, owner } = useSignOff(sheet, teacherId);
  const [group, setGroup] = useState(firstGroup);
  const [open, setOpen] = useState<{ skill: Skill; students: readonly SignOffStudent[] } | null>(
    null,
  );
  const [settings, setSettings] = useEveningSettings(owner, sheet.timeZone, today);
  const typing = useTyping();
  const others = useSyncExternalStore(
    nothingChanges,
    () => countOthersWaiting(teacherId),
    () => 0,
  );
  const students = studentsIn(sheet, group);
  const nameOf = (studentId: string): string =>
    sheet.students.find(({ id }) => id === studentId)?.displayName ?? 'Somebody who has left';
  const { timeZone, needed } = sheet;

  const telescopeOf = (student: SignOffStudent | undefined): string =>
    settings.telescope === ''
      ? (sheet.groups.find(({ id }) => id === student?.groupId)?.telescope ?? '')
      : settings.telescope;

  const earlierOf = (studentId: string, skill: Skill, evening: string) =>
    notesOf(state.ledger, studentId, skill, timeZone).filter(
      (note) => note.mine && note.evening === evening,
    );

  const say = (skill: Skill, { studentIds, beside, ...said }: Said) => {
    const now = new Date();
    const evening = eveningOf(now, timeZone, settings.conditions.light);
    store.note(
      studentIds.map((studentId): OutgoingNote => {
        const keys = earlierOf(studentId, skill, evening).map(({ key }) => key);
        const how = beside ? ('beside' as const) : ('replace' as const);
        return {
          kind: 'note',
          key: newKey(),
          studentId,
          skill,
          ...said,
          gates: [...said.gates],
          instrument: telescopeOf(sheet.students.find(({ id }) => id === studentId)),
          conditions: settings.conditions,
          observedAt: now.toISOString(),
          over: keys.length === 0 ? null : { keys, how },
        };
      }),
    );
    setOpen(null);
  };

  return (
    <div data-keeps-working="" className="space-y-3 max-sm:space-y-2">
      <QueueLine
        state={state}
        store={store}
        nameOf={nameOf}
        isHere={(studentId) => sheet.students.some(({ id }) => id === studentId)}
        others={others}
      />
      {/* On a phone the label stands beside the list: the first cells belong on the first screen. */}
      <div className="grid gap-3 max-sm:gap-2 max-sm:[&>div]:flex-row max-sm:[&>div]:items-center max-sm:[&>div]:gap-3 max-sm:[&_label]:shrink-0 sm:grid-cols-[14rem_1fr] sm:items-end">
        <Field id="sign-off-group" label="Telescope group">
          {(control) => (
            <Select
              {...control}
              className="[&_select]:min-h-11"
              value={group}
              onChange={({ target }) => {
                setGroup(target.value);
                const query = target.value === '' ? undefined : { group: target.value };
                // Not a navigation: that would need a connection.
                window.history.replaceState(
                  null,
                  '',
                  routes.teacher.classSignOff(sheet.classId, query),
                );
              }}
            >
              <option value="">The whole class</option>
              {sheet.groups.map(({ id, name, telescope }) => (
                <option key={id} value={id}>
                  {groupWithTelescope(name, telescope)}
                </option>
              ))}
              {sheet.groups.length > 0 && sheet.students.some(({ groupId }) => groupId === null) ? (
                <option value={nobodys}>Without a group</option>
              ) : null}
            </Select>
          )}
        </Field>
        <EveningChoice settings={settings} telescopes={sheet.telescopes} onChange={setSettings} />
      </div>
      <SunCaution short outside />
      {students.length === 0 ? (
        <p className="text-soft">Nobody is in this group.</p>
      ) : (
        <SignOffGrid
          caption="Skills by students: press a cell to note what you saw"
          students={students}
          viewOf={(studentId, skill) =>
            cellView(state.ledger, { studentId, skill, timeZone, needed })
          }
          onCell={(student, skill) => setOpen({ skill, students: [student] })}
          onSkill={(skill) => setOpen({ skill, students })}
        />
      )}
      <p className="text-sm text-soft">
        Press a cell for one student, the name of a skill for several at once.
      </p>
      <SignOffLegend needed={needed} />
      <TakeOutside sheet={{ ...sheet, notes: [...state.ledger.known] }} owner={owner} />
      <TypingTable
        students={students}
        everybody={sheet.students}
        groups={sheet.groups}
        timeZone={timeZone}
        settings={settings}
        typing={typing}
        ledger={state.ledger}
        telescopeOf={telescopeOf}
        notesOf={(studentId, skill) => notesOf(state.ledger, studentId, skill, timeZone)}
        onSave={store.note}
      />
      {open === null ? null : (
        <NoteSheet
          key={`${open.skill} ${String(open.students.length)}`}
          skill={open.skill}
          students={open.students}
          notes={
            open.students.length === 1
              ? notesOf(state.ledger, open.students[0]?.id ?? '', open.skill, timeZone)
              : []
          }
          noted={open.students.filter(
            ({ id }) => earlierOf(id, open.skill, settings.evening).length > 0,
          )}
          // Those without a group stand at no one telescope together.
          startWith={group === '' || group === nobodys ? 'nobody' : 'all'}
          onSay={(said) => say(open.skill, said)}
          onClose={() => setOpen(null)}
        />
      )}
      <NotedBar
        state={state}
        nameOf={nameOf}
        onUndo={() => {
          typing.putBack(state.last);
          store.undoLast();
        }}
      />
    </div>
  );
}

const nothingChanges = () => () => undefined;

/** Of this evening, as set before on this device; anew each evening. */
function useEveningSettings(
  owner: Parameters<typeof readEvening>[0],
  timeZone: string,
  today: string,
): [EveningSettings, (settings: EveningSettings) => void] {
  // On the server, and while the page comes alive, nothing is known of the device.
  const alive = useSyncExternalStore(
    nothingChanges,
    () => true,
    () => false,
  );
  const [chosen, setChosen] = useState<EveningSettings | null>(null);
  const now = alive ? new Date() : new Date(today);
  const kept = alive ? (chosen ?? readEvening(owner)) : null;
  const light = kept?.conditions.light ?? 'night';
  const evening = eveningOf(now, timeZone, light);
  const fresh: EveningSettings = {
    evening,
    conditions: { light: 'night', cloud: 'clear' },
    telescope: '',
  };
  const settings = kept?.evening === evening ? kept : fresh;
  return [
    settings,
    (next) => {
      const set = { ...next, evening: eveningOf(new Date(), timeZone, next.conditions.light) };
      writeEvening(owner, set);
      setChosen(set);
    },
  ];
}
