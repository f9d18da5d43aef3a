import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NoStudentsYet } from '@/components/desk/people/no-students-yet';
import { SkillLegend } from '@/components/grading/skills/skill-legend';
import { SkillMatrixTable } from '@/components/grading/skills/skill-matrix';
import { PrintButton } from '@/components/ui/print-button';
import { getSkillMatrix } from '@/lib/data/skill-progress';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';

export const metadata: Metadata = { title: 'Skills' };

export default async function ClassSkillsPage({
  params,
}: {
  params: Promise<{ classId: string }>;
}) {
  const { details, viewer, mayTeach } = await classOf(params);
  const matrix = await getSkillMatrix(viewer, details.id);
  if (matrix === null) notFound();
  if (matrix.students.length === 0) {
    return (
      <NoStudentsYet addAt={mayTeach ? routes.teacher.classRoster(details.id) : null}>
        <p>Once there are students, each has a row here, with the twelve skills of an evening.</p>
      </NoStudentsYet>
    );
  }
  const anything = matrix.students.some(
    ({ standings, signOff }) =>
      Object.keys(signOff).length > 0 || standings.some(({ state }) => state !== 'not-started'),
  );
  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-end justify-between gap-3">
        <div>
          <h2 className="text-xl font-semibold">Skills</h2>
          <p className="max-w-measure text-soft">
            {anything
              ? 'In the order of an evening. Each cell leads to all that is behind it.'
              : 'Nothing has been done yet. As soon as somebody answers a question of a lesson or hands in a lab, it shows here.'}
          </p>
        </div>
        <div className="no-print">
          <PrintButton />
        </div>
      </div>
      <SkillMatrixTable matrix={matrix} />
      <SkillLegend />
    </div>
  );
}
