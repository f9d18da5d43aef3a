import {
  CheckCheck,
  CircleCheck,
  CircleDashed,
  CircleDot,
  RotateCcw,
  type LucideIcon,
} from 'lucide-react';
import { skillStateText, type SkillState } from './skill-state-text';

const icons: Readonly<Record<SkillState, LucideIcon>> = {
  'not-started': CircleDashed,
  practising: CircleDot,
  mastered: CircleCheck,
  'review-due': RotateCcw,
  kept: CheckCheck,
};
const tones: Readonly<Record<SkillState, string>> = {
  'not-started': 'text-soft',
  practising: 'text-ink',
  mastered: 'text-good',
  'review-due': 'text-caution',
  kept: 'text-good',
};

/** A skill's state by its sign and its word, or by another that is shorter for the eye. */
export function SkillStateMark({ state, shown }: { state: SkillState; shown?: string }) {
  const Icon = icons[state];
  const { word } = skillStateText[state];
  return (
    <span className={`inline-flex items-center gap-1 whitespace-nowrap ${tones[state]}`}>
      <Icon aria-hidden="true" className="size-4 shrink-0" />
      {shown === undefined ? (
        word
      ) : (
        <>
          <span className="sr-only">{word} </span>
          {shown}
        </>
      )}
    </span>
  );
}
