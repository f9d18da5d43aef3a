import { clockTime, type Evening } from '@/lib/night/evening';
import { moonAllNight, noSunsetText, percent } from './night-words';

/** Dusk, Moon and dawn of an evening by the clock on the wall. */
export function EveningTimes({ evening, timeZone }: { evening: Evening; timeZone: string }) {
  const { times, moon } = evening;
  const allNight = moonAllNight(evening);
  const at = (instant: string | null): string =>
    instant === null ? 'not tonight' : clockTime(instant, timeZone);
  const rows = [
    ['Sunset', times.sunset === null ? noSunsetText['sun-stays-down'] : at(times.sunset)],
    ['Civil dusk, Sun 6° down', at(times.civilDusk)],
    ['Nautical dusk, 12° down', at(times.nauticalDusk)],
    ['Astronomical dusk, 18° down', at(times.astronomicalDusk)],
    ['Moon', `${percent(moon.illuminatedFraction)} lit${allNight === null ? '' : `, ${allNight}`}`],
    ...moon.passages.map(({ kind, instant }) => [
      kind === 'rise' ? 'Moonrise' : 'Moonset',
      at(instant),
    ]),
    ['Sunrise', at(times.sunrise)],
  ] as const;
  return (
    <dl className="mt-2 grid max-w-[40rem] gap-x-6 gap-y-0.5 text-sm sm:grid-cols-2 print:grid-cols-[3fr_4fr] print:gap-x-4 print:gap-y-0 print:text-xs">
      {rows.map(([what, when]) => (
        <div
          key={what}
          className="flex justify-between gap-4 border-b border-line py-0.5 print:py-0"
        >
          <dt className="text-soft">{what}</dt>
          <dd className="font-figures">{when}</dd>
        </div>
      ))}
    </dl>
  );
}
