import type { Metadata } from 'next';
import { labText } from '@/components/grading/template-text';
import { benchTexts } from '@/components/lab/bench/bench-texts';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { SunCaution } from '@/components/ui/sun-caution';
import { routes } from '@/lib/routes';
import { isBenchLab, type BenchLab } from '@/lib/variants/bench/bench-labs';
import { labs, type Lab } from '@/lib/variants/labs';

export const metadata: Metadata = { title: 'Labs' };

const whatItIs: Readonly<Record<Exclude<Lab, BenchLab>, string>> = {
  'pick-the-pair':
    'Under the real sky of your place and date, find two alignment stars that would make a telescope point well, and see how many of 100 targets would then be in the eyepiece. About ten minutes a round.',
  'alignment-run':
    'Steer a simulated mount through the whole alignment: find each star, centre it in the eyepiece, confirm it, and judge what the mount makes of the two. About twenty minutes a round.',
  'what-went-wrong':
    'Read what a faulty evening shows, look up what else you need, and name the fault and its cure. About ten minutes a round.',
};

/** The labs that are open. */
export default function LabsPage() {
  return (
    <>
      <PageHeader
        title="Labs"
        lead="Practise a skill of the evening as often as you like. You need no account, and nothing about you is kept."
      />
      <div className="space-y-6">
        {labs.map((lab) => (
          <Panel
            key={lab}
            title={labText[lab].name}
            actions={
              <LinkButton href={routes.labs.one(lab)} variant="primary">
                Open the lab<span className="sr-only">: {labText[lab].name}</span>
              </LinkButton>
            }
          >
            <p className="max-w-measure">
              {isBenchLab(lab) ? benchTexts[lab].whatItIs : whatItIs[lab]}
            </p>
          </Panel>
        ))}
        <SunCaution />
      </div>
    </>
  );
}
