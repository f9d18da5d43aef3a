import type { Metadata } from 'next';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { SunCaution } from '@/components/ui/sun-caution';
import { routes } from '@/lib/routes';

export const metadata: Metadata = { title: 'Labs' };

/** The labs that are open. */
export default function LabsPage() {
  return (
    <>
      <PageHeader
        title="Labs"
        lead="Practise a skill of the evening as often as you like. You need no account, and nothing about you is kept."
      />
      <div className="space-y-6">
        <Panel
          title="Pick the pair"
          actions={
            <LinkButton href={routes.labs.pickThePair()} variant="primary">
              Open the lab
            </LinkButton>
          }
        >
          <p className="max-w-measure">
            Under the real sky of your place and date, find two alignment stars that would make a
            telescope point well, and see how many of 100 targets would then be in the eyepiece.
            About ten minutes a round.
          </p>
        </Panel>
        <SunCaution />
      </div>
    </>
  );
}
