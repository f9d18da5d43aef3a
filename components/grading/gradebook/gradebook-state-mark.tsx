import {
  Check,
  CircleAlert,
  CircleDashed,
  CircleDot,
  CircleSlash,
  Clock,
  CornerDownLeft,
  Hourglass,
  Minus,
  Send,
  type LucideIcon,
} from 'lucide-react';
import type { GradebookState } from '@/lib/grading/gradebook-state';
import { gradebookStateText } from './gradebook-state-text';

const icons: Readonly<Record<GradebookState, LucideIcon>> = {
  'not-started': CircleDashed,
  'in-progress': CircleDot,
  submitted: Send,
  late: Clock,
  missing: CircleAlert,
  excused: Minus,
  'needs-sign-off': Hourglass,
  'not-yet': CircleSlash,
  complete: Check,
  returned: CornerDownLeft,
};
const tones: Partial<Record<GradebookState, string>> = {
  complete: 'text-good',
  missing: 'text-danger',
  late: 'text-caution',
  'not-yet': 'text-caution',
};

/** A state by its sign and its word. */
export function GradebookStateMark({ state }: { state: GradebookState }) {
  const Icon = icons[state];
  return (
    <span
      className={`inline-flex items-center gap-1 whitespace-nowrap ${tones[state] ?? 'text-soft'}`}
    >
      <Icon aria-hidden="true" className="size-3.5 shrink-0" />
      {gradebookStateText[state].word}
    </span>
  );
}
