import 'server-only';
import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import * as jsxRuntime from 'react/jsx-runtime';
import { evaluate } from '@mdx-js/mdx';
import matter from 'gray-matter';
import remarkGfm from 'remark-gfm';
import { lessonFrontMatterSchema, type LessonFrontMatter } from './lesson-front-matter';
import { LessonRefused, readOutline, type LessonOutline } from './lesson-outline';
import { lessonQuantities } from './lesson-quantities';
import { loadLessonSkies } from './lesson-skies';
import { reckoningFrom, type LessonSky, type Reckoning } from './reckoning';
import { loadKits } from './sky-catalogue';

export type Lesson = {
  slug: string;
  frontMatter: LessonFrontMatter;
  outline: LessonOutline;
  /** The text, to be given the components of its vocabulary. */
  Content: Awaited<ReturnType<typeof evaluate>>['default'];
  skies: ReadonlyMap<string, LessonSky>;
  reckoning: Reckoning;
};

const lessonsFolder = path.join(process.cwd(), 'content', 'lessons');
const slugPattern = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** The folders of content/lessons, in alphabetical order. */
async function listLessonSlugs(): Promise<string[]> {
  const entries = await readdir(lessonsFolder, { withFileTypes: true });
  return entries
    .filter((entry) => entry.isDirectory() && slugPattern.test(entry.name))
    .map((entry) => entry.name)
    .sort();
}

function parseFrontMatter(data: unknown): LessonFrontMatter {
  const parsed = lessonFrontMatterSchema.safeParse(data);
  if (parsed.success) return parsed.data;
  const said = parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  throw new LessonRefused(`The front matter does not hold: ${said.join('; ')}`);
}

/**
 * Compiles a lesson's text. The text comes from this repository and nowhere else: MDX is code, and
 * what teachers write is never MDX.
 */
export async function compileLesson(
  source: string,
): Promise<Pick<Lesson, 'frontMatter' | 'outline' | 'Content'>> {
  const { data, content } = matter(source);
  let outline: LessonOutline | undefined;
  const { default: Content } = await evaluate(content, {
    ...jsxRuntime,
    remarkPlugins: [
      remarkGfm,
      readOutline((read) => {
        outline = read;
      }),
    ],
  });
  if (outline === undefined) throw new LessonRefused('The text has no outline.');
  return { frontMatter: parseFrontMatter(data), outline, Content };
}

const loaded = new Map<string, Promise<Lesson>>();

/** A lesson by its folder's name; null where there is none. Read and compiled once. */
export async function getLesson(slug: string): Promise<Lesson | null> {
  if (!(await listLessonSlugs()).includes(slug)) return null;
  // Authors see their changes at once; a running school reads each file once.
  if (process.env.NODE_ENV === 'development') return readLesson(slug);
  const known = loaded.get(slug);
  if (known !== undefined) return known;
  const reading = readLesson(slug);
  loaded.set(slug, reading);
  return reading;
}

async function readLesson(slug: string): Promise<Lesson> {
  const folder = path.join(lessonsFolder, slug);
  const compiled = await compileLesson(await readFile(path.join(folder, 'lesson.mdx'), 'utf8'));
  const skies = await loadLessonSkies(folder);
  return {
    slug,
    ...compiled,
    skies,
    reckoning: reckoningFrom(lessonQuantities, skies, loadKits()),
  };
}

/** All lessons, by the number in their id. */
export async function listLessons(): Promise<Lesson[]> {
  const lessons = await Promise.all((await listLessonSlugs()).map(getLesson));
  return lessons
    .filter((lesson) => lesson !== null)
    .sort((a, b) => a.frontMatter.id.localeCompare(b.frontMatter.id, 'en', { numeric: true }));
}
