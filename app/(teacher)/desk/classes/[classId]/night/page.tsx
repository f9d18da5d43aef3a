import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { FortnightTable } from '@/components/desk/night/fortnight-table';
import { NightForm } from '@/components/desk/night/night-form';
import { NightPlanView, NoEveningNotice } from '@/components/desk/night/night-plan-view';
import {
  dayInWords,
  noDarkFortnightText,
  noEveningText,
} from '@/components/desk/night/night-words';
import { PrintButton } from '@/components/ui/print-button';
import { TextLink } from '@/components/ui/text-link';
import { getNightPlan } from '@/lib/data/night-plan';
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
  const { siteId, placeName, timeZone, localDate, endsAt, plan, fortnight } = shown.value;
  const hrefFor = (date: string) =>
    routes.teacher.classNight(details.id, { date, ends: endsAt, site: siteId });
  return (
    <>
      <NightForm
        {...shown.value}
        hrefFor={(site) =>
          routes.teacher.classNight(details.id, { date: localDate, ends: endsAt, site })
        }
        problem={
          read.ok ? null : { field: read.problem.field ?? '', message: read.problem.message }
        }
      />
      <div className="mb-4 flex flex-wrap items-baseline justify-between gap-3">
        <p className="text-lg font-semibold">
          {dayInWords(localDate)}, {placeName}, until {endsAt}
        </p>
        <span className="no-print flex flex-wrap items-baseline gap-x-5 gap-y-2">
          <TextLink
            href={routes.teacher.classFieldCards(details.id, {
              date: localDate,
              ends: endsAt,
              site: siteId,
            })}
          >
            Field cards for this evening
          </TextLink>
          <PrintButton />
        </span>
      </div>
      {plan.ok ? (
        <NightPlanView plan={plan.plan} timeZone={timeZone} />
      ) : (
        <NoEveningNotice {...noEveningText[plan.reason]} />
      )}
      <section aria-labelledby="fortnight" className="mt-10 print:mt-6">
        <h2 id="fortnight" className="mb-2 text-xl font-semibold">
          The coming two weeks
        </h2>
        <p className="mb-2 max-w-measure text-sm text-soft">
          {fortnight.best === null
            ? noDarkFortnightText(fortnight.evenings, fortnight.nextDark)
            : 'Darkest is the evening with the most minutes between nautical dusk and packing up that are without the Moon. The weather decides the rest.'}
        </p>
        <FortnightTable
          evenings={fortnight.evenings}
          best={fortnight.best}
          planned={localDate}
          timeZone={timeZone}
          hrefFor={hrefFor}
        />
      </section>
    </>
  );
}
