import { z } from 'zod';
import type { ItemDrawing, Tone } from '../drawings/drawing';
import type { Item } from '../items/item';
import { misconceptions, type MisconceptionId } from '../items/misconceptions';

/*
 * A question as a JSON column keeps it, whole. It was written by this product, but perhaps by an older
 * one: reading it is a border like any other.
 */

const number = z.number();
const text = z.string();

const tone = z.enum([
  ...(['ink', 'soft', 'line', 'strong', 'panel', 'sunken', 'accent', 'lamp', 'good'] as const),
  ...(['caution', 'danger', 'sky', 'sky-line', 'on-sky', 'on-sky-soft', 'sky-lamp'] as const),
  'land',
]) satisfies z.ZodType<Tone>;

const stroke = {
  stroke: tone.optional(),
  width: number.optional(),
  dashed: z.boolean().optional(),
};
const paint = { ...stroke, fill: tone.optional() };

const shapeSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('line'), x1: number, y1: number, x2: number, y2: number, ...stroke }),
  z.object({ kind: z.literal('circle'), cx: number, cy: number, r: number, ...paint }),
  z.object({
    kind: z.literal('rect'),
    x: number,
    y: number,
    w: number,
    h: number,
    round: number.optional(),
    turnDeg: number.optional(),
    ...paint,
  }),
  z.object({ kind: z.literal('path'), d: text, ...paint }),
  z.object({
    kind: z.literal('text'),
    x: number,
    y: number,
    text,
    size: number.optional(),
    tone: tone.optional(),
    anchor: z.enum(['start', 'middle', 'end']).optional(),
    bold: z.boolean().optional(),
  }),
]);

export const drawingSchema: z.ZodType<ItemDrawing> = z.object({
  width: number,
  height: number,
  alternative: text,
  shapes: z.array(shapeSchema),
});

const isKnown = (id: unknown): id is MisconceptionId =>
  typeof id === 'string' && Object.hasOwn(misconceptions, id);
/** One that was renamed since is no longer named; the question that carried it stays readable. */
const misconception = z
  .unknown()
  .transform((id) => (isKnown(id) ? id : undefined))
  .optional();
/** Several, without those that were renamed since. */
export const misconceptionsSchema = z.array(z.unknown()).transform((ids) => ids.filter(isKnown));
const reasoned = { id: text, text, reason: text, misconception };
const lettered = z.object({ id: text, text });

const common = {
  family: text,
  template: text,
  generatorVersion: z.int(),
  prompt: text,
  explanation: text,
  drawing: drawingSchema.optional(),
  afterwards: drawingSchema.optional(),
};

export const storedItemSchema: z.ZodType<Item> = z.discriminatedUnion('kind', [
  z.object({
    ...common,
    kind: z.literal('choice'),
    options: z.array(z.object(reasoned)),
    key: text,
  }),
  z.object({
    ...common,
    kind: z.literal('several'),
    options: z.array(z.object({ ...reasoned, right: z.boolean() })),
  }),
  z.object({
    ...common,
    kind: z.literal('order'),
    steps: z.array(lettered),
    rules: z.array(z.object({ first: text, then: text, reason: text })),
  }),
  z.object({
    ...common,
    kind: z.literal('match'),
    left: z.array(lettered),
    right: z.array(lettered),
    pairs: z.array(z.object({ left: text, right: text, reason: text })),
  }),
  z.object({
    ...common,
    kind: z.literal('numeric'),
    unit: text,
    key: number,
    tolerance: z.object({ mode: z.enum(['absolute', 'relative']), full: number, zero: number }),
    wrapsAt360: z.boolean().optional(),
    slips: z.array(z.object({ gives: number, reason: text, misconception })),
  }),
  z.object({
    ...common,
    kind: z.literal('point'),
    drawing: drawingSchema,
    key: text,
    spots: z.array(
      z.object({ id: text, x: number, y: number, where: text, reason: text, misconception }),
    ),
  }),
]);
