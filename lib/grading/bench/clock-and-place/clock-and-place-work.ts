import {
  fieldsOfEntry,
  formEntries,
  type FormEntry,
  type FormField,
  type MountForm,
} from '../../../clock/mount-form';
import type { ClockAndPlaceVariant } from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import {
  emptyFormDraft,
  mountFormSchema,
  type ClockAndPlaceDraft,
  type FormDraft,
} from './clock-and-place-submission';

/** What decides which rows may be changed. */
type Said = Pick<ClockAndPlaceDraft, 'flagged' | 'named' | 'verdict' | 'readings' | 'asked'>;

/**
 * The rows of the form that stand open: in a form to check those said to be wrong, where the dew was the
 * one that was named, in the night of the change those of time once it is known what they mean.
 */
export function openRows(
  { template, open, change }: ClockAndPlaceVariant,
  said: Said,
): FormEntry[] {
  if (template === 'check-the-form') return open.filter((row) => said.flagged.includes(row));
  if (template === 'dew-on-the-card') return open.filter((row) => row === said.named);
  if (change !== null && !(said.verdict === 'plain' || said.asked)) return [];
  return [...open];
}

/** The form as it stands: what is given, and in the open rows what was entered over it. */
export function formAsItStands(
  variant: ClockAndPlaceVariant,
  work: Said & { form: FormDraft },
): FormDraft {
  const rows = openRows(variant, work);
  const entered = formEntries
    .filter((row) => rows.includes(row))
    .flatMap((row) => fieldsOfEntry[row])
    .filter((field) => work.form[field] !== null)
    .map((field): [FormField, FormDraft[FormField]] => [field, work.form[field]]);
  return { ...emptyFormDraft, ...variant.given, ...Object.fromEntries(entered) };
}

/** The form when nothing of it is missing any more; null before. */
export const fullForm = (form: FormDraft): MountForm | null =>
  mountFormSchema.safeParse(form).data ?? null;

/** Rows of which something is missing. */
export const emptyRows = (form: FormDraft): FormEntry[] =>
  formEntries.filter((row) => fieldsOfEntry[row].some((field) => form[field] === null));
