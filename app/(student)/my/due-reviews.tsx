import { RotateCcw } from 'lucide-react';
import { isMastered } from '@/components/grading/skills/skill-state-text';
import { LinkButton } from '@/components/ui/link-button';
import { TextLink } from '@/components/ui/text-link';
import { lessonOfSkill } from '@/lib/course/lessons';
import { skillTitles } from '@/lib/course/skills';
import type { MySkills, SkillStanding } from '@/lib/data/skill-progress';
import { routes } from '@/lib/routes';
import { dayInWords, momentInWords } from './due-words';

/** The skills that ask for a review, longest overdue first, and the way to all of them. */
export function DueReviews({ skills, now }: { skills: MySkills; now: Date }) {
  const { standings, timeZone } = skills;
  const due = standings
    .flatMap((standing) =>
      standing.state === 'review-due' && standing.nextReviewAt !== null
        ? [{ skill: standing.skill, since: standing.nextReviewAt }]
        : [],
    )
    .sort((a, b) => a.since.getTime() - b.since.getTime());
  return (
    <section aria-labelledby="reviews">
      <div className="mb-3 flex flex-wrap items-baseline justify-between gap-x-6 gap-y-1">
        <h2 id="reviews" className="text-xl font-semibold">
          {due.length === 0 ? 'My skills' : 'Due for review'}
        </h2>
        <TextLink href={routes.student.skills()}>All my skills</TextLink>
      </div>
      {due.length === 0 ? (
        <p className="max-w-measure text-soft">{nothingDue(standings, timeZone, now)}</p>
      ) : (
        <ul className="divide-y divide-line rounded-b-lg border border-t-2 border-line border-t-strong bg-panel">
          {due.map(({ skill, since }) => (
            <li
              key={skill}
              className="flex flex-wrap items-center justify-between gap-x-6 gap-y-2 p-3 sm:px-4"
            >
              <p>
                <RotateCcw aria-hidden="true" className="me-2 inline size-4 text-caution" />
                <span className="font-semibold">{skillTitles[skill]}</span>{' '}
                <span className="text-soft">since {dayInWords(since, timeZone, now)}</span>
              </p>
              <LinkButton
                href={routes.lessons.practise(lessonOfSkill(skill).slug, { skill })}
                aria-label={`Practise: ${skillTitles[skill]}`}
              >
                Practise
              </LinkButton>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** How far it has come, and what is asked next. */
function nothingDue(standings: readonly SkillStanding[], timeZone: string, now: Date): string {
  const mastered = standings.filter(isMastered).length;
  const [next] = standings
    .flatMap(({ skill, nextReviewAt }) => (nextReviewAt === null ? [] : [{ skill, nextReviewAt }]))
    .sort((a, b) => a.nextReviewAt.getTime() - b.nextReviewAt.getTime());
  const have = `${String(mastered)} of ${String(standings.length)} mastered.`;
  if (next === undefined) {
    return `${have} What you master comes back here for a short review, so that it stays.`;
  }
  const { away } = momentInWords(next.nextReviewAt.toISOString(), timeZone, now);
  return `${have} No review is due; the next one is “${skillTitles[next.skill]}”, ${away}.`;
}
