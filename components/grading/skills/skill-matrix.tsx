import Link from 'next/link';
import { CircleCheck, Telescope } from 'lucide-react';
import { TableFrame } from '@/components/ui/table-frame';
import { skills, skillTitles, type Skill } from '@/lib/course/skills';
import type { SkillMatrix, SkillStanding } from '@/lib/data/skill-progress';
import type { SignOffStanding } from '@/lib/data/sign-off-standings';
import { neededInARow } from '@/lib/mastery/mastery';
import { observationsNeeded } from '@/lib/mastery/sign-off';
import { routes } from '@/lib/routes';
import { SkillStateMark } from './skill-state-mark';
import { isMastered, type SkillState } from './skill-state-text';

/** Students by skills: each state by sign and word, and a way to the evidence behind it. */
export function SkillMatrixTable({ matrix }: { matrix: SkillMatrix }) {
  const { students } = matrix;
  return (
    <TableFrame caption="Students by skills" captionHidden stickyFirstColumn>
      <thead>
        <tr>
          <th scope="col">Student</th>
          {skills.map((skill) => (
            <th key={skill} scope="col" className="min-w-[4.9rem] px-1.5!">
              {skillTitles[skill]}
              <Count
                standings={students.map((student) => standingIn(student.standings, skill))}
                signedOff={
                  students.filter(({ signOff }) => signOff[skill]?.standing.signedOff).length
                }
              />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {students.map((student) => (
          <tr key={student.id} className={student.left ? 'text-soft' : undefined}>
            <th scope="row" className="min-w-28 align-middle whitespace-nowrap">
              <span className="me-1.5 inline-block min-w-5 text-end text-xs font-normal text-soft">
                <span className="sr-only">Card </span>
                {student.cardNumber}
              </span>
              <Link className="link" href={routes.teacher.student(student.id)}>
                {student.displayName}
              </Link>
              {student.left ? <span className="ms-1 text-xs font-normal">left</span> : null}
            </th>
            {skills.map((skill) => (
              <td key={skill} className="px-1.5! align-middle text-xs">
                <Cell
                  student={student}
                  skill={skill}
                  standing={standingIn(student.standings, skill)}
                  signOff={student.signOff[skill]}
                />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

const standingIn = (standings: readonly SkillStanding[], skill: Skill) =>
  standings.find((standing) => standing.skill === skill);

/** How many have mastered it, and of how many a review is due. */
function Count({
  standings,
  signedOff,
}: {
  standings: readonly (SkillStanding | undefined)[];
  signedOff: number;
}) {
  const known = standings.filter((standing) => standing !== undefined);
  const mastered = known.filter(isMastered).length;
  const due = known.filter(({ state }) => state === 'review-due').length;
  return (
    <span className="mt-0.5 block text-xs font-normal text-soft">
      <span className="block whitespace-nowrap">{mastered} mastered</span>
      <span className="block whitespace-nowrap">
        {due === 0 ? '' : `${String(due)} of them due`}
      </span>
      <span className="block whitespace-nowrap">
        {signedOff === 0 ? '' : `${String(signedOff)} signed off`}
      </span>
    </span>
  );
}

function Cell({
  student,
  skill,
  standing,
  signOff,
}: {
  student: { id: string; displayName: string };
  skill: Skill;
  standing: SkillStanding | undefined;
  signOff: SignOffStanding | undefined;
}) {
  if (standing === undefined) return null;
  const { state, inARow } = standing;
  // An empty cell has nothing behind it: no way leads there, and the eye finds the others sooner.
  if (state === 'not-started' && signOff === undefined) {
    return (
      <span className="flex min-h-(--target-small) items-center">
        <SkillStateMark state={state} shown="" />
      </span>
    );
  }
  return (
    <Link
      href={routes.teacher.studentSkill(student.id, skill)}
      className="-mx-1 inline-flex min-h-(--target-small) items-center px-1 underline decoration-dotted underline-offset-4 hover:decoration-solid"
    >
      <span className="sr-only">
        {student.displayName}, {skillTitles[skill]}:{' '}
      </span>
      <span className="flex flex-col">
        <SkillStateMark state={state} shown={shortWord(state, inARow)} />
        {signOff === undefined ? null : <AtTheTelescope signOff={signOff} />}
      </span>
    </Link>
  );
}

/** Beside what was shown indoors: evenings at the real telescope, of the two it takes. */
function AtTheTelescope({ signOff }: { signOff: SignOffStanding }) {
  const { standing, evenings } = signOff;
  const gate = !standing.signedOff && standing.because === 'gate';
  return (
    <span className="inline-flex items-center gap-1 whitespace-nowrap">
      <Telescope aria-hidden="true" className="size-4 shrink-0" />
      <span className="sr-only">, at the telescope </span>
      {String(evenings)} of {String(observationsNeeded)}
      {standing.signedOff ? (
        <>
          <CircleCheck aria-hidden="true" className="size-3.5 shrink-0 text-good" />
          <span className="sr-only">, signed off</span>
        </>
      ) : null}
      {gate ? <span className="text-danger">gate</span> : null}
    </span>
  );
}

/** Twelve columns leave little room; the legend has the whole words. */
function shortWord(state: SkillState, inARow: number): string | undefined {
  switch (state) {
    case 'practising':
      return `${String(inARow)} of ${String(neededInARow)}`;
    case 'review-due':
      return 'review';
    case 'not-started':
      return '';
    default:
      return undefined;
  }
}
