import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { SignOffForm, type FormSheet } from '@/components/desk/sign-off/sign-off-form';
import { EmptyState } from '@/components/ui/empty-state';
import { PrintButton } from '@/components/ui/print-button';
import { TextLink } from '@/components/ui/text-link';
import { getSignOffSheet } from '@/lib/data/sign-off-sheet';
import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import { routes } from '@/lib/routes';
import { classOf } from '../../class-of';

export const metadata: Metadata = { title: 'Sign-off form' };

/** As many as fit across a page in digits that can be ringed in the dark. */
const mostAcross = 5;

/** A sheet for each group; larger ones, and who is in none, in sheets of five. */
function sheetsOf({ groups, students }: SignOffSheet, only: string | null): FormSheet[] {
  const inGroups = groups.map(({ id, name, telescope }) => ({
    id,
    name,
    telescope,
    students: students.filter(({ groupId }) => groupId === id),
  }));
  const alone = students.filter(({ groupId }) => groupId === null);
  const name = groups.length === 0 ? '' : 'Without a group';
  const rest = { id: 'none', name, telescope: null, students: alone };
  return [...inGroups, rest]
    .filter(({ id }) => only === null || id === only)
    .flatMap(({ students: members, ...group }) =>
      Array.from({ length: Math.ceil(members.length / mostAcross) }, (_, index) => ({
        ...group,
        students: members.slice(index * mostAcross, (index + 1) * mostAcross),
      })),
    );
}

export default async function SignOffFormPage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer } = await classOf(params);
  const sheet = await getSignOffSheet(viewer, details.id);
  if (sheet === null) notFound();
  const { group } = await searchParams;
  const sheets = sheetsOf(sheet, typeof group === 'string' && group !== '' ? group : null);
  if (sheets.length === 0) {
    return (
      <EmptyState title="Nobody to sign off here">
        <p>The form has a column for each student. Add students, or choose another group.</p>
      </EmptyState>
    );
  }
  return (
    <div data-card-sheet>
      <div className="no-print mb-4 flex flex-wrap items-end justify-between gap-3">
        <div>
          <h2 className="text-xl font-semibold">Sign-off form</h2>
          <p className="max-w-measure text-soft">
            A sheet for each telescope group, laid out as on the phone. Type it in afterwards on the{' '}
            <TextLink href={routes.teacher.classSignOff(details.id)}>sign-off page</TextLink>.
          </p>
        </div>
        <PrintButton />
      </div>
      {sheets.map((one, index) => (
        <SignOffForm
          key={index}
          sheet={one}
          className={details.name}
          needed={sheet.needed}
          notes={sheet.notes}
        />
      ))}
    </div>
  );
}
