import type { ReactNode } from 'react';
import { Notice } from '@/components/ui/notice';
import { SunCaution } from '@/components/ui/sun-caution';
import { clockTime } from '@/lib/night/evening';
import type { NightPlan } from '@/lib/night/plan-night';
import { EveningStrip } from './evening-strip';
import { NightPairsTable } from './night-pairs-table';
import { moonAllNight, nightHints, noSunsetText, percent, whereInWords } from './night-words';
import { ShowTable } from './show-table';

/** One evening: how it goes, what speaks for it, the pairs, what to show. */
export function NightPlanView({ plan, timeZone }: { plan: NightPlan; timeZone: string }) {
  const { evening, firstStar, twoStarsFrom, hours, goodLater, toShow } = plan;
  return (
    <div className="space-y-8">
      <Part title="The evening">
        <div className="overflow-x-auto">
          <EveningStrip {...{ evening, twoStarsFrom, timeZone }} />
        </div>
        <Times plan={plan} timeZone={timeZone} />
      </Part>
      <Part title="What speaks for it, and against">
        <ul className="max-w-measure space-y-1.5">
          {nightHints(plan, timeZone).map(({ tone, text, because }) => (
            <li key={text} className="grid grid-cols-[5.5rem_1fr] gap-x-3">
              <span className="font-semibold">{toneText[tone]}</span>
              <span>
                {text} <span className="text-sm text-soft">{because}</span>
              </span>
            </li>
          ))}
        </ul>
      </Part>
      <Part title="Pairs hour by hour">
        {hours.length === 0 ? (
          <p>No two stars can be used before packing up.</p>
        ) : (
          <>
            <p className="mb-2 max-w-measure text-sm text-soft">
              Of 100 targets all over the sky, how many land in the eyepiece; between the times both
              stars can be used, seen every ten minutes. The second pair shares no star with the
              first: for when cloud comes.
              {firstStar === null
                ? ''
                : ` The first star that can be used is ${firstStar.name} at ${clockTime(firstStar.instant, timeZone)}, ${whereInWords(firstStar)}.`}
            </p>
            <NightPairsTable hours={hours} goodLater={goodLater} timeZone={timeZone} />
          </>
        )}
      </Part>
      <Part title="What to show afterwards">
        <p className="mb-2 max-w-measure text-sm text-soft">
          {twoStarsFrom === null
            ? 'Moon and planets that stand two fists up and clear of your skyline: the eye finds them in twilight, and the telescope is steered there by hand.'
            : 'Times when each stands two fists up and clear of your skyline, once two stars can be used.'}
        </p>
        {toShow.length === 0 ? (
          <p>Nothing of our list stands two fists up this evening.</p>
        ) : (
          <ShowTable toShow={toShow} timeZone={timeZone} />
        )}
      </Part>
      <SunCaution />
    </div>
  );
}

const toneText = { go: '✓ For', careful: '! Mind', stop: '✗ Against' } as const;

function Part({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section aria-label={title}>
      <h2 className="mb-2 text-xl font-semibold">{title}</h2>
      {children}
    </section>
  );
}

function Times({ plan, timeZone }: { plan: NightPlan; timeZone: string }) {
  const { times, moon } = plan.evening;
  const allNight = moonAllNight(plan.evening);
  const polarNight = times.sunset === null;
  const at = (instant: string | null): string =>
    instant === null ? 'not tonight' : clockTime(instant, timeZone);
  const rows = [
    ['Sunset', polarNight ? noSunsetText['sun-stays-down'] : at(times.sunset)],
    ['Civil dusk, Sun 6° down', at(times.civilDusk)],
    ['Nautical dusk, Sun 12° down', at(times.nauticalDusk)],
    ['Astronomical dusk, Sun 18° down', at(times.astronomicalDusk)],
    ['Moon', `${percent(moon.illuminatedFraction)} lit${allNight === null ? '' : `, ${allNight}`}`],
    ...moon.passages.map(({ kind, instant }) => [
      kind === 'rise' ? 'Moonrise' : 'Moonset',
      at(instant),
    ]),
    ['Sunrise', at(times.sunrise)],
  ] as const;
  return (
    <dl className="mt-2 grid max-w-[40rem] gap-x-8 gap-y-0.5 text-sm sm:grid-cols-2">
      {rows.map(([what, when]) => (
        <div key={what} className="flex justify-between gap-4 border-b border-line py-0.5">
          <dt className="text-soft">{what}</dt>
          <dd className="font-figures">{when}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Where there is no evening to plan. */
export function NoEveningNotice({ title, text }: { title: string; text: string }) {
  return (
    <Notice tone="caution" title={title}>
      {text}
    </Notice>
  );
}
