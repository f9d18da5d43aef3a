import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { Suspense } from 'react';
import { FortnightTable } from '@/components/desk/night/fortnight-table';
import { NightForm } from '@/components/desk/night/night-form';
import { NightPlanView, NoEveningNotice } from '@/components/desk/night/night-plan-view';
import styles from '@/components/desk/night/paper.module.css';
import { OnThisPage } from '@/components/desk/night/on-this-page';
import { Reckoning } from '@/components/desk/night/reckoning';
import {
  dayInWords,
  noDarkFortnightText,
  noEveningText,
} from '@/components/desk/night/night-words';
import { PrintButton } from '@/components/ui/print-button';
import { TextLink } from '@/components/ui/text-link';
import { getNightPlan, type ClassNightPlan } from '@/lib/data/night-plan';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';

export const metadata: Metadata = { title: 'Night plan' };

export default async function NightPage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer } = await classOf(params);
  const asked = await searchParams;
  const read = await getNightPlan(viewer, details.id, asked);
  // What was asked for in vain is said beside the field; the plan is then of tonight.
  const shown = read.ok ? read : await getNightPlan(viewer, details.id, {});
  if (!shown.ok) notFound();
  const night = shown.value;
  const { siteId, placeName, localDate, endsAt, sites, otherTowns } = night;
  const { classNight, classFieldCards } = routes.teacher;
  const evening = { ends: endsAt, site: siteId };
  const key = `${siteId} ${localDate} ${endsAt}`;
  return (
    // The class's code has no business on a sheet that is carried about outside.
    <div data-card-sheet className={styles.sheet}>
      <OnThisPage />
      <NightForm
        {...{ sites, siteId, otherTowns, localDate, endsAt }}
        hrefFor={(site) => classNight(details.id, { date: localDate, ends: endsAt, site })}
        problem={
          read.ok ? null : { field: read.problem.field ?? '', message: read.problem.message }
        }
      />
      <div className="mb-4 flex flex-wrap items-baseline justify-between gap-3 print:mb-1">
        <h2 className="text-xl font-semibold">
          {dayInWords(localDate)}, {placeName}, until {endsAt}
        </h2>
        <p className="hidden text-sm print:block">Night plan · {details.name}</p>
        <span className="no-print flex flex-wrap items-baseline gap-x-5 gap-y-2">
          <TextLink href={classFieldCards(details.id, { date: localDate, ...evening })}>
            Field cards for this evening
          </TextLink>
          <PrintButton />
        </span>
      </div>
      <Suspense key={key} fallback={<Reckoning>Reckoning the evening …</Reckoning>}>
        <Plan night={night} />
      </Suspense>
      <section aria-labelledby="fortnight" className="mt-10 print:mt-0 print:break-before-page">
        <h2 id="fortnight" className="mb-2 scroll-mt-4 text-xl font-semibold">
          The coming two weeks
        </h2>
        <Suspense key={key} fallback={<Reckoning>Reckoning two weeks of Sun and Moon …</Reckoning>}>
          <TwoWeeks
            night={night}
            hrefFor={(date) => classNight(details.id, { date, ends: endsAt, site: siteId })}
          />
        </Suspense>
      </section>
    </div>
  );
}

async function Plan({ night: { plan, timeZone } }: { night: ClassNightPlan }) {
  const planned = await plan();
  return planned.ok ? (
    <NightPlanView plan={planned.plan} timeZone={timeZone} />
  ) : (
    <NoEveningNotice {...noEveningText[planned.reason]} />
  );
}

async function TwoWeeks({
  night: { fortnight, localDate, timeZone },
  hrefFor,
}: {
  night: ClassNightPlan;
  hrefFor: (localDate: string) => string;
}) {
  const { evenings, best, nextDark } = await fortnight();
  return (
    <>
      <p className="mb-2 max-w-measure text-sm text-soft">
        {best === null
          ? noDarkFortnightText(evenings, nextDark)
          : 'Dark: the Sun 12° down or more, until packing up. Darkest is the evening with the most of it without the Moon. The weather decides the rest.'}
      </p>
      <FortnightTable planned={localDate} {...{ evenings, best, timeZone, hrefFor }} />
    </>
  );
}
