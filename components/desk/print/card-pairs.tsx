import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import type { FieldCard } from '@/lib/data/field-cards';
import { clockTime } from '@/lib/night/evening';
import type { CardPair } from '@/lib/night/plan-night';
import type { SkylinePoint } from '@/lib/sky/horizon';
import { spanInWords } from '../night/night-words';
import { cardDirection } from './card-words';
import { FistPanorama } from './fist-panorama';

/** As many hours as a side takes on the shorter of the two papers. */
const mostRows = 7;

/** Tonight's pairs of one telescope, with where they stand and for how long. */
export function CardPairs({
  name,
  card: { pairs },
  night: { horizon, timeZone },
  stars,
}: {
  /** Of the card. */
  name: string;
  card: Pick<FieldCard, 'pairs'>;
  night: { horizon: readonly SkylinePoint[]; timeZone: string };
  stars: readonly SkyPictureStar[];
}) {
  const [first] = pairs;
  if (first === undefined) {
    return (
      <p>No two stars can be used before packing up: this evening is for the Moon and the eye.</p>
    );
  }
  const shown = pairs.slice(0, mostRows);
  const begins = clockTime(first.instant, timeZone);
  return (
    <>
      <div
        role="region"
        aria-label={`Drawing of the sky, ${name}`}
        // A region that scrolls must be reachable by keyboard (2.1.1).
        // eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex
        tabIndex={0}
        className="overflow-x-auto print:overflow-visible"
      >
        <FistPanorama
          title={`The way round the horizon at ${begins}, in fists. In squares: ${namesOf(first.pair)}.`}
          {...{ stars, horizon, pair: first.pair, spare: first.spare }}
        />
      </div>
      <p className="mb-2">
        The sky at {begins}. Squares: the pair. Rings: the spare pair. One step of the grid is a
        fist at arm’s length. Below, each direction is for the time on its left.
      </p>
      <table className="w-full border-collapse">
        <caption className="sr-only">Pairs to align on, hour by hour</caption>
        <thead>
          <tr className="border-b-2 border-ink text-start">
            <th scope="col" className="w-14 text-start">
              From
            </th>
            <th scope="col" className="text-start">
              Align on
            </th>
            <th scope="col" className="text-start">
              If cloud comes
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ instant, pair, spare }) => (
            <tr key={instant} className="border-b border-ink align-top">
              <th scope="row" className="py-1 pe-2 text-start font-figures text-lg font-bold">
                {clockTime(instant, timeZone)}
              </th>
              <td className="w-[48%] py-1 pe-3">
                <PairLines pair={pair} timeZone={timeZone} />
              </td>
              <td className="py-1">
                {spare === null ? 'no other' : <PairLines pair={spare} timeZone={timeZone} />}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {pairs.length > shown.length ? (
        <p className="mt-1">Later pairs: see the night plan.</p>
      ) : null}
    </>
  );
}

const namesOf = (pair: CardPair['pair']): string =>
  pair.stars.map(({ name }) => name).join(' and ');

function PairLines({ pair, timeZone }: { pair: CardPair['pair']; timeZone: string }) {
  return (
    <ul>
      {pair.stars.map((star) => (
        <li key={star.hip}>
          <strong className="font-black">{star.name}</strong> {cardDirection(star)}
        </li>
      ))}
      <li>
        {spanInWords(pair.from, pair.until, timeZone)} · {Math.round(100 * pair.hitRate)} of 100
      </li>
      {pair.lookAlikes.map((one) => (
        <li key={one}>Do not take {one}</li>
      ))}
    </ul>
  );
}
