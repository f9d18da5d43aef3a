import { TableFrame } from '@/components/ui/table-frame';
import { clockTime } from '@/lib/night/evening';
import type { PlannedPair } from '@/lib/night/night-pairs';
import type { PlannedHour } from '@/lib/night/plan-night';
import { spanInWords, whereInWords } from './night-words';

/** Hour by hour, the pair for each telescope and another one for when cloud comes. */
export function NightPairsTable({
  hours,
  timeZone,
}: {
  hours: readonly PlannedHour[];
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
              <td key={kitId} className="min-w-56">
                {own.length === 0 ? <span className="text-soft">No pair</span> : null}
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

function Pair({ pair, spare, timeZone }: { pair: PlannedPair; spare: boolean; timeZone: string }) {
  return (
    <div className={spare ? 'mt-2 border-t border-line pt-1.5 text-sm' : ''}>
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
