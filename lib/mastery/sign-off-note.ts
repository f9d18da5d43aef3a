import { z } from 'zod';
import { skills } from '../course/skills';
import { lights } from './evening';
import { gateIds, gatesOfSkill } from './sign-off-gates';

/** 128 random bits in hexadecimal, made on the device: the same note sent twice is one. */
const keySchema = z.string().regex(/^[0-9a-f]{32}$/);

export const clouds = ['clear', 'some', 'overcast'] as const;

export const conditionsSchema = z.object({ light: z.enum(lights), cloud: z.enum(clouds) });
export type Conditions = z.infer<typeof conditionsSchema>;

export const gatesSchema = z.array(z.enum(gateIds)).max(gateIds.length);

const levelSchema = z.union([z.literal(1), z.literal(2), z.literal(3), z.literal(4)]);

export const longestNote = 500;
export const longestInstrument = 60;
export const mostPrompts = 99;

/** What is said of one student and one skill. */
const saidSchema = z.object({
  key: keySchema,
  studentId: z.string().max(64),
  skill: z.enum(skills),
  level: levelSchema,
  gates: gatesSchema,
  prompts: z.int().min(0).max(mostPrompts),
  note: z.string().trim().max(longestNote),
});

/** Says what becomes of earlier notes of that evening which the assessor knows of. */
const overSchema = z.object({
  keys: z.array(keySchema).max(20),
  how: z.enum(['replace', 'beside']),
});

const noteSchema = saidSchema
  .extend({
    kind: z.literal('note'),
    instrument: z.string().trim().max(longestInstrument),
    conditions: conditionsSchema,
    /** An instant by the device's clock (UTC), or, typed in from paper, the date of the evening. */
    observedAt: z.union([z.iso.datetime(), z.iso.date()]),
    over: overSchema.nullable(),
  })
  .refine(({ skill, gates }) => gates.every((gate) => gatesOfSkill[skill].includes(gate)), {
    message: 'That gate does not belong to this skill.',
  });
export type OutgoingNote = z.infer<typeof noteSchema>;

/** Undoes a note, and brings back those that it had taken the place of. */
const takeBackSchema = z.object({
  kind: z.literal('take-back'),
  key: keySchema,
  restores: z.array(keySchema).max(20),
});
export type TakeBack = z.infer<typeof takeBackSchema>;

/** What a device sends. */
export const outgoingSchema = z.union([noteSchema, takeBackSchema]);
export type Outgoing = z.infer<typeof outgoingSchema>;

/** What the server has of a note, as far as the sheet shows it. */
export const knownNoteSchema = saidSchema.extend({
  /** YYYY-MM-DD. */
  evening: z.iso.date(),
  /** By the teacher who is looking. */
  mine: z.boolean(),
});
export type KnownNote = z.infer<typeof knownNoteSchema>;

const answerSchema = z.discriminatedUnion('outcome', [
  /** Now there; `gone` are the keys it took the place of. */
  z.object({
    outcome: z.literal('stored'),
    key: keySchema,
    known: knownNoteSchema,
    gone: z.array(keySchema),
    /** What others said of the same that evening: it stands beside. */
    colleagues: z.array(knownNoteSchema).optional(),
  }),
  /** The same was there before: sent twice, or noted twice alike. Null: it was taken back since. */
  z.object({
    outcome: z.literal('already-there'),
    key: keySchema,
    known: knownNoteSchema.nullable(),
  }),
  /** The assessor said otherwise that evening; nothing was changed. */
  z.object({ outcome: z.literal('conflict'), key: keySchema, existing: z.array(knownNoteSchema) }),
  z.object({
    outcome: z.literal('taken-back'),
    key: keySchema,
    back: z.array(knownNoteSchema),
  }),
  z.object({ outcome: z.literal('refused'), key: keySchema, message: z.string() }),
]);
export type OutgoingAnswer = z.infer<typeof answerSchema>;

export const answersSchema = z.object({ answers: z.array(answerSchema) });

type Said = Pick<KnownNote, 'key' | 'level' | 'gates' | 'prompts' | 'note'>;

/** The same level and the same gates: what a student's standing hangs on. */
export const judgesAlike = (
  one: Pick<KnownNote, 'level' | 'gates'>,
  other: Pick<KnownNote, 'level' | 'gates'>,
): boolean =>
  one.level === other.level && one.gates.toSorted().join() === other.gates.toSorted().join();

const saysTheSame = (one: Said, other: Said): boolean =>
  judgesAlike(one, other) && one.prompts === other.prompts && one.note === other.note;

/**
 * What becomes of a note that arrives where the same assessor has said something of the same student, skill
 * and evening before. Two that differ are a conflict, unless the newer one says that it knows the older:
 * then it takes its place, or stands beside it. Nothing is ever overwritten unasked.
 */
export function meetEarlier<Earlier extends Said>(
  note: Said & { over: OutgoingNote['over'] },
  earlier: readonly Earlier[],
):
  | { kind: 'new'; replaces: Earlier[] }
  | { kind: 'same'; as: Earlier }
  | { kind: 'conflict'; with: Earlier[] } {
  const keys = note.over?.keys ?? [];
  const unknown = earlier.filter(({ key }) => !keys.includes(key));
  const same = unknown.find((one) => saysTheSame(one, note));
  if (same !== undefined) return { kind: 'same', as: same };
  if (unknown.length > 0) return { kind: 'conflict', with: unknown };
  return { kind: 'new', replaces: note.over?.how === 'replace' ? [...earlier] : [] };
}
