import { TableFrame } from '@/components/ui/table-frame';
import { clockTime } from '@/lib/night/evening';
import type { PlannedPair } from '@/lib/night/night-pairs';
import type { LaterPair, PlannedHour } from '@/lib/night/plan-night';
import { spanInWords, whereInWords } from './night-words';

/** Hour by hour, the pair for each telescope and another one for when cloud comes. */
export function NightPairsTable({
  hours,
  goodLater,
  timeZone,
}: {
  hours: readonly PlannedHour[];
  /** Telescopes whose first pair is poor, with when a good one comes. */
  goodLater: readonly LaterPair[];
  timeZone: string;
}) {
  const kits = hours[0]?.pairs.map(({ kitName }) => kitName) ?? [];
  return (
    <TableFrame caption="Pairs hour by hour" captionHidden stickyFirstColumn tall>
      <thead>
        <tr>
          <th scope="col">From</th>
          {kits.map((kit) => (
            <th key={kit} scope="col">
              {kit}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {hours.map(({ instant, pairs }) => (
          <tr key={instant} className="align-top">
            <th scope="row" className="font-figures">
              {clockTime(instant, timeZone)}
            </th>
            {pairs.map(({ kitId, pairs: own }) => (
              <td key={kitId} className="min-w-56 print:min-w-0">
                {own.length === 0 ? <span className="text-soft">No pair</span> : null}
                <PoorYet later={laterThan(instant, kitId, goodLater)} timeZone={timeZone} />
                {own.map((pair, index) => (
                  <Pair key={pair.stars[0].hip} pair={pair} spare={index > 0} timeZone={timeZone} />
                ))}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

/** The good pair that this telescope should wait for at that hour; undefined where it need not. */
const laterThan = (
  instant: string,
  kitId: string,
  goodLater: readonly LaterPair[],
): LaterPair['later'] | undefined => {
  const late = goodLater.find((one) => one.kitId === kitId);
  if (late === undefined) return undefined;
  return late.later === null || instant < late.later.instant ? late.later : undefined;
};

function PoorYet({ later, timeZone }: { later: LaterPair['later'] | undefined; timeZone: string }) {
  if (later === undefined) return null;
  return (
    <p className="text-sm font-semibold text-caution">
      {later === null
        ? 'Poor, and nothing better comes'
        : `Poor: wait until ${clockTime(later.instant, timeZone)}, ${later.pair.stars.map(({ name }) => name).join(' and ')}`}
    </p>
  );
}

function Pair({ pair, spare, timeZone }: { pair: PlannedPair; spare: boolean; timeZone: string }) {
  return (
    <div
      className={spare ? 'keep-together mt-2 border-t border-line pt-1.5 text-sm' : 'keep-together'}
    >
      <p className="font-semibold">
        {spare ? <span className="font-normal text-soft">or </span> : null}
        {pair.stars.map(({ name }) => name).join(' and ')}
      </p>
      <ul className="text-sm text-soft">
        {pair.stars.map((star) => (
          <li key={star.hip}>
            {star.name}: {whereInWords(star)}
          </li>
        ))}
        <li className="font-figures">
          {Math.round(100 * pair.hitRate)} of 100 · {spanInWords(pair.from, pair.until, timeZone)}
        </li>
        {pair.lookAlikes.map((one) => (
          <li key={one} className="font-semibold text-caution">
            Do not take {one}
          </li>
        ))}
      </ul>
    </div>
  );
}
