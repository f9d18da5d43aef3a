import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { notFound } from 'next/navigation';
import { labText } from '@/components/grading/template-text';
import { lessonComponents } from '@/components/lesson/lesson-components';
import { LessonNeighbours } from '@/components/lesson/lesson-neighbours';
import { WordList } from '@/components/lesson/word-list';
import { PageHeader } from '@/components/ui/page-header';
import { PrintButton } from '@/components/ui/print-button';
import { jsonForScript, learningResource } from '@/lib/content/learning-resource';
import { lessonView } from '@/lib/content/lesson-view';
import { getLesson, listLessons, type Lesson } from '@/lib/content/lessons';
import { getViewer } from '@/lib/auth/session';
import { noteReading } from '@/lib/data/live-reading';
import { course } from '@/lib/course/lessons';
import { labOfSkill } from '@/lib/mastery/lab-skills';
import { routes } from '@/lib/routes';
import { answerCheck } from './actions';
import { AssignLesson } from './assign-lesson';
import { figureData } from './figure-data';

type LessonPageProps = { params: Promise<{ slug: string }> };

async function lessonOf(params: LessonPageProps['params']): Promise<Lesson> {
  const lesson = await getLesson((await params).slug);
  if (lesson === null) notFound();
  return lesson;
}

export async function generateMetadata({ params }: LessonPageProps): Promise<Metadata> {
  const { frontMatter } = await lessonOf(params);
  return { title: frontMatter.title, description: frontMatter.summary };
}

/** The address that this request came to, for the metadata; nothing is decided by it. */
function fullAddress(request: Pick<Headers, 'get'>, path: string): string {
  const host = request.get('host') ?? 'localhost';
  return `${request.get('x-forwarded-proto') ?? 'http'}://${host}${path}`;
}

/** Where the lesson's skill is practised. */
function labOf(slug: string): { address: string; title: string } {
  const skill = course.find((one) => one.slug === slug)?.skill;
  if (skill === undefined) throw new Error(`the lesson ${slug} is not in the course`);
  const lab = labOfSkill[skill];
  return { address: routes.labs.one(lab), title: labText[lab].name };
}

export default async function LessonPage({ params }: LessonPageProps) {
  const lesson = await lessonOf(params);
  const { Content, frontMatter, slug } = lesson;
  noteReading(await getViewer(), slug);
  const all = await listLessons();
  const neighbour = (wanted: string | null) => {
    const found = all.find((one) => one.slug === wanted);
    return found === undefined ? null : { slug: found.slug, title: found.frontMatter.title };
  };
  const request = await headers();
  const resource = learningResource(frontMatter, fullAddress(request, routes.lessons.one(slug)));
  const components = lessonComponents(lessonView(lesson), figureData(lesson.skies), answerCheck);
  return (
    <>
      <script
        type="application/ld+json"
        nonce={request.get('x-nonce') ?? undefined}
        // The browser hides the nonce from scripts once it has read it.
        suppressHydrationWarning
        // Our own metadata, with every "<" escaped.
        dangerouslySetInnerHTML={{ __html: jsonForScript(resource) }}
      />
      <article className="mx-auto max-w-[44rem]">
        <PageHeader
          title={frontMatter.title}
          lead={frontMatter.summary}
          crumbs={[{ label: 'Lessons', href: routes.lessons.all() }]}
          actions={<PrintButton />}
        />
        <Content components={components} />
        <WordList vocabulary={frontMatter.vocabulary} />
        <LessonNeighbours
          slug={slug}
          lab={labOf(slug)}
          previous={neighbour(frontMatter.previous)}
          next={neighbour(frontMatter.next)}
        />
        <AssignLesson slug={slug} />
      </article>
    </>
  );
}
