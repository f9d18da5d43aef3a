import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { LetIn } from '@/components/desk/let-in/let-in';
import { EmptyState } from '@/components/ui/empty-state';
import { listToLetIn } from '@/lib/data/student-unlock';
import { classOf } from '../class-of';
import { letIn } from './actions';

export const metadata: Metadata = { title: 'Let a student in' };

export default async function LetInPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer } = await classOf(params);
  const students = await listToLetIn(viewer, details.id);
  if (students === null) notFound();
  return (
    <div className="space-y-4">
      <h2 className="text-xl font-semibold">Let a student in</h2>
      <p className="max-w-measure text-soft">
        For a student who is here without a card, or whose words do not work. It is written down who
        was given new words, and by whom.
      </p>
      {students.length === 0 ? (
        <EmptyState title="No students yet">
          <p>The class’s teacher lists them on the roster.</p>
        </EmptyState>
      ) : (
        <LetIn students={students} letIn={letIn.bind(null, details.id)} />
      )}
    </div>
  );
}
