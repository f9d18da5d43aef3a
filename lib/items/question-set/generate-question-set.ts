import type { LessonSlug } from '../../course/lessons';
import { randomFrom, type Random } from '../../variants/random';
import { drawItem } from '../draw-item';
import type { ItemFamily, ItemWorld } from '../item-family';
import { faceOfItem } from '../item-face';
import type { QuestionSet, QuestionSetKey } from './question-set';

/** Goes up whenever the same seed could choose other questions. */
const generatorVersion = 1;

/** Enough to tell knowing from guessing, few enough for a quarter of an hour; our judgement. */
const questionsInSet = 8;

/**
 * A set of questions on all these lessons: they take turns, and within a lesson its objectives do. No
 * family comes twice while another is left; then it comes with another template. With more lessons than a
 * set has questions, each is asked about once.
 * @throws {RangeError} when none of the lessons has a question.
 */
export function generateQuestionSet({
  seed,
  lessons,
  familiesOf,
  world,
}: {
  seed: string;
  lessons: readonly LessonSlug[];
  familiesOf: (lesson: LessonSlug) => readonly ItemFamily[];
  world: ItemWorld;
}): { variant: QuestionSet; answerKey: QuestionSetKey } {
  const random = randomFrom(`${seed}/set`);
  const queues = random
    .shuffle(lessons)
    .map((lesson) => inTurns(familiesOf(lesson), random))
    .filter((queue) => queue.length > 0);
  const [template] = lessons;
  if (queues.length === 0 || template === undefined) {
    throw new RangeError('there are no questions on these lessons');
  }
  const count = Math.max(questionsInSet, queues.length);
  const chosen = takeInTurn(queues, count);
  const drawn = chosen.map(({ family, template: kind }, index) => ({
    lesson: family.lesson,
    skill: family.skill,
    item: drawItem(family, kind, { seed: `${seed}/${String(index)}`, world }),
  }));
  return {
    variant: {
      lab: 'lesson-questions',
      generatorVersion,
      template,
      lessons,
      questions: drawn.map(({ lesson, item }) => ({ lesson, face: faceOfItem(item) })),
    },
    answerKey: {
      lab: 'lesson-questions',
      items: drawn.map(({ skill, item }) => ({ skill, item })),
    },
  };
}

type Kind = { family: ItemFamily; template: string };

/** Every kind of question of a lesson: first one of each family, by turns of objective, then a second of each … */
function inTurns(families: readonly ItemFamily[], random: Random): Kind[] {
  const byObjective = [...new Set(families.map(({ objective }) => objective))].map((objective) =>
    random.shuffle(families.filter((family) => family.objective === objective)),
  );
  const ordered = takeInTurn(random.shuffle(byObjective), families.length);
  const kinds = ordered.map((family) =>
    random.shuffle(Object.keys(family.templates)).map((template) => ({ family, template })),
  );
  return takeInTurn(
    kinds,
    kinds.reduce((sum, { length }) => sum + length, 0),
  );
}

/** One of each list, then a second of each, … until there are so many or none is left. */
function takeInTurn<T>(lists: readonly (readonly T[])[], count: number): T[] {
  const longest = Math.max(0, ...lists.map(({ length }) => length));
  return Array.from({ length: longest }, (_, place) =>
    lists.flatMap((list) => list.slice(place, place + 1)),
  )
    .flat()
    .slice(0, count);
}
