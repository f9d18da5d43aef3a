import type { DayHazard } from '@/lib/finder/day-hazard';
import {
  hazardsAtEnd,
  settingAfter,
  settingAfterAll,
  settingAtFirst,
  type SettingAction,
  type SettingState,
} from '@/lib/finder/setting';
import { mostActions, recorded } from '@/lib/finder/setting-record';
import { aimFromFinder, aimFromTube, minus } from '@/lib/finder/sights';
import { aimsOf, settingStartOf, type NamedAim } from '@/lib/grading/bench/finder/finder-replay';
import type { FinderDraft } from '@/lib/grading/bench/finder/finder-submission';
import { asSeen, type FieldOffset } from '@/lib/optics/image-orientation';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';

/** How things stand after all that was done. Work that does not fit the task stands as at the start. */
export function stateOf(variant: FinderVariant, draft: FinderDraft): SettingState {
  const start = settingStartOf(variant);
  return settingAfterAll(start, draft.actions) ?? settingAtFirst(start);
}

export type Done =
  | { ok: true; draft: FinderDraft; state: SettingState; newHazards: readonly DayHazard[] }
  | { ok: false; reason: 'cannot' | 'too-many' };

/** The work with one more thing done. */
export function afterDoing(
  variant: FinderVariant,
  draft: FinderDraft,
  action: SettingAction,
): Done {
  const before = stateOf(variant, draft);
  const state = settingAfter(before, action, settingStartOf(variant));
  if (state === null) return { ok: false, reason: 'cannot' };
  const actions = recorded(draft.actions, action, before.capsOn);
  if (actions.length > mostActions) return { ok: false, reason: 'too-many' };
  const newHazards = state.hazards.filter((hazard) => !before.hazards.includes(hazard));
  return { ok: true, draft: { ...draft, actions }, state, newHazards };
}

/** What can be set on now. */
export const aimsNow = (variant: FinderVariant, { dusk }: SettingState): readonly NamedAim[] =>
  aimsOf(variant, dusk);

/** What was chosen to set it on; null before. */
export const chosenAim = (variant: FinderVariant, state: SettingState): NamedAim | null =>
  aimsNow(variant, state).find(({ id }) => id === state.targetId) ?? null;

/** Where an aim appears in the eyepiece that is in, as that tube shows it; null out of its view. */
export function inEyepiece(
  variant: FinderVariant,
  { tube, eyepiece }: SettingState,
  aim: NamedAim,
  reachArcmin = 0,
): FieldOffset | null {
  const offset = aimFromTube(tube, aim);
  if (offset === null) return null;
  const seen = asSeen(offset, variant.orientation);
  const reach = variant.eyepieces[eyepiece].radiusArcmin + reachArcmin;
  return Math.hypot(seen.rightArcmin, seen.upArcmin) <= reach ? seen : null;
}

/** How far the finder's window reaches from the tube's direction, arcminutes. A drawing's choice, no source. */
export const windowRadiusArcmin = 160;

/** Where an aim appears in the finder's window, from its middle; null outside it. */
export function inFinder(
  { finder }: FinderVariant,
  { tube }: SettingState,
  aim: NamedAim,
): FieldOffset | null {
  const seen = aimFromFinder(tube, aim, finder);
  return seen !== null && Math.hypot(seen.rightArcmin, seen.upArcmin) <= windowRadiusArcmin
    ? seen
    : null;
}

/** From the red dot to an aim, as the finder shows them; null outside the window. */
export function fromDot(
  variant: FinderVariant,
  state: SettingState,
  aim: NamedAim,
): FieldOffset | null {
  const seen = inFinder(variant, state, aim);
  return seen === null ? null : minus(seen, state.dot);
}

/** Open by day, though it should not be: what is to be done about it at once. */
export const dangersNow = (variant: FinderVariant, draft: FinderDraft): readonly DayHazard[] =>
  hazardsAtEnd(stateOf(variant, draft)).filter(({ id }) => id !== 'left-open');
