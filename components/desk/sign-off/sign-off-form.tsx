import { skills, skillTitles } from '@/lib/course/skills';
import {
  enough,
  helpLevels,
  helpWords,
  observationsNeeded,
  type NeededLevel,
} from '@/lib/mastery/sign-off';
import { gateLetter, gatesOfSkill, gateText } from '@/lib/mastery/sign-off-gates';
import type { KnownNote } from '@/lib/mastery/sign-off-note';
import type { SignOffGroup, SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { capitalised } from '@/lib/wording/capital';
import { groupWithTelescope } from '@/lib/wording/group-name';
import { cellView } from './cell-view';

export type FormSheet = SignOffGroup & { students: readonly SignOffStudent[] };

/** A group's sheet of paper: black on white, so that it reads by red light as well; A4 and Letter. */
export function SignOffForm({
  sheet,
  className,
  needed,
  notes,
}: {
  sheet: FormSheet;
  className: string;
  needed: NeededLevel;
  notes: readonly KnownNote[];
}) {
  const { name, telescope, students } = sheet;
  const group = name === '' ? (telescope ?? '') : groupWithTelescope(name, telescope);
  const ledger = { waiting: [], known: notes };
  const countOf = (studentId: string, skill: (typeof skills)[number]) =>
    cellView(ledger, { studentId, skill, timeZone: 'UTC', needed }).evenings;
  return (
    <section className="mb-8 overflow-x-auto border border-line bg-panel p-4 break-after-page last:break-after-auto print:mb-0 print:border-0 print:p-0">
      <h3 className="text-lg font-semibold">
        Sign-off · {className}
        {group === '' ? '' : ` · ${group}`}
      </h3>
      <p className="mt-2 flex flex-wrap gap-x-5 gap-y-2 text-sm print:mt-1 print:gap-y-1">
        <Blank label="Evening of" width="7rem" />
        <Blank label="Assessor" width="9rem" />
        <span>night / day</span>
        <span>clear / some cloud / overcast</span>
        {telescope === null ? <Blank label="Telescope" width="6rem" /> : null}
      </p>
      <table className="mt-2 w-full table-fixed border-collapse text-sm leading-tight [&_:is(td,th)]:border [&_:is(td,th)]:border-strong">
        <caption className="sr-only">
          Skills by students of {group === '' ? 'the class' : group}
        </caption>
        <thead>
          <tr>
            <th scope="col" className="w-[30%] p-1 text-start">
              Skill, and letters of its gates
            </th>
            {students.map(({ id, displayName }) => (
              <th key={id} scope="col" className="p-1 text-center wrap-anywhere">
                {displayName}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {skills.map((skill) => {
            const gates = gatesOfSkill[skill];
            const letters = gates.map((_, index) => gateLetter(index));
            return (
              <tr key={skill} className="h-14 print:h-[14mm]">
                <th scope="row" className="p-1 text-start align-top">
                  {skillTitles[skill]}
                  <span className="block text-[0.7rem] font-normal print:text-[7pt]">
                    {gates
                      .map((gate, index) => `${gateLetter(index)} ${gateText[gate].failed}`)
                      .join(' · ')}
                  </span>
                </th>
                {students.map(({ id }) => (
                  <td key={id} className="p-1 text-center align-top print:py-px">
                    <span className="block text-base font-semibold tracking-[0.35em] print:text-[12pt]">
                      {helpLevels.join('')}
                    </span>
                    <span className="block tracking-[0.25em]">{letters.join('')}</span>
                    <span className="mt-0.5 block text-end text-[0.7rem] print:text-[7pt]">
                      {countOf(id, skill)}/{observationsNeeded}
                    </span>
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="mt-2 text-sm print:mt-1 print:text-[8.5pt] print:leading-snug">
        Ring one level:{' '}
        {helpLevels.map((level) => `${String(level)} ${helpWords[level]}`).join(' · ')}. Cross out
        the letter of a gate that failed: then it is “not yet”, whatever the level. A stroke in the
        cell for each prompt. {capitalised(enough(needed))} on {observationsNeeded} evenings signs
        off; in the corner, how many there are so far.
      </p>
      <p className="mt-1 text-sm font-semibold print:mt-0">
        Tube and finder stay capped until the Sun has set. Nobody lifts alone.
      </p>
    </section>
  );
}

function Blank({ label, width }: { label: string; width: string }) {
  return (
    <span className="inline-flex items-end gap-1">
      {label}
      <span aria-hidden="true" className="inline-block border-b border-strong" style={{ width }} />
    </span>
  );
}
