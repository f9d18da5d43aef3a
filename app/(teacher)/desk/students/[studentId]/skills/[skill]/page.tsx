import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { z } from 'zod';
import { ObservationList } from '@/components/desk/sign-off/observation-list';
import { EvidenceList } from '@/components/grading/skills/evidence-list';
import { RowOfThree } from '@/components/grading/skills/row-of-three';
import { SkillStateMark } from '@/components/grading/skills/skill-state-mark';
import { standingWords } from '@/components/grading/skills/standing-words';
import { zonedDayText } from '@/components/grading/zoned-time';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { PrintButton } from '@/components/ui/print-button';
import { getViewer } from '@/lib/auth/session';
import { lessonOfSkill } from '@/lib/course/lessons';
import { skills, skillTitles } from '@/lib/course/skills';
import { getSkillRecord } from '@/lib/data/skill-progress';
import { routes } from '@/lib/routes';
import { takeBackObservation } from './actions';

export const metadata: Metadata = { title: 'Evidence of a skill' };

const address = z.object({ studentId: z.string(), skill: z.enum(skills) });

export default async function StudentSkillPage({
  params,
}: {
  params: Promise<{ studentId: string; skill: string }>;
}) {
  const parsed = address.safeParse(await params);
  if (!parsed.success) notFound();
  const { studentId, skill } = parsed.data;
  const record = await getSkillRecord(await getViewer(), studentId, skill);
  if (record === null) notFound();
  const { student, standing, pieces, observations, signOff } = record;
  const title = skillTitles[skill];
  return (
    <>
      <PageHeader
        title={`${student.displayName}: ${title}`}
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: student.className, href: routes.teacher.classGradebook(student.classId) },
          { label: 'Skills', href: routes.teacher.classSkills(student.classId) },
          { label: student.displayName, href: routes.teacher.student(student.id) },
        ]}
        actions={
          <>
            <LinkButton href={routes.lessons.one(lessonOfSkill(skill).slug)}>The lesson</LinkButton>
            <PrintButton />
          </>
        }
      />
      <div className="mb-6 space-y-1">
        <p className="flex flex-wrap items-center gap-x-6 gap-y-1 text-lg">
          <SkillStateMark state={standing.state} />
          {standing.state === 'practising' ? <RowOfThree inARow={standing.inARow} /> : null}
        </p>
        <p className="max-w-measure text-soft">
          {standingWords(standing, (at) => zonedDayText(at, student.timeZone))}
        </p>
      </div>
      {observations.length === 0 ? null : (
        <section aria-labelledby="at-the-telescope" className="mb-8">
          <h2 id="at-the-telescope" className="mb-1 text-xl font-semibold">
            At the telescope
          </h2>
          <ObservationList
            observations={observations}
            signOff={signOff}
            timeZone={student.timeZone}
            takeBack={(key) =>
              takeBackObservation.bind(
                null,
                { classId: student.classId, studentId: student.id, skill },
                key,
              )
            }
          />
        </section>
      )}
      {pieces.length === 0 ? (
        <EmptyState title="No evidence from indoors yet">
          <p>
            Questions that {student.displayName} answers and labs that are handed in show here, each
            with what it told of this skill.
          </p>
        </EmptyState>
      ) : (
        <section aria-labelledby="evidence">
          <h2 id="evidence" className="mb-1 text-xl font-semibold">
            The evidence indoors
          </h2>
          <p className="mb-3 max-w-measure text-soft">
            Oldest first, on the class’s clock, {student.timeZone}. What was said of an answer was
            said to {student.displayName}: “you” is the student.
          </p>
          <EvidenceList pieces={pieces} timeZone={student.timeZone} />
        </section>
      )}
    </>
  );
}
