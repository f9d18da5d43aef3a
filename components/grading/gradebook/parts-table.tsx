import { TableFrame } from '@/components/ui/table-frame';
import { TextLink } from '@/components/ui/text-link';
import type { GradebookCell } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { markText } from '../mark-text';
import { labText } from '../template-text';

const stateWords: Readonly<Record<GradebookCell['parts'][number]['state'], string>> = {
  'not-started': 'not started',
  open: 'under way',
  submitted: 'handed in, not marked',
  marked: 'marked',
  returned: 'given back',
};

/** Of an assignment with several parts, what each adds to the mark. */
export function PartsTable({ parts }: { parts: GradebookCell['parts'] }) {
  return (
    <TableFrame caption="The parts of the mark" captionHidden tall>
      <thead>
        <tr>
          <th scope="col">Part</th>
          <th scope="col">State</th>
          <th scope="col" className="number">
            Mark
          </th>
          <th scope="col" className="number">
            Weight
          </th>
        </tr>
      </thead>
      <tbody>
        {parts.map((part) => (
          <tr key={part.partId}>
            <th scope="row">
              {part.countedAttemptId === null ? (
                labText[part.lab].name
              ) : (
                <TextLink href={routes.teacher.attempt(part.countedAttemptId)}>
                  {labText[part.lab].name}
                </TextLink>
              )}
            </th>
            <td>
              {stateWords[part.state]}
              {part.gateFailed ? ', safety gate failed' : ''}
            </td>
            <td className="number">{part.mark === null ? '' : markText(part.mark)}</td>
            <td className="number">{part.weight}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
