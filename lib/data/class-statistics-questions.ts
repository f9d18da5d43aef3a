import type { LessonSlug } from '../course/lessons';
import { withoutNoise } from '../grading/counted-mark';
import { itemBank } from '../items/item-bank';
import { upperLower } from '../measurement/discrimination';
import { itemNote, type ItemNote } from '../measurement/small-class';
import { correlation, mean } from '../measurement/spread';
import { choicesOf, type Choice, type WrongAnswer } from './class-statistics-choices';
import type { AnswerRow } from './class-statistics-rows';
import { groupedBy } from './grouped-by';
import { mapInTurns } from './in-turns';

export type QuestionStatistics = {
  family: string;
  /** What it is about: "Which leg to turn". */
  title: string;
  lesson: LessonSlug;
  /** Students, each by the first answer to any question about it. */
  people: number;
  right: number;
  partly: number;
  wrong: number;
  /** Mean share of full marks, 0–1. */
  difficulty: number;
  /** Against the student's mean over everything else they answered first; null where none can be said. */
  itemRest: number | null;
  /** How many that rests on. */
  itemRestPeople: number;
  /** Mean share in the better 27 % less that in the weaker, by the same mean; null likewise. */
  upperLower: number | null;
  note: ItemNote | null;
  /** Every kind of question about it that anybody did not get wholly right, most often met first. */
  kinds: {
    template: string;
    /** One of its questions. */
    example: string;
    people: number;
    /** Several may be ticked at once: then the choices sum to more than the people. */
    severalAtOnce: boolean;
    choices: Choice[];
  }[];
};

/** With fewer other answers a student's own mean says little. Our judgement. */
const fewestOthers = 4;

/**
 * Every family of questions that somebody answered, in the order of the course. What was asked differs
 * from student to student in numbers and words: a family, the questions about one thing, is the smallest
 * that students have in common. A student counts once in each, by the first answer.
 */
export async function questionFigures(
  answers: readonly AnswerRow[],
  wrongAnswers: ReadonlyMap<AnswerRow, WrongAnswer>,
): Promise<QuestionStatistics[]> {
  const known = new Set(itemBank.map(({ id }) => id));
  const firsts = firstAnswers(answers.filter(({ family }) => known.has(family)));
  const sharesOf = new Map(
    [...groupedBy(firsts, ({ studentId }) => studentId)].map(([studentId, own]) => [
      studentId,
      { sum: own.reduce((sum, { share }) => sum + share, 0), count: own.length },
    ]),
  );
  const byFamily = groupedBy(firsts, ({ family }) => family);
  const figures = await mapInTurns(itemBank, ({ id, title, lesson }) => {
    const rows = byFamily.get(id);
    if (rows === undefined) return [];
    const shares = rows.map(({ share }) => share);
    const compared = rows.flatMap(({ studentId, share }) => {
      const all = sharesOf.get(studentId);
      return all === undefined || all.count - 1 < fewestOthers
        ? []
        : [{ share, rest: withoutNoise((all.sum - share) / (all.count - 1)) }];
    });
    const own = compared.map(({ share }) => share);
    const rest = compared.map((one) => one.rest);
    const difficulty = mean(shares);
    const itemRest = correlation(own, rest);
    return [
      {
        family: id,
        title,
        lesson,
        people: rows.length,
        difficulty,
        itemRest,
        right: shares.filter((share) => share === 1).length,
        partly: shares.filter((share) => share > 0 && share < 1).length,
        wrong: shares.filter((share) => share === 0).length,
        itemRestPeople: compared.length,
        upperLower: compared.length < 2 ? null : upperLower(own, rest),
        note: itemNote({
          difficulty,
          itemRest,
          people: rows.length,
        }),
        kinds: kindsOf(rows, wrongAnswers),
      },
    ];
  });
  return figures.flat();
}

function kindsOf(
  rows: readonly AnswerRow[],
  wrongAnswers: ReadonlyMap<AnswerRow, WrongAnswer>,
): QuestionStatistics['kinds'] {
  return [...groupedBy(rows, ({ template }) => template)]
    .flatMap(([template, all]) => {
      const wrong = all.flatMap((row) => wrongAnswers.get(row) ?? []);
      const [first] = wrong;
      if (first === undefined) return [];
      return [
        {
          template,
          example: first.item.prompt,
          people: all.length,
          severalAtOnce: first.item.kind === 'several',
          choices: choicesOf(wrong, all.length - wrong.length),
        },
      ];
    })
    .toSorted((one, other) => other.people - one.people);
}

/** Each student's first answer in each family. */
function firstAnswers(answers: readonly AnswerRow[]): AnswerRow[] {
  const first = new Map<string, AnswerRow>();
  for (const row of answers.toSorted((one, other) => one.at - other.at)) {
    const key = `${row.studentId} ${row.family}`;
    if (!first.has(key)) first.set(key, row);
  }
  return [...first.values()];
}
