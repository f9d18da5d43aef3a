import 'server-only';
import { z } from 'zod';
import { loadItemWorld } from '../content/item-world';
import { course } from '../course/lessons';
import { drawItem } from '../items/draw-item';
import { gradeItem, type ItemFeedback } from '../items/grade-item';
import { itemAnswerSchema } from '../items/item-answer';
import { familiesOf } from '../items/item-bank';
import { faceOfItem, type ItemFace } from '../items/item-face';
import type { Item } from '../items/item';
import { randomFrom } from '../variants/random';
import { refusalText } from './question-refusals';
import { failure, notFound, success, type Result } from './result';

/** Where a visitor's question comes from: the address of its page, no more; nothing is kept. */
const addressSchema = z.object({
  lesson: z.enum(course.map(({ slug }) => slug)),
  /** Any text: it seeds the round. */
  round: z.string().min(1).max(100),
  /** Which question of the round, from 1. */
  number: z.number().int().min(1).max(10_000),
  /** The author's look: only questions of this family, or of this template of it. */
  family: z.string().max(100).nullable(),
  template: z.string().max(100).nullable(),
});
export type QuestionAddress = z.output<typeof addressSchema>;

/** A round goes through all families of its lesson before one comes again, and then with another template. */
function questionAt({ lesson, round, number, ...look }: QuestionAddress): Item | null {
  const random = randomFrom(round);
  const wanted = (id: string, chosen: string | null) => chosen === null || chosen === id;
  const families = random.shuffle(familiesOf(lesson).filter(({ id }) => wanted(id, look.family)));
  const family = families[(number - 1) % families.length];
  if (family === undefined) return null;
  const cycle = Math.floor((number - 1) / families.length);
  const templates = randomFrom(`${round}/${family.id}`)
    .shuffle(Object.keys(family.templates))
    .filter((id) => wanted(id, look.template));
  const template = templates[cycle % templates.length];
  if (template === undefined) return null;
  return drawItem(family, template, { seed: `${round}/${String(number)}`, world: loadItemWorld() });
}

function readAddress(input: unknown): Result<Item> {
  const parsed = addressSchema.safeParse(input);
  if (!parsed.success) return notFound();
  const item = questionAt(parsed.data);
  return item === null
    ? failure('no-questions', 'There are no questions of this kind here.')
    : success(item);
}

/** The question that this address stands for; the same address gives the same question. */
export function visitorQuestion(
  input: unknown,
): Result<{ face: ItemFace; family: string; template: string }> {
  const read = readAddress(input);
  if (!read.ok) return read;
  const { family, template } = read.value;
  return success({ face: faceOfItem(read.value), family, template });
}

/** Makes the question again from its address and marks the answer. */
export function markVisitorQuestion(
  input: unknown,
  answer: unknown,
): Result<{ face: ItemFace; feedback: ItemFeedback }> {
  const read = readAddress(input);
  if (!read.ok) return read;
  const parsed = itemAnswerSchema.safeParse(answer);
  if (!parsed.success) return failure('bad-input', refusalText('other-question'));
  const graded = gradeItem(read.value, parsed.data);
  return graded.ok
    ? success({ face: faceOfItem(read.value), feedback: graded.feedback })
    : failure(graded.refusal.code, refusalText(graded.refusal.code));
}
