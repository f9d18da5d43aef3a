import { nearestToSunDeg } from '../../../finder/way-past-sun';
import type { SettingState } from '../../../finder/setting';
import { parallaxOf, sizeArcmin } from '../../../finder/sights';
import { degreesToRadians, radiansToDegrees } from '../../../units/angle';
import type { FieldOffset } from '../../../optics/image-orientation';
import { directionFromAzAlt, separationDeg } from '../../../units/vector';
import type {
  DayTarget,
  FinderTemplate,
  FinderVariant,
} from '../../../variants/bench/finder/finder-variant';
import type { BenchCriterion } from '../bench-result';
import type { FinderCriterion } from './finder-result';
import { sightsAt, type FinderSights, type LockSights } from './finder-sights';
import type { FinderAnswers } from './finder-submission';

// Full within the first figure, none beyond the second, straight between. Ours, without a source; that
// what is left must be less than half the eyepiece's true field is the design's, "Finder".

/** Of the high-power eyepiece's field radius: parallax of a target, and what is left at the end. */
export const leftOver = [0.6, 1] as const;
/** Of the same: how far off the middle the target stood when the screws were locked. */
export const centred = [0.2, 1] as const;
/** Between dot and target, arcminutes. A red dot covers four or five. */
export const dotOn = [3, 15] as const;
/** An angle that is reckoned, and one that is read off by eye: share of what it is. */
const reckoned = [0.1, 0.5] as const;
const readOff = [0.15, 0.6] as const;
/** Direction in the eyepiece, degrees: half an hour of the clock's face and a little, and three hours. */
const direction = [20, 90] as const;
/** At the edge of a field both answers are right. Share of the radius. */
const edge = 0.05;
/** At every limit the benefit of a dead band, degrees. */
const sunDeadBandDeg = 0.1;

export const ramp = (value: number, [full, none]: readonly [number, number]): number =>
  Math.min(1, Math.max(0, (none - value) / (none - full)));

type Work = {
  variant: FinderVariant;
  state: SettingState;
  sights: FinderSights;
  answers: FinderAnswers;
};

/** What each part is worth in each kind of task; 100 together. */
const possible: Readonly<Record<FinderTemplate, Partial<Record<FinderCriterion, number>>>> = {
  'free-target': { target: 20, centring: 15, dot: 15, residual: 35, steps: 15 },
  'far-ones-by-the-sun': { target: 20, centring: 15, dot: 15, residual: 35, steps: 15 },
  'day-then-dusk': { day: 20, centring: 15, dot: 15, residual: 35, steps: 15 },
  'near-then-predict': { centring: 15, dot: 15, size: 20, direction: 20, fields: 15, steps: 15 },
  'set-by-another': { cause: 15, size: 15, centring: 15, dot: 10, residual: 30, steps: 15 },
};

export function finderCriterionMarks(work: Work): BenchCriterion<FinderCriterion>[] {
  const shares = finderShares(work);
  const parts = Object.entries(possible[work.variant.template]);
  return parts.map(([id, worth]) => {
    const criterion = id as FinderCriterion;
    return { id: criterion, possible: worth, earned: worth * shares[criterion]() };
  });
}

/** The share earned of each part, worked out for those that the task has. */
function finderShares(work: Work): Record<FinderCriterion, () => number> {
  const { variant, state, sights, answers } = work;
  const radiusArcmin = variant.eyepieces.high.radiusArcmin;
  return {
    target: () => targetShare(sights, radiusArcmin),
    day: () => dayShare(variant, state),
    centring: () => centringShare(sights, radiusArcmin),
    dot: () => dotShare(sights),
    residual: () => ramp(sizeArcmin(sights.dot) / radiusArcmin, leftOver),
    size: () => sizeShare(variant, sights, answers),
    direction: () => directionShare(sights, answers),
    fields: () =>
      (Number(fieldJudgedRightly(variant, sights, answers, 'low')) +
        Number(fieldJudgedRightly(variant, sights, answers, 'high'))) /
      2,
    cause: () => (answers.setOnM === variant.setOnBefore?.distanceM ? 1 : 0),
    steps: () =>
      (5 * Number(searchedLow(variant, state)) + 10 * Number(checkedHigh(variant, sights))) / 15,
  };
}

export const bySun = ({ fromSunDeg }: Pick<LockSights, 'fromSunDeg'>): boolean =>
  fromSunDeg !== null && fromSunDeg < nearestToSunDeg - sunDeadBandDeg;

export const targetShare = (sights: LockSights, radiusArcmin: number): number =>
  bySun(sights) ? 0 : ramp(sizeArcmin(sights.parallax) / radiusArcmin, leftOver);

