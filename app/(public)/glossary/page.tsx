import type { Metadata } from 'next';
import { EmptyState } from '@/components/ui/empty-state';
import { PageHeader } from '@/components/ui/page-header';
import { PrintButton } from '@/components/ui/print-button';
import { TextLink } from '@/components/ui/text-link';
import { byFirstLetter, glossaryOf, type GlossaryEntry } from '@/lib/content/glossary';
import { listLessons } from '@/lib/content/lessons';
import { routes } from '@/lib/routes';

export const metadata: Metadata = {
  title: 'Words',
  description: 'The words of the lessons, each in a sentence.',
};

export default async function GlossaryPage() {
  const groups = byFirstLetter(glossaryOf(await listLessons()));
  return (
    <div className="mx-auto max-w-[56rem]">
      <PageHeader
        title="Words"
        lead="The words of the trade as the lessons use them, each in a sentence."
        crumbs={[{ label: 'Lessons', href: routes.lessons.all() }]}
        actions={<PrintButton />}
      />
      {groups.length === 0 ? (
        <EmptyState title="There are no words here yet">
          <p>They come from the lessons, and there is none.</p>
        </EmptyState>
      ) : (
        <>
          <nav aria-label="Letters" className="no-print mb-6">
            <ul className="flex flex-wrap gap-1">
              {groups.map(({ letter }) => (
                <li key={letter}>
                  <a
                    href={`#${letter}`}
                    className="link inline-flex size-(--target) items-center justify-center font-semibold"
                  >
                    {letter}
                  </a>
                </li>
              ))}
            </ul>
          </nav>
          <div className="print:columns-2 print:gap-x-8 print:text-[10pt] print:leading-snug">
            {groups.map((group) => (
              <Letter key={group.letter} {...group} />
            ))}
          </div>
        </>
      )}
    </div>
  );
}

function Letter({ letter, entries }: { letter: string; entries: readonly GlossaryEntry[] }) {
  return (
    <section
      aria-labelledby={letter}
      className="mb-6 gap-x-6 border-t border-line pt-3 sm:grid sm:grid-cols-[3rem_1fr] print:mb-2 print:block print:pt-1"
    >
      <h2 id={letter} className="scroll-mt-6 text-xl font-semibold text-accent">
        {letter}
      </h2>
      <dl className="space-y-2.5 print:space-y-1.5">
        {entries.map(({ term, definition, lessons }) => (
          <div key={term} className="keep-together">
            <dt className="font-semibold">{term}</dt>
            <dd className="max-w-measure">
              {definition}{' '}
              <span className="no-print text-sm text-soft">
                {lessons.map(({ slug, title }, index) => (
                  <span key={slug}>
                    {index === 0 ? '' : ' · '}
                    <TextLink href={routes.lessons.one(slug)}>{title}</TextLink>
                  </span>
                ))}
              </span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
