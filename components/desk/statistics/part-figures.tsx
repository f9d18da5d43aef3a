import Link from 'next/link';
import { labText } from '@/components/grading/template-text';
import { Panel } from '@/components/ui/panel';
import { TableFrame } from '@/components/ui/table-frame';
import type { AssignmentStatistics, PartStatistics } from '@/lib/data/class-statistics';
import type { CriterionStatistics } from '@/lib/data/class-statistics-parts';
import { footingOf, type Footing } from '@/lib/measurement/small-class';
import { capitalised } from '@/lib/wording/capital';
import { routes } from '@/lib/routes';
import { AtTheTelescope } from './at-the-telescope';
import { OwnPassMark } from './own-pass-mark';
import { PartReliability } from './part-reliability';
import { criterionTitle, gateTitle } from './result-names';
import { ShareBar } from './share-bar';
import { countText, percentText } from './statistics-words';

type Student = { id: string; displayName: string };

/** One marked part of an assignment: its criteria, its gates, and how far its marks would come again. */
export function PartFiguresPanel({
  assignment,
  part,
  students,
}: {
  assignment: Pick<AssignmentStatistics, 'title' | 'parts' | 'passMark'>;
  part: PartStatistics;
  students: readonly Student[];
}) {
  const lab = labText[part.lab].name;
  const several = assignment.parts.length > 1;
  const title =
    several || assignment.title !== lab
      ? `${assignment.title}: ${lab}`
      : `${assignment.title}: what was marked`;
  const comparable = part.criteria.flatMap(({ id, possible }) =>
    possible === null ? [] : [{ id, possible, name: criterionTitle(part.lab, id) }],
  );
  return (
    <Panel level={4} title={title}>
      {part.people === 0 ? (
        <p className="text-soft">Nobody has handed it in yet.</p>
      ) : (
        <div className="space-y-4">
          {part.criteria.length === 0 ? null : <CriteriaTable part={part} title={title} />}
          <FailedGates part={part} students={students} />
          <PartReliability part={part} title={title} />
          <AtTheTelescope part={part} passMark={assignment.passMark} />
          {comparable.length < 2 ? null : (
            <OwnPassMark
              id={`own-${part.partId}`}
              title={title}
              passMark={assignment.passMark}
              criteria={comparable}
            />
          )}
        </div>
      )}
    </Panel>
  );
}

function CriteriaTable({ part, title }: { part: PartStatistics; title: string }) {
  const footing = footingOf(part.people);
  return (
    <TableFrame caption={`“${title}”, criterion by criterion, first attempts`} captionHidden tall>
      <thead>
        <tr>
          <th scope="col">What was marked</th>
          <th scope="col" className="w-2/5">
            {footing === 'counts-only' ? 'Full marks' : 'Share of its marks earned'}
          </th>
          <th scope="col">In numbers</th>
        </tr>
      </thead>
      <tbody>
        {part.criteria.map((criterion) => (
          <tr key={criterion.id}>
            <th scope="row">{criterionTitle(part.lab, criterion.id)}</th>
            <td className="align-middle!">
              <CriterionShare criterion={criterion} footing={footing} />
            </td>
            <td>
              {criterion.full} of {criterion.people} full
              {criterion.nothing === 0 ? '' : `, ${String(criterion.nothing)} nothing`}
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

function CriterionShare({
  criterion,
  footing,
}: {
  criterion: CriterionStatistics;
  footing: Footing;
}) {
  const share =
    footing === 'counts-only' ? criterion.full / criterion.people : criterion.difficulty;
  return (
    <span className="flex items-center gap-2">
      <ShareBar share={share} />
      {footing === 'counts-only' ? null : (
        <span className="number min-w-11 shrink-0">{percentText(share)}</span>
      )}
    </span>
  );
}

function FailedGates({ part, students }: { part: PartStatistics; students: readonly Student[] }) {
  if (part.gates.length === 0) return null;
  const names = new Map(students.map(({ id, displayName }) => [id, displayName]));
  return (
    <div>
      <h5 className="font-semibold">Safety gates failed at the first attempt</h5>
      <ul className="mt-1 list-disc space-y-1 ps-5">
        {part.gates.map(({ id, attempts }) => (
          <li key={id}>
            {capitalised(gateTitle(id))}: {countText(attempts.length, 'student')},{' '}
            {attempts.map(({ studentId, attemptId }, index) => (
              <span key={attemptId}>
                {index === 0 ? '' : ', '}
                <Link className="link" href={routes.teacher.attempt(attemptId)}>
                  {names.get(studentId) ?? 'a student'}
                </Link>
                {part.gateStandsFor.includes(studentId) ? ' (still stands)' : ''}
              </span>
            ))}
            .
          </li>
        ))}
      </ul>
    </div>
  );
}
