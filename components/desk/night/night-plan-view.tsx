import type { ReactNode } from 'react';
import { Notice } from '@/components/ui/notice';
import { SunCaution } from '@/components/ui/sun-caution';
import { clockTime } from '@/lib/night/evening';
import type { NightPlan } from '@/lib/night/plan-night';
import { EveningStrip } from './evening-strip';
import { EveningTimes } from './evening-times';
import { nightHints, whereInWords } from './night-words';
import { jumpLook } from './on-this-page';
import { ShowTable } from './show-table';
import { TelescopeHoursTable } from './telescope-hours-table';

/** One evening: how it goes, what speaks for it, the pairs, what to show. */
export function NightPlanView({ plan, timeZone }: { plan: NightPlan; timeZone: string }) {
  const { evening, twoStarsFrom, hours, toShow } = plan;
  const kits = hours[0]?.pairs ?? [];
  return (
    <div className="space-y-8 print:space-y-2.5">
      <SunCaution short outside className="mb-3 print:mb-1" />
      <div className="grid gap-x-10 gap-y-6 lg:grid-cols-2 print:grid-cols-2 print:gap-x-6">
        <Part id="evening" title="The evening">
          <EveningStrip {...{ evening, twoStarsFrom, timeZone }} />
          <EveningTimes evening={evening} timeZone={timeZone} />
        </Part>
        <Part id="for-and-against" title="What speaks for it, and against">
          <ul className="max-w-measure space-y-1.5 print:space-y-0.5 print:text-xs">
            {nightHints(plan, timeZone).map(({ tone, text, because }) => (
              <li key={text} className="grid grid-cols-[4.4rem_1fr] gap-x-3">
                <span className="font-semibold">{toneText[tone]}</span>
                <span>
                  {text} <span className="text-sm text-soft print:hidden">{because}</span>
                </span>
              </li>
            ))}
          </ul>
        </Part>
      </div>
      <Part id="pairs" title="Pairs hour by hour">
        {kits.length === 0 ? (
          <p>No two stars can be used before packing up.</p>
        ) : (
          <>
            <PairsLegend plan={plan} timeZone={timeZone} />
            <TelescopesNav kits={kits} />
            <div className={`grid gap-x-8 gap-y-7 print:gap-x-3.5 ${sideBySide(kits.length)}`}>
              {kits.map((kit) => (
                <TelescopeHoursTable key={kit.kitId} {...{ plan, kit, timeZone }} />
              ))}
            </div>
          </>
        )}
      </Part>
      <Part id="show" title="What to show afterwards">
        <p className="mb-2 max-w-measure text-sm text-soft print:mb-1 print:max-w-none print:text-xs">
          {twoStarsFrom === null
            ? 'Moon and planets that stand two fists up and clear of your skyline: the eye finds them in twilight, and the telescope is steered there by hand.'
            : 'Whatever stands two fists up and clear of your skyline once two stars can be used, at its best; clusters once the Sun is 12° down.'}
        </p>
        {toShow.length === 0 ? (
          <p>Nothing of our list stands two fists up this evening.</p>
        ) : (
          <ShowTable
            toShow={toShow}
            kits={kits.map(({ kitName }) => kitName)}
            timeZone={timeZone}
          />
        )}
      </Part>
    </div>
  );
}

const toneText = { go: '✓ For', careful: '! Mind', stop: '✗ Against' } as const;

/** On a phone one stands by one telescope: straight to its hours. */
function TelescopesNav({ kits }: { kits: readonly { kitId: string; kitName: string }[] }) {
  return (
    <nav aria-label="Telescopes" className="no-print mb-4 sm:hidden">
      <ul className="flex flex-wrap gap-2">
        {kits.map(({ kitId, kitName }) => (
          <li key={kitId} className="min-w-20 flex-1">
            <a href={`#pairs-${kitId}`} className={jumpLook}>
              {kitName}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** The telescopes beside each other where they fit, always so on paper. */
const sideBySide = (telescopes: number): string =>
  telescopes > 3
    ? 'sm:grid-cols-2 xl:grid-cols-4 print:grid-cols-4'
    : 'sm:grid-cols-2 lg:grid-cols-3 print:grid-cols-3';

function PairsLegend({ plan: { firstStar }, timeZone }: { plan: NightPlan; timeZone: string }) {
  return (
    <p className="mb-3 max-w-measure text-sm text-soft print:mb-1 print:max-w-none print:text-xs">
      “4½ SW” is four and a half fists up in the south-west. The number below is how many of 100
      targets all over the sky land in the eyepiece, then until when both stars can be used.
      {firstStar === null
        ? ''
        : ` The first star that can be used is ${firstStar.name} at ${clockTime(firstStar.instant, timeZone)}, ${whereInWords(firstStar)}.`}
    </p>
  );
}

function Part({ id, title, children }: { id: string; title: string; children: ReactNode }) {
  return (
    <section aria-labelledby={id}>
      <h3 id={id} className="mb-2 scroll-mt-4 text-xl font-semibold print:mb-0.5 print:text-base">
        {title}
      </h3>
      {children}
    </section>
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
