import type { SettingMoment, SettingState } from '../../../finder/setting';
import { aimFromTube, minus, parallaxOf, plus, sizeArcmin } from '../../../finder/sights';
import { asSeen, type FieldOffset } from '../../../optics/image-orientation';
import { directionFromAzAlt, separationDeg } from '../../../units/vector';
import type { FinderVariant } from '../../../variants/bench/finder/finder-variant';
import { aimsOf, type NamedAim } from './finder-replay';
import type { ResidualShares } from './finder-result';

/** How a moment of locking looks from tube and finder. Arcminutes beside the tube. */
export type LockSights = {
  moment: SettingMoment;
  target: NamedAim;
  dot: FieldOffset;
  /** Of the target from the tube's axis; null for one that is behind it. */
  offCentre: FieldOffset | null;
  /** From the dot to the target, as the finder shows it. */
  gap: FieldOffset | null;
  parallax: FieldOffset;
  /** Great circle; null once the Sun is down. */
  fromSunDeg: number | null;
};

export type FinderSights = LockSights & {
  shares: ResidualShares;
  starInEyepiece: FieldOffset | null;
};

/** The same for the last locking of a setting; null before there is one. */
export function finderSights(variant: FinderVariant, state: SettingState): FinderSights | null {
  const sights = state.atLock === null ? null : sightsAt(variant, state.atLock);
  if (sights === null) return null;
  const { template, orientation } = variant;
  return {
    ...sights,
    shares: sharesOf(sights),
    starInEyepiece: template === 'near-then-predict' ? asSeen(sights.parallax, orientation) : null,
  };
}

/** Null where nothing had been chosen to set it on. */
export function sightsAt(variant: FinderVariant, moment: SettingMoment): LockSights | null {
  const target = aimsOf(variant, moment.dusk).find(({ id }) => id === moment.targetId);
  if (target === undefined) return null;
  const { dot, tube } = moment;
  const offCentre = aimFromTube(tube, target);
  const parallax = parallaxOf(variant.finder, target.distanceM);
  const sun = moment.dusk ? null : (variant.day?.sun ?? null);
  return {
    moment,
    target,
    dot,
    offCentre,
    parallax,
    gap: offCentre === null ? null : minus(plus(offCentre, parallax), dot),
    fromSunDeg:
      sun === null
        ? null
        : separationDeg(
            directionFromAzAlt(target.azimuthDeg, target.altitudeDeg),
            directionFromAzAlt(sun.azimuthDeg, sun.altitudeDeg),
          ),
  };
}

/** The dot lies where parallax, centring and the hand at the screws put it: dot = parallax + off − gap. */
function sharesOf({ dot, parallax, offCentre, gap }: LockSights): ResidualShares {
  const size = sizeArcmin(dot);
  const along = (part: FieldOffset | null, sign: 1 | -1): number =>
    part === null || size === 0
      ? 0
      : // Plus nothing, as JSON knows no −0.
        (sign * (part.rightArcmin * dot.rightArcmin + part.upArcmin * dot.upArcmin)) / size + 0;
  return { distance: along(parallax, 1), centring: along(offCentre, 1), dot: along(gap, -1) };
}
