import type { GradebookState } from '@/lib/grading/gradebook-state';
import { GradebookStateMark } from './gradebook-state-mark';
import { gradebookStateText } from './gradebook-state-text';

const states: readonly GradebookState[] = [
  'not-started',
  'in-progress',
  'submitted',
  'late',
  'missing',
  'returned',
  'not-yet',
  'needs-sign-off',
  'complete',
  'excused',
];

/** What the words of the gradebook mean. */
export function GradebookLegend() {
  return (
    <details className="text-sm print:hidden">
      <summary className="font-semibold">What the words mean</summary>
      <dl className="mt-2 grid gap-x-6 gap-y-1 sm:grid-cols-[auto_1fr]">
        {states.map((state) => (
          <div key={state} className="contents">
            <dt>
              <GradebookStateMark state={state} />
            </dt>
            <dd className="mb-1 text-soft sm:mb-0">{gradebookStateText[state].meaning}</dd>
          </div>
        ))}
      </dl>
      <p className="mt-2 max-w-measure text-soft">
        The number is the mark that counts: after any deduction for lateness, by the assignment’s
        rule (best, last, first or average), and with your own mark above all. Of an assignment with
        several parts it is their mean by weight, so far. A student’s mean takes in every whole
        mark, passed or not, by the weights of the assignments; what is excused, missing or half
        done is left out. All of it is rounded for showing only.
      </p>
    </details>
  );
}
