import { z } from 'zod';

const id = z.string().regex(/^[a-z]$/);

/** What a learner did with a question, as the browser sends it. */
export const itemAnswerSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('choice'), option: id.nullable() }),
  z.strictObject({ kind: z.literal('point'), option: id.nullable() }),
  z.strictObject({ kind: z.literal('several'), options: z.array(id).max(26) }),
  z.strictObject({ kind: z.literal('order'), steps: z.array(id).max(26) }),
  z.strictObject({ kind: z.literal('match'), pairs: z.record(id, id) }),
  /** As typed. */
  z.strictObject({ kind: z.literal('numeric'), text: z.string().max(40) }),
]);
export type ItemAnswer = z.output<typeof itemAnswerSchema>;
