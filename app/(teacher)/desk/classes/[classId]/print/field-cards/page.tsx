import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NightForm } from '@/components/desk/night/night-form';
import { NoEveningNotice } from '@/components/desk/night/night-plan-view';
import { noEveningText } from '@/components/desk/night/night-words';
import { FieldCardSheet } from '@/components/desk/print/field-card-sheet';
import { PaperPage } from '@/components/desk/print/paper-page';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { getFieldCards } from '@/lib/data/field-cards';
import { routes } from '@/lib/routes';
import { classOf } from '../../class-of';

export const metadata: Metadata = { title: 'Field cards' };

/** Fainter stars would be dots that nobody can name by a red lamp. */
const faintestDrawn = 2.6;

export default async function FieldCardsPage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer } = await classOf(params);
  const asked = await searchParams;
  const read = await getFieldCards(viewer, details.id, asked);
  // What was asked for in vain is said beside the field; the cards are then of tonight.
  const shown = read.ok ? read : await getFieldCards(viewer, details.id, {});
  if (!shown.ok) notFound();
  const { evening, cards, ...night } = shown.value;
  return (
    <PaperPage
      title="Field cards"
      back={routes.teacher.classPrint(details.id)}
      lead="A sheet for each telescope, printed on both sides: setting up on the front, tonight’s stars overleaf. Where groups have telescopes, each group gets its own. Print on the day: the times are this evening’s."
    >
      <NightForm
        {...night}
        submit="Make cards for this evening"
        hrefFor={(site) =>
          routes.teacher.classFieldCards(details.id, {
            date: night.localDate,
            ends: night.endsAt,
            site,
          })
        }
        problem={
          read.ok ? null : { field: read.problem.field ?? '', message: read.problem.message }
        }
      />
      {evening.ok ? (
        <div className="space-y-10 print:space-y-0">
          {cards.map((card) => (
            <FieldCardSheet
              key={card.key}
              {...{ card, night, evening }}
              stars={
                card.frame === null
                  ? []
                  : skyPictureStars(loadCatalogue(), card.frame, faintestDrawn)
              }
            />
          ))}
        </div>
      ) : (
        <NoEveningNotice {...noEveningText[evening.reason]} />
      )}
    </PaperPage>
  );
}
