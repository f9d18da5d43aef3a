import { course, type LessonSlug } from '@/lib/course/lessons';
import { hasMoment, labOptions, type Lab } from '@/lib/variants/labs';

/** One marked part as the form holds it: numbers as they were typed. */
export type PartDraft = {
  /** Tells the parts of one form apart, also those that are not stored yet. */
  key: string;
  /** Of a part that is stored. */
  id?: string;
  lab: Lab;
  /** Kinds of task of the lab; of questions, the lessons. */
  templates: readonly string[];
  windowMinutes: string;
  /** '' where time does not count. */
  minutesAllowed: string;
  weight: string;
};

/** A part as it is stored, or as a page proposes it. */
export type PartSource = {
  id?: string;
  lab: Lab;
  templates: readonly string[];
  windowMinutes: number;
  minutesAllowed: number | null;
  weight: number;
};

const usualWindow = 40;

export const partDraft = (part: PartSource, index: number): PartDraft => ({
  key: part.id ?? `first-${String(index)}`,
  ...(part.id === undefined ? {} : { id: part.id }),
  lab: part.lab,
  templates: part.templates,
  // Where the moment plays no part none was asked for: the usual one stands by for another lab.
  windowMinutes: String(hasMoment(part.lab) ? part.windowMinutes : usualWindow),
  minutesAllowed: part.minutesAllowed === null ? '' : String(part.minutesAllowed),
  weight: String(part.weight),
});

/** Every kind of task of a lab; of lessons the ones that are read, or the first, as twelve are seldom meant. */
function firstKinds(lab: Lab, lessons: readonly LessonSlug[]): readonly string[] {
  const { templates, ofAllKinds } = labOptions[lab];
  if (ofAllKinds !== true) return templates;
  return lessons.length > 0 ? lessons : templates.slice(0, 1);
}

/** A new part beside those that are there; their window of time holds for it too. */
export function newPart(
  lab: Lab,
  lessons: readonly LessonSlug[],
  beside: readonly PartDraft[],
): PartDraft {
  const like = beside.find((part) => hasMoment(part.lab));
  const numbers = beside.map(({ key }) => Number(/^new-(\d+)$/.exec(key)?.[1] ?? 0));
  return {
    key: `new-${String(Math.max(0, ...numbers) + 1)}`,
    lab,
    templates: firstKinds(lab, lessons),
    windowMinutes: like?.windowMinutes ?? String(usualWindow),
    minutesAllowed: '',
    weight: '1',
  };
}

/** The same part with another lab: its kinds of task are others. */
export const withLab = (part: PartDraft, lab: Lab, lessons: readonly LessonSlug[]): PartDraft => ({
  ...part,
  lab,
  templates: firstKinds(lab, lessons),
});

/** The parts with one moved up (−1) or down (1); as they were where there is no further. */
export function moved(
  parts: readonly PartDraft[],
  index: number,
  by: -1 | 1,
): readonly PartDraft[] {
  const [part, other] = [parts[index], parts[index + by]];
  if (part === undefined || other === undefined) return parts;
  return parts.map((one, at) => (at === index ? other : at === index + by ? part : one));
}

/** Lessons in the order of the course, with one more or one less. */
export const withLesson = (
  lessons: readonly LessonSlug[],
  slug: LessonSlug,
  wanted: boolean,
): readonly LessonSlug[] =>
  course
    .map((lesson) => lesson.slug)
    .filter((one) => (one === slug ? wanted : lessons.includes(one)));
