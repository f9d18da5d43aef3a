import { nearestSignpost } from '@/components/sky/directions';
import { nearlyZenithFists, toHalfFists } from '@/components/sky/position-words';
import { telescopeHours, type TelescopeHour } from '@/lib/night/card-pairs';
import { clockTime } from '@/lib/night/evening';
import type { PlannedPair } from '@/lib/night/night-pairs';
import { goodHitRate, type LaterPair, type NightPlan } from '@/lib/night/plan-night';
import { fistsInFigures } from '../print/card-words';
import { whereInWords } from './night-words';

type Plan = Pick<NightPlan, 'hours' | 'goodLater'>;

/**
 * One telescope's evening: the pair for each hour and another for when cloud comes. Narrow enough for a
 * phone in one hand, and for three of them side by side on a sheet of paper.
 */
export function TelescopeHoursTable({
  plan,
  kit: { kitId, kitName },
  timeZone,
}: {
  plan: Plan;
  kit: { kitId: string; kitName: string };
  timeZone: string;
}) {
  const late = plan.goodLater.find((one) => one.kitId === kitId);
  return (
    <section aria-labelledby={`pairs-${kitId}`} className="border-t-2 border-strong">
      <div className="flex flex-wrap items-baseline justify-between gap-x-4 pt-1.5 print:pt-0.5">
        <h4
          id={`pairs-${kitId}`}
          className="scroll-mt-4 text-lg leading-tight font-semibold print:text-base"
        >
          {kitName}
        </h4>
        {late === undefined ? null : <Late later={late.later} timeZone={timeZone} />}
      </div>
      <table className="w-full table-fixed border-collapse text-sm leading-snug print:text-[7.8pt] print:leading-tight">
        <caption className="sr-only">{kitName}, hour by hour</caption>
        <thead>
          <tr className="border-b border-strong text-soft">
            <th
              scope="col"
              className="w-[3.6em] py-1 text-start print:w-[3.4em] print:py-0 font-normal"
            >
              From
            </th>
            <th scope="col" className="py-1 pe-2 text-start font-normal print:py-0 print:pe-1">
              Align on
            </th>
            <th scope="col" className="py-1 text-start font-normal print:py-0">
              If cloud comes
            </th>
          </tr>
        </thead>
        <tbody>
          {telescopeHours(plan, kitId).map((hour) => (
            <Row key={hour.instant} hour={hour} timeZone={timeZone} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Late({ later, timeZone }: { later: LaterPair['later']; timeZone: string }) {
  return (
    <p className="text-sm font-semibold text-caution print:text-xs">
      {later === null
        ? 'No good pair this evening: centre twice as carefully.'
        : `Poor at first: wait until ${clockTime(later.instant, timeZone)}.`}
    </p>
  );
}

function Row({
  hour: { instant, pair, spare },
  timeZone,
}: {
  hour: TelescopeHour;
  timeZone: string;
}) {
  return (
    <tr className="border-b border-line align-top last:border-b-0">
      <th
        scope="row"
        className="py-1.5 text-start font-figures text-base leading-snug font-semibold print:py-0.5 print:text-[8.6pt]"
      >
        {clockTime(instant, timeZone)}
      </th>
      <td className="py-1.5 pe-2 print:py-0.5 print:pe-1">
        {pair === null ? 'no pair' : <Pair pair={pair} timeZone={timeZone} />}
      </td>
      <td className="py-1.5 text-soft print:py-0.5">
        {spare === null ? 'no other' : <Pair pair={spare} timeZone={timeZone} />}
      </td>
    </tr>
  );
}

function Pair({ pair, timeZone }: { pair: PlannedPair; timeZone: string }) {
  const share = Math.round(100 * pair.hitRate);
  return (
    <ul>
      {pair.stars.map((star) => (
        <li key={star.hip}>
          <span className="font-semibold">{star.name}</span> <Where star={star} />
        </li>
      ))}
      <li className="font-figures text-soft">
        {pair.hitRate < goodHitRate ? <strong className="text-caution">poor, </strong> : null}
        {share}
        <span className="sr-only"> of 100</span> · to {clockTime(pair.until, timeZone)}
      </li>
      {pair.lookAlikes.map((one) => (
        <li key={one} className="font-semibold text-caution">
          not {one}
        </li>
      ))}
    </ul>
  );
}

/** "4½ SW": read in full by a screen reader. */
function Where({ star }: { star: { azimuthDeg: number; altitudeDeg: number } }) {
  const fistsUp = toHalfFists(star.altitudeDeg);
  return (
    <span className="whitespace-nowrap font-figures">
      <span aria-hidden="true">
        {fistsUp >= nearlyZenithFists
          ? 'overhead'
          : `${fistsInFigures(fistsUp)} ${nearestSignpost(star.azimuthDeg).sign}`}
      </span>
      <span className="sr-only">{whereInWords(star)}</span>
    </span>
  );
}
