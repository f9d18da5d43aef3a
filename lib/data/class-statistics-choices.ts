import { z } from 'zod';
import { itemAnswerSchema, type ItemAnswer } from '../items/item-answer';
import type { Item } from '../items/item';
import { gradeItem } from '../items/grade-item';
import { misconceptions, type MisconceptionId } from '../items/misconceptions';
import type { AnswerRow } from './class-statistics-rows';
import { storedItemSchema } from './stored-item';

/** An answer that was not wholly right, read. */
export type WrongAnswer = {
  studentId: string;
  item: Item;
  answer: ItemAnswer;
  misconceptions: readonly MisconceptionId[];
};

const emptyDrawing = { width: 1, height: 1, alternative: '', shapes: [] };
const anyItem = z.looseObject({ kind: z.string() });

/** Drawings are the most of a question and say nothing here; pointing at one needs that there is one. */
function withoutDrawings(raw: unknown): unknown {
  const item = anyItem.parse(raw);
  const words = Object.entries(item).filter(([key]) => key !== 'drawing' && key !== 'afterwards');
  return {
    ...Object.fromEntries(words),
    ...(item.kind === 'point' ? { drawing: emptyDrawing } : {}),
  };
}

/** What somebody answered, from its JSON. */
export function wrongAnswerOf(studentId: string, raw: NonNullable<AnswerRow['raw']>): WrongAnswer {
  const item = storedItemSchema.parse(withoutDrawings(raw.item));
  const answer = itemAnswerSchema.parse(raw.answer);
  const grading = gradeItem(item, answer);
  return {
    studentId,
    item,
    answer,
    misconceptions: grading.ok ? grading.feedback.misconceptions : [],
  };
}

/** One answer that was given, and by how many. */
export type Choice = { text: string; right: boolean; people: number };

type Option = { id: string; text: string; right: boolean; misconception?: MisconceptionId };

/** Nothing that is chosen among. */
const none: Option[] = [];

function optionsOf(item: Item): Option[] {
  switch (item.kind) {
    case 'choice':
      return item.options.map((one) => ({ ...one, right: one.id === item.key }));
    case 'several':
      return [...item.options];
    case 'point':
      return item.spots.map((spot) => ({ ...spot, text: spot.where, right: spot.id === item.key }));
    case 'order':
    case 'match':
    case 'numeric':
      return none;
  }
}

function chosenOf(answer: ItemAnswer): string[] {
  switch (answer.kind) {
    case 'choice':
    case 'point':
      return answer.option === null ? [] : [answer.option];
    case 'several':
      return answer.options;
    case 'order':
    case 'match':
    case 'numeric':
      return [];
  }
}

const otherText = 'another answer, other for each student';

/**
 * What was answered to one kind of question. Its numbers, and with them its options, may differ from
 * student to student: an option with the same words for several stands for itself, others under the
 * idea they give away, or together. `right`: how many were wholly right.
 */
export function choicesOf(wrong: readonly WrongAnswer[], right: number): Choice[] {
  const times = new Map<string, number>();
  for (const { item } of wrong)
    for (const { text } of optionsOf(item)) times.set(text, (times.get(text) ?? 0) + 1);
  const isShared = (text: string): boolean => (times.get(text) ?? 0) * 2 > wrong.length;
  const label = ({ text, misconception }: Option): string =>
    isShared(text)
      ? text
      : misconception === undefined
        ? otherText
        : `against: ${misconceptions[misconception]}`;

  const counts = new Map<string, Choice>();
  const count = (text: string, isRight: boolean, people: number): void => {
    const there = counts.get(`${String(isRight)} ${text}`);
    counts.set(`${String(isRight)} ${text}`, {
      text,
      right: isRight,
      people: (there?.people ?? 0) + people,
    });
  };
  count('wholly right', true, right);
  for (const given of wrong) {
    const { item, answer } = given;
    const options = optionsOf(item);
    if (options.length === 0) {
      const [idea] = given.misconceptions;
      count(idea === undefined ? 'not wholly right' : `against: ${misconceptions[idea]}`, false, 1);
      continue;
    }
    const chosen = chosenOf(answer);
    for (const option of options) {
      const people = chosen.includes(option.id) ? 1 : 0;
      // What nobody chose is worth a row only where everybody saw it.
      if (people > 0 || (wrong.length > 1 && isShared(option.text)))
        if (item.kind === 'several' || !option.right) count(label(option), option.right, people);
    }
  }
  return [...counts.values()];
}
