'use client';

import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import { cellView } from './cell-view';
import { SignOffGrid, SignOffLegend } from './sign-off-grid';

/** The whole class for who reads along: an observer, a cover teacher, or once the class is archived. */
export function ReadOnlySheet({ sheet }: { sheet: SignOffSheet }) {
  const { students, notes, timeZone, needed } = sheet;
  const ledger = { waiting: [], known: notes };
  return (
    <div className="space-y-3">
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
