import { Check } from 'lucide-react';
import { classNames } from '@/components/ui/class-names';
import { neededInARow } from '@/lib/mastery/mastery';

/** The row that leads to mastery, as far as it has come. */
export function RowOfThree({ inARow }: { inARow: number }) {
  return (
    <span className="inline-flex items-center gap-2">
      <span aria-hidden="true" className="inline-flex gap-1">
        {Array.from({ length: neededInARow }, (_, place) => (
          <span
            key={place}
            className={classNames(
              'grid size-5 place-content-center rounded-md border',
              place < inARow ? 'border-accent bg-accent text-on-accent' : 'border-strong',
            )}
          >
            {place < inARow ? <Check className="size-3.5" strokeWidth={3} /> : null}
          </span>
        ))}
      </span>
      <span className="text-sm whitespace-nowrap text-soft">
        {inARow} of {neededInARow} in a row
      </span>
    </span>
  );
}
