import { Undo2 } from 'lucide-react';
import { skillTitles } from '@/lib/course/skills';
import type { OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { SignOffState } from './sign-off-store';

/** Under the thumb: what was noted last, whether it has gone, and its undo. */
export function NotedBar({
  state,
  nameOf,
  onUndo,
}: {
  state: SignOffState;
  nameOf: (studentId: string) => string;
  onUndo: () => void;
}) {
  const { last } = state;
  return (
    <div
      role="status"
      className="no-print pointer-events-none fixed inset-x-0 bottom-0 z-20 flex justify-center"
    >
      {last.length === 0 ? null : (
        <div className="pointer-events-auto flex w-full max-w-xl items-center justify-between gap-3 border-t-2 border-strong bg-panel px-4 py-2">
          <span>
            Noted: {notedText(last, nameOf)} · {goneText(state)}
          </span>
          <button
            type="button"
            onClick={onUndo}
            className="inline-flex min-h-12 min-w-24 shrink-0 items-center justify-center gap-1.5 rounded-md border-2 border-strong px-3 font-semibold hover:bg-sunken"
          >
            <Undo2 aria-hidden="true" className="size-4" />
            Undo
          </button>
        </div>
      )}
    </div>
  );
}

/** "Alder, Levels, level 3"; of a whole paper form only how much. */
function notedText(last: readonly OutgoingNote[], nameOf: (studentId: string) => string): string {
  const [first] = last;
  const alike = new Set(last.map(({ skill, level }) => `${skill} ${String(level)}`)).size === 1;
  if (first === undefined || !alike) return `${String(last.length)} notes`;
  const who = last.length === 1 ? nameOf(first.studentId) : `${String(last.length)} students`;
  const gate = first.gates.length === 0 ? '' : ', gate failed';
  return `${who}, ${skillTitles[first.skill]}, level ${String(first.level)}${gate}`;
}

/** Where these notes are: on this device, in conflict, or with the server. */
function goneText({ last, ledger }: SignOffState): string {
  const here = ledger.waiting.filter(({ item }) => last.some(({ key }) => key === item.key));
  if (here.some(({ state }) => state.kind !== 'queued')) return 'needs your word, above';
  const all = ledger.waiting.length;
  if (here.length === 0) return all === 0 ? 'sent' : `sent; ${String(all)} earlier not yet`;
  return `kept on this device, ${String(all)} not sent yet`;
}
