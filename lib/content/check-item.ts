import { z } from 'zod';

const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'use small letters, figures and hyphens');

/** A sentence in which `{{hit-rate wren 130/40 220/35}}` stands for a number from the engine. */
const sentence = z.string().trim().min(1);

/** What the engine must find true for a reason to be given: `altitude evening:Altair < 20`. */
const condition = z.string().regex(/\s(<|>)\s/, 'a condition compares two values with < or >');

const optionSchema = z.strictObject({
  id,
  text: sentence,
  /** Why it is right or wrong, in full sentences. */
  reason: sentence,
  /** The engine's evidence for the reason. */
  shownBy: z.array(condition).default([]),
  /** What the item's key must have the most of. */
  measure: z.string().optional(),
});

const slipSchema = z.strictObject({
  /** The answer that this slip leads to, as a number or as an expression. */
  gives: z.union([z.number(), z.string()]),
  reason: sentence,
});

const common = { id, prompt: sentence };

const choiceItemSchema = z.strictObject({
  ...common,
  kind: z.literal('choice'),
  /** The id of the one right option. */
  key: id,
  options: z.array(optionSchema).min(3).max(5),
});

const numericItemSchema = z.strictObject({
  ...common,
  kind: z.literal('numeric'),
  unit: z.string().min(1),
  key: z.union([z.number(), z.string()]),
  /** Full marks within this much of the key. */
  fullWithin: z.number().min(0),
  /** Nothing beyond this; a straight line between. */
  zeroBeyond: z.number().positive(),
  /** Azimuths: 359 is 2 away from 1. */
  wrapsAt360: z.boolean().default(false),
  /** What is said with every answer: how one gets there. */
  reason: sentence,
  slips: z.array(slipSchema).default([]),
});

/**
 * A question of a lesson. Domain rules: exactly one option is right, and a numeric band is full
 * within `fullWithin`, zero beyond `zeroBeyond`, linear between (design: grading and measurement).
 */
export const checkItemSchema = z
  .discriminatedUnion('kind', [choiceItemSchema, numericItemSchema])
  .superRefine((item, context) => {
    if (item.kind === 'numeric') {
      if (item.zeroBeyond <= item.fullWithin) {
        context.addIssue({ code: 'custom', message: 'zeroBeyond must be more than fullWithin' });
      }
      return;
    }
    const ids = item.options.map((option) => option.id);
    if (new Set(ids).size !== ids.length) {
      context.addIssue({ code: 'custom', message: 'two options have the same id' });
    }
    if (!ids.includes(item.key)) {
      context.addIssue({ code: 'custom', message: `the key "${item.key}" is no option` });
    }
    const measured = item.options.filter((option) => option.measure !== undefined).length;
    if (measured > 0 && measured < item.options.length) {
      context.addIssue({ code: 'custom', message: 'give every option a measure, or none' });
    }
  });

export type CheckItem = z.output<typeof checkItemSchema>;
export type ChoiceItem = z.output<typeof choiceItemSchema>;
export type NumericItem = z.output<typeof numericItemSchema>;

/** The side of an item that goes into the page: nothing in it tells the answer. */
export type CheckItemFace =
  | { id: string; kind: 'choice'; prompt: string; options: readonly { id: string; text: string }[] }
  | { id: string; kind: 'numeric'; prompt: string; unit: string };
