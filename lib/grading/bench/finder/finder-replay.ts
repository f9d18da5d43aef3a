import {
  settingAfter,
  settingAtFirst,
  type SettingAction,
  type SettingStart,
  type SettingState,
} from '../../../finder/setting';
import type { Aim } from '../../../finder/sights';
import type { FinderVariant } from '../../../variants/bench/finder/finder-variant';
import type { FinderResult } from './finder-result';

/** A task's telescope before anybody touched it. */
export const settingStartOf = (variant: FinderVariant): SettingStart => ({
  tube: variant.tubeAtFirst,
  eyepiece: variant.eyepieceAtFirst,
  dot: variant.dotAtFirst,
  adjusters: variant.adjusters,
  locked: variant.lockedAtFirst,
  targetId: variant.givenTargetId,
  sun: variant.day?.sun ?? null,
  hasDusk: variant.dusk !== null,
});

/** Something of the scene that a finder can be set on, with its name. */
export type NamedAim = Aim & { id: string; name: string };

/** What can be set on while it is day, or at dusk; empty where the task has no such hour. */
export const aimsOf = ({ day, dusk }: FinderVariant, atDusk: boolean): readonly NamedAim[] =>
  atDusk
    ? (dusk?.lights ?? []).map(({ id, name, azimuthDeg, altitudeDeg }) => ({
        id,
        name,
        azimuthDeg,
        altitudeDeg,
        distanceM: null,
      }))
    : (day?.targets ?? []);

export type FinderReplay = { state: SettingState; ways: FinderResult['ways'] };

/** More pieces of way than this are not kept for the picture. */
const mostWays = 120;

/** All that was done, done again; null when it cannot have been done. */
export function replayOf(
  variant: FinderVariant,
  actions: readonly SettingAction[],
): FinderReplay | null {
  const start = settingStartOf(variant);
  let state = settingAtFirst(start);
  const ways: FinderResult['ways'][number][] = [];
  for (const action of actions) {
    if (action.do === 'choose' && !canChoose(variant, state, action.target)) return null;
    const after = settingAfter(state, action, start);
    if (after === null) return null;
    if (action.do === 'move' && ways.length < mostWays) {
      ways.push({ open: !state.capsOn, byDay: !state.dusk, from: state.tube, to: after.tube });
    }
    state = after;
  }
  return { state, ways };
}

const canChoose = (variant: FinderVariant, { dusk }: SettingState, id: string): boolean =>
  (variant.givenTargetId === null || id === variant.givenTargetId) &&
  aimsOf(variant, dusk).some((aim) => aim.id === id);
