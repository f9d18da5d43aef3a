import type { Metadata } from 'next';
import type { ReactNode } from 'react';
import { PageHeader } from '@/components/ui/page-header';
import { SunCaution } from '@/components/ui/sun-caution';
import { loadCredits } from '@/lib/content/credits';
import { Accuracy } from './accuracy';
import { Privacy } from './privacy';

export const metadata: Metadata = { title: 'About' };

const sections = [
  { id: 'purpose', title: 'What it is for' },
  { id: 'safety', title: 'Safety' },
  { id: 'accuracy', title: 'What is computed, and how far to trust it' },
  { id: 'privacy', title: 'What is kept about people' },
  { id: 'credits', title: 'Data, typeface and licence' },
] as const;
type SectionId = (typeof sections)[number]['id'];

export default function AboutPage() {
  return (
    <>
      <PageHeader
        title="About Duskbench"
        lead="What it does, where its numbers come from, and what it keeps."
      />
      <div className="gap-x-16 lg:grid lg:grid-cols-[14rem_minmax(0,1fr)]">
        <nav aria-label="On this page" className="mb-8 text-sm lg:sticky lg:top-6 lg:self-start">
          <ul className="space-y-1 border-s-2 border-line ps-4">
            {sections.map(({ id, title }) => (
              <li key={id}>
                <a
                  href={`#${id}`}
                  className="link inline-flex min-h-(--target-small) items-center leading-snug"
                >
                  {title}
                </a>
              </li>
            ))}
          </ul>
        </nav>
        <div className="max-w-measure space-y-14">
          <Section id="purpose">
            <p>
              A class has a few computerised telescopes, many beginners and very few clear evenings.
              Duskbench moves the learning that can be done indoors to the cloudy ones: twelve
              lessons from the closed case to a night outside, questions that come back until they
              stay, and labs for the class’s own town, skyline and telescope, with marks computed
              from the real sky and an explanation in the units of the trade.
            </p>
            <p>
              The labs train. They do not show that somebody can do it in the cold, in the dark,
              with a real telescope; that is what the teacher’s sign-off is for, and it decides.
            </p>
          </Section>
          <Section id="safety">
            <SunCaution />
            <p>
              Students use batteries. A mains adapter is the teacher’s: dry, on a protected socket,
              by local electrical rules and a qualified person’s word. Lift with two people, keep
              fingers clear of folding legs, and mark legs and cables in the dark. Where your school
              or your country has a rule, the rule stands above anything written here.
            </p>
          </Section>
          <Section id="accuracy">
            <Accuracy />
          </Section>
          <Section id="privacy">
            <Privacy />
          </Section>
          <Section id="credits">
            <p>
              Duskbench itself is free software under the MIT licence. What follows was made by
              others and keeps its own licence; thank you.
            </p>
            <Credits />
          </Section>
        </div>
      </div>
    </>
  );
}

function Section({ id, children }: { id: SectionId; children: ReactNode }) {
  const title = sections.find((section) => section.id === id)?.title;
  return (
    <section aria-labelledby={id}>
      <h2 id={id} tabIndex={-1} className="scroll-mt-6 text-2xl font-[560]">
        {title}
      </h2>
      <div className="mt-3 space-y-4">{children}</div>
    </section>
  );
}

function Credits() {
  return (
    <ul className="divide-y divide-line border-y border-line">
      {loadCredits().map(({ part, credit, source, licence, licenceUrl, changes }) => (
        <li key={part} className="keep-together py-4">
          <h3 className="font-semibold">{part}</h3>
          <p>{credit}.</p>
          <p className="text-sm text-soft">
            {licenceUrl === null ? (
              licence
            ) : (
              <a href={licenceUrl} className="link">
                {licence}
              </a>
            )}
            {' · '}
            <a href={source} className="link">
              {new URL(source).hostname.replace(/^www\./, '')}
            </a>
          </p>
          <p className="text-sm text-soft">Changes: {changes}.</p>
        </li>
      ))}
    </ul>
  );
}
