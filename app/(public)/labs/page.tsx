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

/** Questions on lessons are practised on the lessons' own pages. */
type OpenLab = Exclude<Lab, 'lesson-questions'>;

const whatItIs: Readonly<Record<Exclude<OpenLab, BenchLab>, string>> = {
  'pick-the-pair':
    'Under the real sky of your place and date, find two alignment stars that would make a telescope point well, and see how many of 100 targets would then be in the eyepiece. About ten minutes a round.',
  'alignment-run':
    'Steer a simulated mount through the whole alignment: find each star, centre it in the eyepiece, confirm it, and judge what the mount makes of the two. About twenty minutes a round.',
  'what-went-wrong':
    'Read what a faulty evening shows, look up what else you need, and name the fault and its cure. About ten minutes a round.',
};

/** As an evening goes: first what stands on the ground, then the sky, then both in one. */
const groups: readonly { title: string; lead: string; labs: readonly OpenLab[] }[] = [
  {
    title: 'At the bench',
    lead: 'Everything before the stars. The drawing does what the real thing would do.',
    labs: labs.filter((lab) => isBenchLab(lab) && lab !== 'dress-rehearsal'),
  },
  {
    title: 'Under the sky',
    lead: 'With the sky of your own place and date.',
    labs: ['pick-the-pair', 'alignment-run', 'what-went-wrong'],
  },
  {
    title: 'The whole evening',
    lead: 'All of it in order, and every slip comes back at the eyepiece.',
    labs: ['dress-rehearsal'],
  },
];

/** The labs that are open. */
export default function LabsPage() {
  return (
    <>
      <PageHeader
        title="Labs"
        lead="Practise a skill of the evening as often as you like. You need no account, and nothing about you is kept."
      />
      <div className="space-y-10">
        {groups.map((group) => (
          <section key={group.title} aria-labelledby={group.title} className="space-y-4">
            <div>
              <h2 id={group.title} className="text-xl font-semibold">
                {group.title}
              </h2>
              <p className="text-soft">{group.lead}</p>
            </div>
            <div className="grid items-stretch gap-5 md:grid-cols-2">
              {group.labs.map((lab) => (
                <Panel
                  key={lab}
                  title={labText[lab].name}
                  level={3}
                  actions={
                    <LinkButton href={routes.labs.one(lab)}>
                      Open the lab<span className="sr-only">: {labText[lab].name}</span>
                    </LinkButton>
                  }
                >
                  <p className="max-w-measure">
                    {isBenchLab(lab) ? benchTexts[lab].whatItIs : whatItIs[lab]}
                  </p>
                </Panel>
              ))}
            </div>
          </section>
        ))}
        <SunCaution />
      </div>
    </>
  );
}
