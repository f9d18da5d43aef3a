import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PrintList, type PrintedThing } from '@/components/desk/print/print-list';
import { TextLink } from '@/components/ui/text-link';
import { getPrintedThings } from '@/lib/data/printed-things';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';

export const metadata: Metadata = { title: 'Print' };

/** Everything of the class that is made for paper. */
export default async function PrintPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer, mayTeach } = await classOf(params);
  const things = await getPrintedThings(viewer, details.id);
  if (things === null) notFound();
  const { teacher } = routes;
  const outside: PrintedThing[] = [
    {
      title: 'Field cards',
      href: teacher.classFieldCards(details.id),
      what: 'A double-sided sheet for each telescope: the steps, tonight’s pairs in fists, and what to do when something is off. Large and black, for a red lamp.',
    },
    {
      title: 'Checklist',
      href: teacher.classChecklist(details.id),
      what: 'One sheet for the teacher: what to tick off from the classroom to the last look over the ground.',
    },
    {
      title: 'Sign-off form',
      href: teacher.classSignOffForm(details.id),
      what: 'Students across, skills down, for whoever would rather write than type at the telescope.',
    },
    {
      title: 'Night plan',
      href: teacher.classNight(details.id),
      what: 'One evening with its times, pairs and sights, and the two weeks from it on.',
    },
  ];
  const indoors: PrintedThing[] = [
    mayTeach
      ? {
          title: 'Sign-in cards',
          href: teacher.classCards(details.id),
          what: 'A card for each student to cut out, eight to a page. Making one ends the card before it.',
        }
      : {
          title: 'Sign-in cards',
          href: null,
          what: 'They are made by the teachers of the class.',
        },
    {
      title: 'Glossary',
      href: routes.glossary(),
      what: 'The words of all lessons, each in a sentence, in two columns.',
    },
    {
      title: 'Gradebook',
      href: teacher.classGradebook(details.id),
      what: 'Students by assignments, with marks and states.',
    },
    {
      title: 'Skills',
      href: teacher.classSkills(details.id),
      what: 'Students by the twelve skills.',
    },
  ];
  return (
    <div className="space-y-8">
      <p className="max-w-measure text-soft">
        Each of these prints in black and white on A4 and Letter, by its own Print button.
      </p>
      <div className="grid gap-x-10 gap-y-8 lg:grid-cols-2">
        <PrintList title="For the night outside" things={outside} />
        <PrintList title="For the classroom" things={indoors} />
        <section aria-labelledby="keys" className="border-t-2 border-strong pt-3">
          <h2 id="keys" className="mb-2 text-xl font-semibold">
            Answer keys
          </h2>
          <p className="mb-3 max-w-measure text-soft">
            Each assignment prints with its rules and what is right in it, and why.
          </p>
          {things.assignments.length === 0 ? (
            <p>
              Nothing is assigned yet.{' '}
              <TextLink href={teacher.newAssignment(details.id)}>Make an assignment</TextLink>.
            </p>
          ) : (
            <ul>
              {things.assignments.map(({ id, title, isDraft }) => (
                <li key={id} className="py-0.5">
                  <TextLink href={teacher.assignment(id)}>{title}</TextLink>
                  {isDraft ? <span className="text-sm text-soft"> (not published)</span> : null}
                </li>
              ))}
            </ul>
          )}
        </section>
        <section aria-labelledby="reports" className="border-t-2 border-strong pt-3">
          <h2 id="reports" className="mb-2 text-xl font-semibold">
            One student’s page
          </h2>
          <p className="mb-3 max-w-measure text-soft">
            For a parents’ evening: what the student can do, on one page, with nothing about others.
          </p>
          {things.students.length === 0 ? (
            <p>
              There are no students yet.{' '}
              <TextLink href={teacher.classRoster(details.id)}>List the class first</TextLink>.
            </p>
          ) : (
            <ul className="columns-2 gap-x-6 sm:columns-3">
              {things.students.map(({ id, displayName, hasLeft }) => (
                <li key={id} className="break-inside-avoid py-0.5">
                  <TextLink href={teacher.studentReport(id)}>{displayName}</TextLink>
                  {hasLeft ? <span className="text-sm text-soft"> (left)</span> : null}
                </li>
              ))}
            </ul>
          )}
        </section>
      </div>
    </div>
  );
}
