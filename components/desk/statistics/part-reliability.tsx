import { TableFrame } from '@/components/ui/table-frame';
import { markText } from '@/components/grading/mark-text';
import type { PartStatistics } from '@/lib/data/class-statistics';
import { footingOf } from '@/lib/measurement/small-class';
import { openOnPaper } from './open-on-paper';
import { criterionTitle } from './result-names';
import { coefficientText, percentText, reliabilitySentences, tooFewText } from './statistics-words';

/** How far the marks of one part would come again: sentences first, coefficients behind a disclosure. */
export function PartReliability({ part, title }: { part: PartStatistics; title: string }) {
  const { reliability: found } = part;
  const footing = footingOf(part.people);
  const shown = found !== null && footing !== 'counts-only';
  return (
    <div className={footing === 'enough' ? '' : 'text-soft'}>
      <h5 className="font-semibold">How far to rely on these marks</h5>
      {shown && footing === 'too-few-to-trust' ? (
        <p className="text-sm italic">
          From {found.people} students: {tooFewText}.
        </p>
      ) : null}
      {reliabilitySentences(part).map((sentence) => (
        <p key={sentence} className="max-w-measure text-sm">
          {sentence}
        </p>
      ))}
      {shown ? (
        <details className={`mt-1 text-sm ${openOnPaper}`}>
          <summary className="link inline-flex min-h-(--target-small) items-center">
            The coefficients<span className="sr-only">: {title}</span>
          </summary>
          <dl className="mt-1 grid max-w-measure grid-cols-[1fr_auto] gap-x-4">
            <Row name="Students" value={String(found.people)} />
            <Row
              name={found.from === 'own-questions' ? 'Questions each' : 'Criteria'}
              value={String(found.items)}
            />
            <Row name="Mean mark" value={markText(found.mean)} />
            <Row name="Standard deviation (n − 1)" value={markText(found.deviation)} />
            <Row
              name={
                found.from === 'own-questions'
                  ? 'Reliability of the mean, each with other questions'
                  : found.kr20 === null
                    ? 'Cronbach’s α'
                    : 'Cronbach’s α of the points'
              }
              value={coefficientText(found.reliability)}
            />
            {found.kr20 === null ? null : (
              <Row
                name="KR-20, each criterion right or wrong"
                value={coefficientText(found.kr20)}
              />
            )}
            {found.kr21 === null ? null : (
              <Row name="KR-21, as if all were equally hard" value={coefficientText(found.kr21)} />
            )}
            <Row name="Standard error of measurement, marks" value={markText(found.error)} />
          </dl>
          {part.criteria.length === 0 ? null : <CriteriaApart part={part} title={title} />}
          {found.from === 'own-questions' ? (
            <p className="mt-1 max-w-measure text-xs">
              Every student was asked other questions, so that differences between questions count
              as error here. With the same questions for all the figure would be higher.
            </p>
          ) : null}
        </details>
      ) : null}
    </div>
  );
}

function Row({ name, value }: { name: string; value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd className="text-end font-semibold tabular-nums">{value}</dd>
    </>
  );
}

/** How each criterion goes with the others. */
function CriteriaApart({ part, title }: { part: PartStatistics; title: string }) {
  return (
    <TableFrame
      tall
      className="mt-2"
      caption={
        <>
          How each criterion goes with the others (r), itself left out and included, and by how much
          of its marks the best 27 % are ahead of the weakest
          <span className="sr-only">: {title}</span>
        </>
      }
    >
      <thead>
        <tr>
          <th scope="col">Criterion</th>
          <th scope="col" className="number">
            Left out
          </th>
          <th scope="col" className="number">
            Included
          </th>
          <th scope="col" className="number">
            Ahead
          </th>
        </tr>
      </thead>
      <tbody>
        {part.criteria.map(({ id, itemRest, itemTotal, upperLower }) => (
          <tr key={id}>
            <th scope="row">{criterionTitle(part.lab, id)}</th>
            <td className="number">{itemRest === null ? '–' : coefficientText(itemRest)}</td>
            <td className="number">{itemTotal === null ? '–' : coefficientText(itemTotal)}</td>
            <td className="number">{upperLower === null ? '–' : percentText(upperLower)}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
