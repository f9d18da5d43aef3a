import { Check } from 'lucide-react';
import { classNames } from '@/components/ui/class-names';
import { skillTitles } from '@/lib/course/skills';
import { neededInARow } from '@/lib/mastery/mastery';
import type { SkillStanding } from './skill-standing';

/** Three in a row as it grows, and what it stands for. */
export function StandingView({ standing }: { standing: SkillStanding }) {
  const { skill, inARow } = standing;
  const places = Array.from({ length: neededInARow }, (_, place) => place < inARow);
  return (
    <div className="keep-together flex flex-wrap items-center gap-x-4 gap-y-1 border-y border-line py-2">
      <p className="font-semibold">{skillTitles[skill]}</p>
      <p className="flex items-center gap-2">
        <span aria-hidden="true" className="flex gap-1">
          {places.map((taken, place) => (
            <span
              key={place}
              className={classNames(
                'grid size-6 place-content-center rounded-md border',
                taken ? 'border-accent bg-accent text-on-accent' : 'border-strong',
              )}
            >
              {taken ? <Check className="size-4" strokeWidth={3} /> : null}
            </span>
          ))}
        </span>
        <span className="text-sm text-soft">
          {inARow} of {neededInARow} in a row
        </span>
      </p>
      <p className="basis-full text-sm text-soft">{standingWords(standing)}</p>
    </div>
  );
}

function standingWords({ state, review }: SkillStanding): string {
  switch (state) {
    case 'not-started':
    case 'practising':
      return 'Three right in a row, each of another kind, and this skill is mastered.';
    case 'mastered':
      return `Mastered. It comes back for a review ${review ?? 'later'}.`;
    case 'review-due':
      return 'Mastered, and a review is due: one right answer shows that it has stayed.';
    case 'kept':
      return 'Mastered, and all its reviews passed. It has stayed.';
  }
}
