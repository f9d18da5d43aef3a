import { lookCost } from '@/lib/grading/grade-fault';
import { lookWords } from '@/components/lab/fault/evidence/look-words';
import type { FaultView } from '@/components/lab/fault/fault-view';
import type { FaultResult } from '@/lib/grading/fault-result';
import { faultCriterionInWords } from './fault-result-words';
import { markText } from '../mark-text';
import { MarksTable } from '../marks-table';

/** The mark part by part, and below it what each look cost. */
export function FaultResultMarks({ result, variant }: { result: FaultResult; variant: FaultView }) {
  const slew = variant.testSlews.find(({ hip }) => hip === result.testSlew);
  const costs = [
    ...result.looked.map((look) => ({ name: lookWords[look].title, marks: lookCost })),
    ...(slew === undefined ? [] : [{ name: `Test slew to ${slew.name}`, marks: lookCost }]),
  ];
  return (
    <MarksTable
      rows={result.criteria.map((criterion) => ({
        ...criterion,
        name: faultCriterionInWords(criterion, result),
        below:
          criterion.id === 'looks' && costs.length > 0 ? (
            <ul className="mt-1 text-sm font-normal text-soft">
              {costs.map(({ name, marks }) => (
                <li key={name} className="flex justify-between gap-4">
                  <span>{name}</span>
                  <span className="font-figures">−{markText(marks)}</span>
                </li>
              ))}
            </ul>
          ) : null,
      }))}
    />
  );
}
