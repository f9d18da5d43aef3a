import { Telescope } from 'lucide-react';
import { SkillStateMark } from './skill-state-mark';
import { skillStates, skillStateText } from './skill-state-text';

/** What the signs of the matrix mean, and what counts as evidence. */
export function SkillLegend() {
  return (
    <section aria-labelledby="skill-legend" className="keep-together text-sm">
      <h3 id="skill-legend" className="mb-2 font-semibold">
        What the signs mean
      </h3>
      <dl className="grid gap-x-6 gap-y-1 sm:grid-cols-[auto_1fr]">
        {skillStates.map((state) => (
          <div key={state} className="contents">
            <dt>
              <SkillStateMark state={state} />
            </dt>
            <dd className="mb-1 text-soft sm:mb-0">{skillStateText[state].meaning}</dd>
          </div>
        ))}
        <div className="contents">
          <dt>
            <span className="inline-flex items-center gap-1">
              <Telescope aria-hidden="true" className="size-4 shrink-0" />1 of 2
            </span>
          </dt>
          <dd className="mb-1 text-soft sm:mb-0">
            evenings at the real telescope that count towards signing off; a gate that failed there
            says so
          </dd>
        </div>
      </dl>
      <p className="mt-2 max-w-measure text-soft">
        “2 of 3” says how many of the row are passed. Practice and checks both tell what somebody
        can do: questions of the lessons, labs, and what a dress rehearsal showed. A safety gate
        that failed is not passed, whatever the mark. A mark that you set by hand counts for the
        gradebook and changes nothing here; nor does lateness.
      </p>
    </section>
  );
}
