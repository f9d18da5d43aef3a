import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { pairLabSky } from '@/components/lab/pair/pair-lab-sky';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { SunCaution } from '@/components/ui/sun-caution';
import { loadKits, loadSites } from '@/lib/content/sky-catalogue';
import { defaultPlace } from '@/lib/data/default-evening';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { getPlace } from '@/lib/data/places';
import { makeVisitorRound } from '@/lib/data/practice-round';
import { routes } from '@/lib/routes';
import { findPlacesForVisitor, gradeRound } from './actions';
import type { RoundAddress } from './round-address';
import { readRoundAddress, roundAddress } from './round-address';
import { RoundForm } from './round-form';
import { VisitorRound } from './visitor-round';

export const metadata: Metadata = { title: 'Pick the pair' };

type PageProps = { searchParams: Promise<Record<string, string | string[] | undefined>> };

/** The visitor's practice: without a seed the form, with one the round that it makes. */
export default async function PickThePairPage({ searchParams }: PageProps) {
  const address = readRoundAddress(await searchParams);
  const { seed } = address;
  if (seed === undefined) return <SetUp address={address} problem={null} />;
  const made = await makeVisitorRound(labTasks['pick-the-pair'], { ...given(address), seed });
  if (!made.ok) return <SetUp address={address} problem={made.problem.message} />;
  const { placeName, variant, ...round } = made.value;
  // The address then names every choice, so that the round is the same tomorrow.
  if (address.placeId === undefined || address.localTime === undefined)
    redirect(roundAddress(round));
  const kitName = loadKits().find((kit) => kit.id === round.kitId)?.name ?? round.kitId;
  return (
    <div className="-mx-4 -mt-6 -mb-16 sm:-mx-6 sm:-mt-8">
      <VisitorRound
        sky={pairLabSky(variant, { kitName, placeName })}
        address={roundAddress(round)}
        nextAddress={roundAddress({ ...round, seed: newSeed() })}
        setUpAddress={routes.labs.pickThePair({
          kit: round.kitId,
          site: round.siteId,
          place: round.placeId,
          time: round.localTime,
        })}
        onSubmit={gradeRound.bind(null, round)}
      />
    </div>
  );
}

const newSeed = (): string => randomUUID().replaceAll('-', '').slice(0, 12);

/** Only what the address holds: the round's maker fills in the rest. */
const given = ({ kitId, siteId, placeId, localTime }: RoundAddress) => ({
  ...(kitId === undefined ? {} : { kitId }),
  ...(siteId === undefined ? {} : { siteId }),
  ...(placeId === undefined ? {} : { placeId }),
  ...(localTime === undefined ? {} : { localTime }),
});

async function SetUp({ address, problem }: { address: RoundAddress; problem: string | null }) {
  const { placeId } = address;
  const place =
    placeId === undefined || placeId === defaultPlace.id ? defaultPlace : await getPlace(placeId);
  const kits = loadKits();
  const sites = loadSites();
  return (
    <>
      <PageHeader
        title="Pick the pair"
        lead="A telescope that finds its own targets must first be shown two stars. Which two decides how well it points for the rest of the night. Here you choose them under a real sky, and see what they are worth."
      />
      {problem === null ? null : (
        <Notice tone="danger" title="This round cannot be made" live="alert" className="mb-6">
          {problem}
        </Notice>
      )}
      <div className="grid gap-x-16 gap-y-10 lg:grid-cols-[minmax(0,34rem)_minmax(0,24rem)]">
        <RoundForm
          action={routes.labs.pickThePair()}
          seed={newSeed()}
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
