import { z } from 'zod';

/** How far the focuser goes to either side of the middle, millimetres. */
export const focusTravelMm = 20;

/** Where something stands, or which way to go, along the horizon and upward. */
const wayShape = { along: z.enum(['left', 'right']), up: z.enum(['up', 'down']) };
const way = z.strictObject({ along: wayShape.along.nullable(), up: wayShape.up.nullable() });
const wayDone = z.strictObject(wayShape);
export type FieldWay = z.infer<typeof wayDone>;

const focusMm = z.number().min(-focusTravelMm).max(focusTravelMm);
const fieldArcmin = z.number().min(0).max(6000);
const driftSeconds = z.number().min(0).max(100_000);
const limitArcsec = z.number().min(0).max(1000);
/** 'none': no eyepiece on the bench can do it. */
const eyepieceId = z.string().max(40);

/** What the learner did. Never a score. What is not asked stays null. */
export const fieldSubmissionSchema = z.strictObject({
  eyepieceId,
  focusMm,
  fieldArcmin: fieldArcmin.nullable(),
  driftSeconds: driftSeconds.nullable(),
  limitArcsec: limitArcsec.nullable(),
  way: wayDone.nullable(),
  view: wayDone.nullable(),
});
export type FieldSubmission = z.infer<typeof fieldSubmissionSchema>;

/** Work in progress, kept so that an interrupted attempt resumes. */
export const fieldDraftSchema = fieldSubmissionSchema.extend({
  eyepieceId: eyepieceId.nullable(),
  way: way.nullable(),
  view: way.nullable(),
});
export type FieldDraft = z.infer<typeof fieldDraftSchema>;
export const emptyFieldDraft: FieldDraft = {
  eyepieceId: null,
  focusMm: 0,
  fieldArcmin: null,
  driftSeconds: null,
  limitArcsec: null,
  way: null,
  view: null,
};
