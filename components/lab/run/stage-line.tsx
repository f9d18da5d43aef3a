import { Check } from 'lucide-react';
import type { RunStage } from '@/lib/alignment/run-state';
import { stageSteps } from './run-words';

/** How far one has come: five marks on a line, as on the circle of a mount. */
export function StageLine({ stage }: { stage: RunStage }) {
  const now = stageSteps.findIndex(({ stages }) => stages.includes(stage));
  return (
    <ol aria-label="Steps of the run" className="flex">
      {stageSteps.map(({ label }, index) => {
        const done = index < now;
        const current = index === now;
        return (
          <li
            key={label}
            aria-current={current ? 'step' : undefined}
            className={`flex-1 border-t-4 pt-1 text-xs leading-tight ${
              current
                ? 'border-accent font-semibold text-ink'
                : done
                  ? 'border-strong text-soft'
                  : 'border-line text-soft'
            }`}
          >
            {done ? <Check aria-hidden="true" className="me-0.5 inline size-3" /> : null}
            {label}
            {done ? <span className="sr-only"> (done)</span> : null}
          </li>
        );
      })}
    </ol>
  );
}
