import { Fragment } from 'react';
import { TableFrame } from '@/components/ui/table-frame';
import { errorInWords } from '@/components/grading/pair/pair-result-words';
import { markText } from '@/components/grading/mark-text';
import type { AnswerKey, AnswerKeyStar } from '@/lib/pointing/answer-key';
import { geometryFullMark, starMark } from '@/lib/pointing/pair-mark';
import { cautionText, reasonText, temptingStars } from './reason-text';

/** As many as a teacher reads; the rest are told by number. */
const shownPairs = 12;

export function BestPairsTable({ answerKey }: { answerKey: AnswerKey }) {
  const names = new Map(answerKey.stars.map((star) => [star.hip, star.name]));
  const nameOf = (hip: number): string => names.get(hip) ?? `HIP ${hip}`;
  const { pairs } = answerKey;
  return (
    <TableFrame
      tall
      caption={
        pairs.length > shownPairs
          ? `The best ${shownPairs} of ${pairs.length} usable pairs, and the worst`
          : `All ${pairs.length} usable pairs, best first`
      }
    >
      <thead>
        <tr>
          <th scope="col" className="number">
            Rank
          </th>
          <th scope="col">Pair</th>
          <th scope="col" className="number">
            Apart
          </th>
          <th scope="col" className="number">
            Expected error
          </th>
          <th scope="col" className="number">
            In the eyepiece
          </th>
          <th scope="col" className="number">
            Mark
          </th>
        </tr>
      </thead>
      <tbody>
        {pairs.map((pair, index) =>
          index < shownPairs || index === pairs.length - 1 ? (
            <Fragment key={pair.stars.join(' ')}>
              {index > shownPairs ? <LeftOutRow count={index - shownPairs} /> : null}
              <tr>
                <td className="number">{index + 1}</td>
                <th scope="row">
                  {nameOf(pair.stars[0])} and {nameOf(pair.stars[1])}
                </th>
                <td className="number">{pair.separationDeg.toFixed(0)}°</td>
                <td className="number">
                  {pair.expectedErrorArcmin === null
                    ? 'not determined'
                    : errorInWords(pair.expectedErrorArcmin)}
                </td>
                <td className="number">{(pair.hitRate * 100).toFixed(0)} of 100</td>
                <td className="number">{markText(pair.mark)}</td>
              </tr>
            </Fragment>
          ) : null,
        )}
      </tbody>
    </TableFrame>
  );
}

/** Between the best pairs and the worst one, so that it does not read as the next in rank. */
function LeftOutRow({ count }: { count: number }) {
  return (
    <tr>
      <td className="number">…</td>
      <td colSpan={5} className="text-soft">
        {count} more {count === 1 ? 'pair' : 'pairs'} in between
      </td>
    </tr>
  );
}

/** How a pair comes to its mark, for whoever wonders why the worst one earns something. */
export function MarkNote({ answerKey }: { answerKey: AnswerKey }) {
  if (answerKey.pairs.length === 0) return null;
  return (
    <p className="max-w-measure text-sm text-soft">
      A mark is relative. Each of the two stars earns {starMark} if it may serve. How they lie to
      each other earns up to {geometryFullMark} more, by the share “in the eyepiece”: nothing at
      half the best share or less, and only if both may serve. The pairs listed are all of two
      usable stars, so even the worst earns no less than {2 * starMark}.
    </p>
  );
}

export function UsableStarsTable({ answerKey }: { answerKey: AnswerKey }) {
  const usable = answerKey.stars
    .filter((star) => star.usable)
    .toSorted((a, b) => a.magnitude - b.magnitude);
  return (
    <StarTable
      caption={`${usable.length} usable ${usable.length === 1 ? 'star' : 'stars'}`}
      stars={usable}
      lastHead="Could be taken for it"
      lastCell={(star) =>
        star.cautions.length === 0 ? '' : star.cautions.map(cautionText).join('; ')
      }
    />
  );
}

export function TemptingStarsTable({ answerKey }: { answerKey: AnswerKey }) {
  const stars = temptingStars(answerKey.stars);
  return (
    <StarTable
      caption={`${stars.length} bright ${stars.length === 1 ? 'star that does' : 'stars that do'} not serve`}
      stars={stars}
      lastHead="Why not"
      lastCell={(star) => star.reasons.map(reasonText).join('; ')}
    />
  );
}

function StarTable({
  caption,
  stars,
  lastHead,
  lastCell,
}: {
  caption: string;
  stars: readonly AnswerKeyStar[];
  lastHead: string;
  lastCell: (star: AnswerKeyStar) => string;
}) {
  return (
    <TableFrame caption={caption} tall>
      <thead>
        <tr>
          <th scope="col">Star</th>
          <th scope="col" className="number">
            Azimuth
          </th>
          <th scope="col" className="number">
            Altitude
          </th>
          <th scope="col" className="number">
            Magnitude
          </th>
          <th scope="col">{lastHead}</th>
        </tr>
      </thead>
      <tbody>
        {stars.map((star) => (
          <tr key={star.hip}>
            <th scope="row">{star.name}</th>
            <td className="number">{star.azimuthDeg.toFixed(0)}°</td>
            <td className="number">{star.altitudeDeg.toFixed(0)}°</td>
            <td className="number">{star.magnitude.toFixed(1)}</td>
            <td className="min-w-56">{lastCell(star)}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