export const centringShare = ({ offCentre }: LockSights, radiusArcmin: number): number =>
  offCentre === null ? 0 : ramp(sizeArcmin(offCentre) / radiusArcmin, centred);

export const dotShare = ({ gap }: LockSights): number =>
  gap === null ? 0 : ramp(sizeArcmin(gap), dotOn);

/** Of the things clear of the Sun the one that shifts least; null where there is none. */
export function bestByDay({ day }: FinderVariant): DayTarget | null {
  if (day === null) return null;
  const sun = directionFromAzAlt(day.sun.azimuthDeg, day.sun.altitudeDeg);
  const clear = day.targets.filter(
    ({ azimuthDeg, altitudeDeg }) =>
      !bySun({ fromSunDeg: separationDeg(directionFromAzAlt(azimuthDeg, altitudeDeg), sun) }),
  );
  return clear.reduce<DayTarget | null>(
    (best, one) => (best === null || one.distanceM > best.distanceM ? one : best),
    null,
  );
}

/** The last locking while it was day, whether or not dusk has come since. */
export const lockedByDay = ({ dayLock, atLock }: SettingState): SettingState['dayLock'] =>
  dayLock ?? (atLock === null || atLock.dusk ? null : atLock);

/** By day the best of what there is, set as well as it can be: half for the choice, half for the work. */
function dayShare(variant: FinderVariant, state: SettingState): number {
  const best = bestByDay(variant);
  const dayLock = lockedByDay(state);
  const sights = dayLock === null ? null : sightsAt(variant, dayLock);
  if (best === null || sights === null || bySun(sights)) return 0;
  const least = sizeArcmin(parallaxOf(variant.finder, best.distanceM));
  const choice = Math.min(1, least / sizeArcmin(sights.parallax));
  const work = dotShare(sights) * centringShare(sights, variant.eyepieces.low.radiusArcmin);
  return (choice + work) / 2;
}

export function sizeShare(
  variant: FinderVariant,
  sights: FinderSights,
  answers: FinderAnswers,
): number {
  const said = answers.offArcmin;
  const really = askedSizeArcmin(variant, sights);
  if (said === null || really === 0) return 0;
  return ramp(
    Math.abs(said / really - 1),
    variant.template === 'near-then-predict' ? reckoned : readOff,
  );
}

/** How far beside the middle a star under the dot sits: after the setting, or before it. */
export const askedSizeArcmin = (variant: FinderVariant, sights: FinderSights): number =>
  sizeArcmin(variant.template === 'set-by-another' ? variant.dotAtFirst : sights.parallax);

const hourDeg = 30;

/** Clockwise from the top of the eyepiece's view, [0°, 360°). */
export const clockwiseDeg = ({ rightArcmin, upArcmin }: FieldOffset): number =>
  (radiansToDegrees(Math.atan2(rightArcmin, upArcmin)) + 360) % 360;

/** Between two directions of a view, [0°, 180°]. */
export const apartDeg = (oneDeg: number, otherDeg: number): number =>
  radiansToDegrees(Math.acos(Math.cos(degreesToRadians(oneDeg - otherDeg))));

function directionShare({ starInEyepiece }: FinderSights, { towardsHour }: FinderAnswers): number {
  if (starInEyepiece === null || towardsHour === null) return 0;
  return ramp(apartDeg(clockwiseDeg(starInEyepiece), towardsHour * hourDeg), direction);
}

export function fieldJudgedRightly(
  { eyepieces }: FinderVariant,
  { parallax }: FinderSights,
  answers: FinderAnswers,
  which: 'low' | 'high',
): boolean {
  const share = sizeArcmin(parallax) / eyepieces[which].radiusArcmin;
  const said = which === 'low' ? answers.inLow : answers.inHigh;
  return said !== null && (Math.abs(share - 1) <= edge || said === share < 1);
}

const oneEyepiece = ({ eyepieces }: FinderVariant): boolean =>
  eyepieces.low.focalLengthMm === eyepieces.high.focalLengthMm;

/** Whether the wide view was used to find the target. */
export const searchedLow = (variant: FinderVariant, { searchedWith }: SettingState): boolean =>
  searchedWith !== null && (searchedWith === 'low' || oneEyepiece(variant));

/** Whether the target was seen in the high-power view when the screws were locked. */
export const checkedHigh = (variant: FinderVariant, { moment, offCentre }: LockSights): boolean =>
  (moment.eyepiece === 'high' || oneEyepiece(variant)) &&
  !moment.capsOn &&
  offCentre !== null &&
  sizeArcmin(offCentre) < variant.eyepieces.high.radiusArcmin;
