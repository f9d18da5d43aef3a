import type { LessonSlug } from '../course/lessons';
import { ideaBehind, type NamedSlip } from '../grading/misconceptions-in-labs';
import { itemBank } from '../items/item-bank';
import { misconceptions, type MisconceptionId } from '../items/misconceptions';
import type { WrongAnswer } from './class-statistics-choices';
import type { LabResultRow } from './class-statistics-rows';
import { groupedBy } from './grouped-by';

/** A beginner's idea that work of this class gave away. */
export type CommonIdea = {
  id: MisconceptionId;
  /** What is so, as it is said in feedback. */
  sentence: string;
  /** The lesson that answers it: where it was met most. */
  lesson: LessonSlug;
  /** Who gave it away, by questions or in labs, each once. */
  studentIds: string[];
  /** How many times, in either. */
  inQuestions: number;
  inLabs: number;
};

/** By how many students, the most first. */
export function commonIdeas(
  wrong: readonly WrongAnswer[],
  labs: readonly LabResultRow[],
): CommonIdea[] {
  const lessonOf = new Map(itemBank.map(({ id, lesson }) => [id, lesson]));
  const hits = [
    ...wrong.flatMap(({ studentId, item, misconceptions: named }) => {
      const lesson = lessonOf.get(item.family);
      return lesson === undefined
        ? []
        : named.map((id) => ({ id, lesson, studentId, from: 'questions' as const }));
    }),
    ...labs.flatMap((row) => ideasOfLab(row)),
  ];
  return [...groupedBy(hits, ({ id }) => id)]
    .map(([id, own]) => ({
      id,
      sentence: misconceptions[id],
      lesson: commonest(own.map((hit) => hit.lesson)),
      studentIds: [...new Set(own.map(({ studentId }) => studentId))],
      inQuestions: own.filter(({ from }) => from === 'questions').length,
      inLabs: own.filter(({ from }) => from === 'labs').length,
    }))
    .toSorted((one, other) => other.studentIds.length - one.studentIds.length);
}

function ideasOfLab({ lab, slips, advice, studentId }: LabResultRow) {
  const named: NamedSlip[] = [
    ...slips.map((slip) => ({
      code: slip.code,
      stage: slip.stage ?? null,
      first: slip.first ?? null,
      why: slip.mistake ?? slip.because ?? slip.slip ?? null,
    })),
    ...(advice === undefined ? [] : [{ code: advice.code, why: null, stage: null, first: null }]),
  ];
  const found = named.flatMap((slip) => ideaBehind(lab, slip) ?? []);
  return [...new Map(found.map((idea) => [idea.misconception, idea])).values()].map(
    ({ misconception: id, lesson }) => ({ id, lesson, studentId, from: 'labs' as const }),
  );
}

/** The one that stands there most often; the list is never empty. */
function commonest(lessons: readonly LessonSlug[]): LessonSlug {
  const times = groupedBy(lessons, (lesson) => lesson);
  const timesOf = (lesson: LessonSlug): number => times.get(lesson)?.length ?? 0;
  return lessons.reduce((most, one) => (timesOf(one) > timesOf(most) ? one : most));
}
