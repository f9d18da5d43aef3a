import { formProblem, type MountForm } from '@/lib/clock/mount-form';
import type { ClockAndPlaceDraft } from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import { formAsItStands, fullForm } from '@/lib/grading/bench/clock-and-place/clock-and-place-work';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { overlayOf, type Overlay } from './overlay-stars';

export type ClockViewProps = BenchViewProps<ClockAndPlaceVariant, ClockAndPlaceDraft>;

/** The form that would be handed in now; null while something is missing. */
export const formNow = (
  variant: ClockAndPlaceVariant,
  draft: ClockAndPlaceDraft,
): MountForm | null => fullForm(formAsItStands(variant, draft));

/** The sky to be shown beside a work, or why there is none yet. */
export type ShownSky =
  | { overlay: Overlay; shown: 'both' | 'believed' | 'real'; lead: string }
  | { overlay: null; lead: string };

const nothing = (lead: string): ShownSky => ({ overlay: null, lead });

/**
 * In practice the sky that the mount believes in lies over the real one as soon as there is one; in a
 * check it stands alone. Where the first slew landed is the task itself and shown in both.
 */
export function shownSky({
  variant,
  draft,
  mode,
}: Pick<ClockViewProps, 'variant' | 'draft' | 'mode'>): ShownSky {
  const evidence = variant.template === 'dew-on-the-card';
  if (evidence && (mode === 'check' || draft.named === null)) {
    const given = fullForm({ ...draft.form, ...variant.given });
    const overlay = given === null ? null : overlayOf(variant, given, null);
    if (overlay === null) throw new Error('a form that is given is a full one');
    return { overlay, shown: 'both', lead: 'Where the first slews landed.' };
  }
  const form = formNow(variant, draft);
  if (form === null) {
    const real = mode === 'practice' ? overlayOf(variant, variant.right, null) : null;
    return real === null
      ? nothing('When the form is full, the sky that the mount will believe in is drawn here.')
      : {
          overlay: real,
          shown: 'real',
          lead: 'The real sky. When the form is full, the mount’s sky is laid over it.',
        };
  }
  if (formProblem(form) !== null) return nothing('No mount would take this date or place.');
  if (variant.declinationDeg !== null && draft.compassDeg === null) {
    return nothing('Turn the tube to its start direction first.');
  }
  const overlay = overlayOf(variant, form, draft.compassDeg);
  if (overlay === null) return nothing('No mount would take this date.');
  return mode === 'practice'
    ? { overlay, shown: 'both', lead: 'The mount’s sky over the real one.' }
    : { overlay, shown: 'believed', lead: 'The sky that the mount will believe in.' };
}
