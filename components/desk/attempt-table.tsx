import { lowerFirst } from '@/lib/wording/capital';
import { TableFrame } from '@/components/ui/table-frame';
import { TextLink } from '@/components/ui/text-link';
import { markText } from '@/components/grading/mark-text';
import type { StudentRecord } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { labText, templateText } from '@/components/grading/template-text';
import { zonedTimeText } from '@/components/grading/zoned-time';

const kindOf = ({ lab, template }: StudentRecord['attempts'][number]): string =>
  `${labText[lab].name}: ${lowerFirst(templateText(lab, template).name)}`;

/** Attempts of one student, each a way to what was picked. */
export function AttemptTable({
  caption,
  attempts,
  timeZone,
}: {
  caption: string;
  attempts: StudentRecord['attempts'];
  timeZone: string;
}) {
  if (attempts.length === 0) return <p className="text-sm text-soft">None yet.</p>;
  return (
    <TableFrame caption={caption} captionHidden tall>
      <thead>
        <tr>
          <th scope="col" className="number">
            Attempt
          </th>
          <th scope="col">Kind of task</th>
          <th scope="col">Submitted</th>
          <th scope="col" className="number">
            Mark
          </th>
          <th scope="col" className="number">
            After lateness
          </th>
        </tr>
      </thead>
      <tbody>
        {attempts.map((attempt) => (
          <tr key={attempt.attemptId}>
            <td className="number">{attempt.number}</td>
            <th scope="row" className="min-w-40">
              {attempt.submittedAt === null ? (
                kindOf(attempt)
              ) : (
                <TextLink href={routes.teacher.attempt(attempt.attemptId)}>
                  {kindOf(attempt)}
                </TextLink>
              )}
              {attempt.mode === 'practice' && attempt.assignmentTitle !== null ? (
                <span className="block font-normal text-soft">for {attempt.assignmentTitle}</span>
              ) : null}
            </th>
            <td className="min-w-32">
              {attempt.submittedAt === null
                ? 'still open'
                : zonedTimeText(attempt.submittedAt, timeZone)}
              {attempt.late ? <span className="text-caution">, late</span> : null}
            </td>
            <td className="number">{attempt.mark === null ? '' : markText(attempt.mark)}</td>
            <td className="number">
              {attempt.countedMark === null ? '' : markText(attempt.countedMark)}
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
