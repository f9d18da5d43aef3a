import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { isMastered } from '@/components/grading/skills/skill-state-text';
import { PageHeader } from '@/components/ui/page-header';
import { SunCaution } from '@/components/ui/sun-caution';
import { getViewer } from '@/lib/auth/session';
import { systemClock } from '@/lib/data/clock';
import { getMySkills } from '@/lib/data/skill-progress';
import { routes } from '@/lib/routes';
import { dayInWords } from '../due-words';
import { SkillRow } from './skill-row';

export const metadata: Metadata = { title: 'My skills' };

export default async function MySkillsPage() {
  const skills = await getMySkills(await getViewer());
  if (skills === null) notFound();
  const { timeZone, standings } = skills;
  const now = systemClock.now();
  const mastered = standings.filter(isMastered).length;
  const due = standings.filter(({ state }) => state === 'review-due').length;
  return (
    <>
      <PageHeader
        title="My skills"
        lead={leadOf(mastered, due, standings.length)}
        crumbs={[{ label: 'My work', href: routes.student.myWork() }]}
      />
      <p className="mb-6 max-w-measure">
        They stand in the order of an evening. A skill is mastered after three passed in a row, each
        of another kind: questions of its lesson count, and so do the labs. Then it comes back after
        2, 7 and 21 days, so that it stays.
      </p>
      <ol className="grid gap-3">
        {standings.map((standing) => (
          <SkillRow
            key={standing.skill}
            standing={standing}
            day={(at) => dayInWords(at, timeZone, now)}
          />
        ))}
      </ol>
      <div className="mt-10">
        <SunCaution short />
      </div>
    </>
  );
}

function leadOf(mastered: number, due: number, of: number): string {
  const have = `${String(mastered)} of ${String(of)} mastered`;
  if (due === 0) return `${have}.`;
  return `${have}, ${due === 1 ? 'one review is' : `${String(due)} reviews are`} due.`;
}
