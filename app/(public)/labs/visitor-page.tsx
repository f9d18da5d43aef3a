import { randomUUID } from 'node:crypto';
import { redirect } from 'next/navigation';
import type { ReactNode } from 'react';
import { labText } from '@/components/grading/template-text';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { SunCaution } from '@/components/ui/sun-caution';
import { visitorMayMakeRound } from '@/lib/auth/session';
import { loadKits, loadSites } from '@/lib/content/sky-catalogue';
import { defaultPlace } from '@/lib/data/default-evening';
import type { Place } from '@/lib/data/places';
import { getPlace } from '@/lib/data/places';
import type { VisitorRound } from '@/lib/data/practice-round';
import { makeFirstVisitorRound, makeVisitorRound } from '@/lib/data/practice-round';
import { routes } from '@/lib/routes';
import type { Lab, Template } from '@/lib/variants/labs';
import { findPlacesForVisitor } from './find-places';
import { tooManyRounds } from './grade-round';
import type { RoundAddress } from './round-address';
import { readRoundAddress, roundAddress } from './round-address';
import { RoundForm } from './round-form';

export type VisitorPageProps = {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

/** Where a round leads to: itself, the same on another evening, and what it was made of. */
export type RoundLinks = { address: string; nextAddress: string; setUpAddress: string };

type RoundTask<Variant> = Parameters<typeof makeVisitorRound<Variant>>[0] & { lab: Lab };

/**
 * A lab's page for visitors: without a seed the form, with one the round that it makes. For what the
 * form sends a first round is drawn.
 */
export async function VisitorPage<Variant extends { lab: Lab; template: Template }>({
  task,
  lead,
  searchParams,
  children,
}: VisitorPageProps & {
  /** The lab's entry in `labTasks`. */
  task: RoundTask<Variant>;
  lead: string;
  children: (round: VisitorRound<Variant> & { kitName: string }, links: RoundLinks) => ReactNode;
}) {
  const { lab } = task;
  const address = readRoundAddress(await searchParams);
  const { seed, isFirst } = address;
  if (seed === undefined && !isFirst) return <SetUp {...{ lab, lead, address }} problem={null} />;
  if (!(await visitorMayMakeRound()))
    return <SetUp {...{ lab, lead, address }} problem={tooManyRounds} />;
  const made =
    seed === undefined
      ? await makeFirstVisitorRound<Variant>(task, given(address), newSeed)
      : await makeVisitorRound<Variant>(task, { ...given(address), seed });
  if (!made.ok) return <SetUp {...{ lab, lead, address }} problem={made.problem.message} />;
  const round = made.value;
  // The address then names every choice, so that the round is the same tomorrow.
  if (isFirst || address.placeId === undefined || address.localTime === undefined)
    redirect(roundAddress(lab, round));
  const kitName = loadKits().find((kit) => kit.id === round.kitId)?.name ?? round.kitId;
  return (
    <div className="-mx-4 -mt-6 -mb-16 sm:-mx-6 sm:-mt-8">
      {children(
        { ...round, kitName },
        {
          address: roundAddress(lab, round),
          nextAddress: roundAddress(lab, { ...round, seed: newSeed() }),
          setUpAddress: routes.labs.one(lab, {
            kit: round.kitId,
            site: round.siteId,
            place: round.placeId,
            time: round.localTime,
          }),
        },
      )}
    </div>
  );
}

/** What of a round goes back to the server with the answer: its address, no more. */
export const addressOf = ({
  seed,
  kitId,
  siteId,
  placeId,
  localTime,
}: Omit<VisitorRound<unknown>, 'variant' | 'placeName'>) => ({
  seed,
  kitId,
  siteId,
  placeId,
  localTime,
});

const newSeed = (): string => randomUUID().replaceAll('-', '').slice(0, 12);

/** Only what the address holds: the round's maker fills in the rest. */
const given = ({ kitId, siteId, placeId, localTime }: RoundAddress) => ({
  ...(kitId === undefined ? {} : { kitId }),
  ...(siteId === undefined ? {} : { siteId }),
  ...(placeId === undefined ? {} : { placeId }),
  ...(localTime === undefined ? {} : { localTime }),
});

async function SetUp({
  lab,
  lead,
  address,
  problem,
}: {
  lab: Lab;
  lead: string;
  address: RoundAddress;
  problem: string | null;
}) {
  const { placeId } = address;
  const place: Place | null =
    placeId === undefined || placeId === defaultPlace.id ? defaultPlace : await getPlace(placeId);
  const kits = loadKits();
  const sites = loadSites();
  return (
    <>
      <PageHeader title={labText[lab].name} lead={lead} />
      {problem === null ? null : (
        <Notice tone="danger" title="This round cannot be made" live="alert" className="mb-6">
          {problem}
        </Notice>
      )}
      <div className="grid gap-x-16 gap-y-10 lg:grid-cols-[minmax(0,34rem)_minmax(0,24rem)]">
        <RoundForm
          action={routes.labs.one(lab)}
          kits={kits}
          sites={sites}
          chosen={{
            kitId: kits.find((kit) => kit.id === address.kitId)?.id ?? kits[0]?.id ?? '',
            siteId: sites.find((site) => site.id === address.siteId)?.id ?? 'school-yard',
            placeId: place === null ? undefined : placeId,
            localTime: address.localTime?.slice(0, 16),
          }}
          placeName={(place ?? defaultPlace).name}
          findPlaces={findPlacesForVisitor}
        />
        <aside className="space-y-5">
          <p className="max-w-measure">
            No account is needed. The round is in the page’s address: reload it and it is still
            there. Nothing about you is kept.
          </p>
          <SunCaution />
        </aside>
      </div>
    </>
  );
}
