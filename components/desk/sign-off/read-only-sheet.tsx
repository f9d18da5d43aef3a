'use client';

import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import { cellView } from './cell-view';
import { waitingOf } from './kept-on-device';
import { SignOffGrid, SignOffLegend } from './sign-off-grid';
import { CannotBeSent } from './waiting-here';

/** The whole class for who reads along: an observer, a cover teacher, or once the class is archived. */
export function ReadOnlySheet({
  sheet,
  teacherId,
}: {
  sheet: SignOffSheet;
  /** Who reads; null for a cover teacher. */
  teacherId: string | null;
}) {
  const { classId, students, notes, timeZone, needed } = sheet;
  const ledger = { waiting: [], known: notes };
  return (
    <div className="space-y-3">
      {teacherId === null ? null : (
        <CannotBeSent owner={{ classId, teacherId }} queues={() => waitingOf(teacherId)} />
      )}
      <SignOffGrid
        caption="Skills by students"
        students={students}
        viewOf={(studentId, skill) => cellView(ledger, { studentId, skill, timeZone, needed })}
        onCell={null}
        onSkill={null}
      />
      <SignOffLegend needed={needed} />
    </div>
  );
}
