import { Ban, CircleCheck, CircleHelp, Clock, House } from 'lucide-react';
import { TableFrame } from '@/components/ui/table-frame';
import { skills, skillTitles, type Skill } from '@/lib/course/skills';
import { enough, observationsNeeded, type NeededLevel } from '@/lib/mastery/sign-off';
import type { SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { cellWords, type CellView } from './cell-view';

/** Skills down, students across: a thumb on a cell is one student, on a skill's name all of them. */
export function SignOffGrid({
  caption,
  students,
  viewOf,
  onCell,
  onSkill,
}: {
  caption: string;
  students: readonly SignOffStudent[];
  viewOf: (studentId: string, skill: Skill) => CellView;
  /** Null where the viewer only reads. */
  onCell: ((student: SignOffStudent, skill: Skill) => void) | null;
  onSkill: ((skill: Skill) => void) | null;
}) {
  return (
    <TableFrame
      caption={caption}
      captionHidden
      stickyFirstColumn
      tall
      className="max-sm:-mx-4 max-sm:rounded-none max-sm:border-x-0"
    >
      <thead>
        <tr>
          <th scope="col" className="w-24 min-w-24 px-2! sm:min-w-40">
            Skill
          </th>
          {students.map(({ id, displayName }) => (
            // A column is as wide as the longest word of its name: no name breaks within one.
            <th key={id} scope="col" className="min-w-12 px-1! text-center! text-xs">
              {displayName}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {skills.map((skill) => (
          <tr key={skill}>
            <th scope="row" className="p-0! align-middle!">
              {onSkill === null ? (
                <span className="block px-2 py-3 text-sm leading-tight">{skillTitles[skill]}</span>
              ) : (
                <button
                  type="button"
                  onClick={() => onSkill(skill)}
                  className="flex min-h-13 w-full items-center px-2 text-start text-sm leading-tight underline decoration-dotted underline-offset-4 hover:decoration-solid"
                >
                  {skillTitles[skill]}
                  <span className="sr-only">: several students at once</span>
                </button>
              )}
            </th>
            {students.map((student) => {
              const view = viewOf(student.id, skill);
              const indoors = student.indoors.includes(skill);
              const words = `${student.displayName}, ${skillTitles[skill]}: ${cellWords(view, indoors)}`;
              return (
                <td key={student.id} className="p-0! align-middle!">
                  {onCell === null ? (
                    <span className="block">
                      <span className="sr-only">{words}</span>
                      <CellFace view={view} indoors={indoors} />
                    </span>
                  ) : (
                    <button
                      type="button"
                      aria-label={words}
                      onClick={() => onCell(student, skill)}
                      className="block min-h-13 w-full border-s border-line hover:bg-sunken"
                    >
                      <CellFace view={view} indoors={indoors} />
                    </button>
                  )}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

/** Level and count, with a sign for each thing more: the words stand in the cell's name. */
function CellFace({ view, indoors }: { view: CellView; indoors: boolean }) {
  const { level, standing, evenings, waiting, conflict, notes } = view;
  const gate = !standing.signedOff && notes.some(({ gates }) => gates.length > 0);
  return (
    <span
      aria-hidden="true"
      className="flex min-h-13 flex-col items-center justify-center leading-tight"
    >
      <span className="flex items-center gap-0.5 text-base font-semibold">
        {level ?? <span className="font-normal text-soft">–</span>}
        {standing.signedOff ? <CircleCheck className="size-4 text-good" /> : null}
        {gate ? <Ban className="size-4 text-danger" /> : null}
        {conflict ? <CircleHelp className="size-4 text-caution" /> : null}
      </span>
      <span className="flex h-4 items-center gap-0.5 text-xs whitespace-nowrap text-soft">
        {level === null ? '' : `${String(evenings)}/${String(observationsNeeded)}`}
        {indoors ? <House className="size-3" /> : null}
        {waiting ? <Clock className="size-3 text-caution" /> : null}
      </span>
    </span>
  );
}

export function SignOffLegend({ needed }: { needed: NeededLevel }) {
  const lines = [
    ['3', 'the level of help of the latest evening, 1 to 4'],
    ['1/2', `evenings at ${enough(needed)} with no gate failed, of the two it takes`],
    [<CircleCheck key="off" className="inline size-4 text-good" />, 'signed off'],
    [<Ban key="gate" className="inline size-4 text-danger" />, 'a gate failed: not yet'],
    [<House key="in" className="inline size-4" />, 'mastered indoors, in the labs'],
    [<Clock key="wait" className="inline size-4 text-caution" />, 'waits on this device'],
    [
      <CircleHelp key="word" className="inline size-4 text-caution" />,
      'needs your word: see above',
    ],
  ] as const;
  return (
    <dl className="grid grid-cols-[2.5rem_1fr] gap-y-1 text-sm text-soft sm:max-w-xl">
      {lines.map(([sign, meaning]) => (
        <div key={meaning} className="contents">
          <dt className="font-semibold text-ink">{sign}</dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}
