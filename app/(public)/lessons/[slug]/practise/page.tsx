import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound, redirect } from 'next/navigation';
import { z } from 'zod';
import { PageHeader } from '@/components/ui/page-header';
import { getViewer } from '@/lib/auth/session';
import { getLesson } from '@/lib/content/lessons';
import { course, type LessonSlug } from '@/lib/course/lessons';
import { skills, skillTitles, type Skill } from '@/lib/course/skills';
import { routes } from '@/lib/routes';
import { StudentPractice } from './student-practice';
import { VisitorPractice } from './visitor-practice';

type PractisePageProps = {
  params: Promise<{ slug: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

const first = z
  .union([z.string(), z.array(z.string()).transform((values) => values[0])])
  .optional()
  .catch(undefined);
/**
 * `skill` keeps a student's practice to one skill, for its review; `family` and `template` are the
 * author's look: questions of one kind alone.
 */
const querySchema = z.object({
  round: first,
  skill: z.enum(skills).nullable().catch(null),
  question: first.transform((text) => (/^[1-9]\d{0,3}$/.test(text ?? '') ? Number(text) : 1)),
  family: first.transform((id) => id ?? null),
  template: first.transform((id) => id ?? null),
});

async function lessonOf(params: PractisePageProps['params']) {
  const { slug } = await params;
  const found = course.find((one) => one.slug === slug);
  if (found === undefined) notFound();
  const lesson = await getLesson(slug);
  return { slug: found.slug, title: lesson?.frontMatter.title ?? skillTitles[found.skill] };
}

export async function generateMetadata({ params }: PractisePageProps): Promise<Metadata> {
  const { title } = await lessonOf(params);
  return { title: `Practise: ${title}` };
}

/** Questions on a lesson, as many as one likes: a student's are kept and count towards mastery. */
export default async function PractisePage({ params, searchParams }: PractisePageProps) {
  const lesson = await lessonOf(params);
  const viewer = await getViewer();
  const query = await searchParams;
  const { skill } = querySchema.parse(query);
  return (
    <article className="mx-auto max-w-[44rem]">
      <PageHeader
        title={`Practise: ${lesson.title}`}
        lead={
          viewer.kind === 'student'
            ? studentLead(skill)
            : 'One question at a time, a new one as often as you like. Nothing about you is kept.'
        }
        crumbs={[
          { label: 'Lessons', href: routes.lessons.all() },
          { label: lesson.title, href: routes.lessons.one(lesson.slug) },
        ]}
      />
      {viewer.kind === 'student' ? (
        <StudentPractice viewer={viewer} lesson={lesson.slug} skill={skill} />
      ) : (
        <VisitorPractice address={visitorAddress(lesson.slug, query)} />
      )}
    </article>
  );
}

const studentLead = (skill: Skill | null): string =>
  skill === null
    ? 'One question at a time, a new one as often as you like. You are told why at once.'
    : `One question at a time, all on one skill: “${skillTitles[skill]}”. You are told why at once.`;

/** A round that has no seed yet is given one, so that its address is the same question tomorrow. */
function visitorAddress(lesson: LessonSlug, query: Record<string, string | string[] | undefined>) {
  const { round, question, family, template } = querySchema.parse(query);
  if (round === undefined || round === '') {
    const seed = randomUUID().replaceAll('-', '').slice(0, 8);
    redirect(routes.lessons.practise(lesson, { round: seed, family, template }));
  }
  return { lesson, round, number: question, family, template };
}
