import type { Metadata } from 'next';
import { ChecklistView } from '@/components/desk/print/checklist-view';
import { PaperPage } from '@/components/desk/print/paper-page';
import { routes } from '@/lib/routes';
import { classOf } from '../../class-of';

export const metadata: Metadata = { title: 'Checklist' };

export default async function ChecklistPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details } = await classOf(params);
  return (
    <PaperPage
      title="Checklist"
      back={routes.teacher.classPrint(details.id)}
      lead="For the teacher in charge, to tick with a pencil. What can hurt somebody stands before the thing that meets it."
    >
      <ChecklistView className={details.name} />
    </PaperPage>
  );
}
