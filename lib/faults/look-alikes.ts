import type { AlignmentOutcome, PointingModel } from '../pointing/pointing-model';
import { radiansToDegrees, wrap180 } from '../units/angle';
import { canBeBegun, runEvening, type EveningShown } from './evening';
import type { Landing } from './evidence';
import type { FaultId } from './fault-ids';
import { faults } from './faults';
import type { Evening, Fault, FaultSizes } from './faulty-evening';

/** One thing that can be looked at, or tried. */
export const clues = [
  'first',
  'second',
  'outcome',
  'later',
  'card',
  'observations',
  'test-slew',
] as const;
export type Clue = (typeof clues)[number];

/*
 * How far two evenings must differ before anybody could tell. Each limit is two standard deviations of
 * what a careful beginner does or reads (common practice, no source).
 */

/** Found by eye and set by hand: north to 1°, a level tube to 0.5°, a base to 0.5°. */
export const startLimits = { azimuthDeg: 2, altitudeDeg: 1, tiltDeg: 1 } as const;
/** A distance on the sky is read off by hand's breadths: to a fortieth of itself. */
const readingShare = 0.05;
/** What two centrings leave together, to each side: σ√2, twice. */
export const centringLimitDeg = (centringArcmin: number): number =>
  (2 * Math.SQRT2 * centringArcmin) / 60;

const apart = (one: number, other: number, limit: number): boolean =>
  Math.abs(one - other) > limit + readingShare * Math.max(Math.abs(one), Math.abs(other));

/** Everything by which two evenings could be told apart; empty when they are alike. */
export function cluesBetween(
  { centringArcmin }: Pick<Evening, 'centringArcmin'>,
  one: EveningShown,
  other: EveningShown,
): readonly Clue[] {
  const a = one.evidence;
  const b = other.evidence;
  const centringDeg = centringLimitDeg(centringArcmin);
  const bySlew = { right: startLimits.azimuthDeg, up: startLimits.altitudeDeg };
  // Only an alignment makes a go-to better than the hand that set the start.
  const bothAligned = a.outcome.kind === 'agree' && b.outcome.kind === 'agree';
  const byModel = bothAligned ? { right: centringDeg, up: centringDeg } : bySlew;
  const told: Readonly<Record<Clue, boolean>> = {
    first: landingsApart([a.first], [b.first], bySlew),
    second: landingsApart([a.second], [b.second], bySlew),
    outcome: outcomesApart(a.outcome, b.outcome, centringDeg),
    later: landingsApart(a.later, b.later, byModel),
    card: JSON.stringify(a.card) !== JSON.stringify(b.card),
    observations: a.observations.join() !== b.observations.join(),
    'test-slew': landingsApart(one.testSlews, other.testSlews, byModel),
  };
  return clues.filter((clue) => told[clue]);
}

function landingsApart(
  one: readonly Landing[],
  other: readonly Landing[],
  limit: { right: number; up: number },
): boolean {
  // A star that the computer drives to on one of the two evenings only tells them apart as well.
  if (one.length !== other.length) return true;
  return one.some((landing) => {
    const also = other.find(({ hip }) => hip === landing.hip);
    if (also === undefined) return true;
    const far = readingShare * Math.max(missDeg(landing), missDeg(also));
    return (
      Math.abs(landing.rightDeg - also.rightDeg) > limit.right + far ||
      Math.abs(landing.upDeg - also.upDeg) > limit.up + far
    );
  });
}
const missDeg = ({ rightDeg, upDeg }: Landing): number => Math.hypot(rightDeg, upDeg);

function outcomesApart(one: AlignmentOutcome, other: AlignmentOutcome, centringDeg: number) {
  const mismatchApart = (a: number, b: number): boolean => apart(a / 60, b / 60, centringDeg);
  if (one.kind === 'agree' && other.kind === 'agree') {
    return (
      mismatchApart(one.mismatchArcmin, other.mismatchArcmin) ||
      apart(one.baseTiltDeg, other.baseTiltDeg, startLimits.tiltDeg) ||
      apart(one.model.altitudeZeroDeg, other.model.altitudeZeroDeg, startLimits.altitudeDeg) ||
      Math.abs(wrap180(northReadsDeg(one.model) - northReadsDeg(other.model))) >
        startLimits.azimuthDeg
    );
  }
  if (one.kind === 'disagree' && other.kind === 'disagree') {
    return mismatchApart(one.mismatchArcmin, other.mismatchArcmin);
  }
  if (one.kind === 'base-on-its-side' && other.kind === 'base-on-its-side') {
    return (
      mismatchApart(one.mismatchArcmin, other.mismatchArcmin) ||
      apart(one.baseTiltDeg, other.baseTiltDeg, startLimits.tiltDeg)
    );
  }
  if (one.kind === 'absurd-zero' && other.kind === 'absurd-zero') {
    const [a, b] = [one.altitudeZeroDeg, other.altitudeZeroDeg];
    if (a === null || b === null) return a !== b;
    return apart(a, b, startLimits.altitudeDeg);
  }
  return one.kind !== other.kind;
}

/** What the azimuth reads in the north, by the model. */
const northReadsDeg = ({ base }: PointingModel): number =>
  radiansToDegrees(Math.atan2(base[1], base[4]));

/** Every form that a fault can take on an evening, with what each would show. */
export const shownBy = (fault: Fault, evening: Evening, sizes: FaultSizes): EveningShown[] =>
  fault
    .forms(evening, sizes)
    .filter(canBeBegun)
    .map((form) => runEvening(form));

/** How an evening that went wrong compares with what another fault would have shown. */
export type Comparison = {
  fault: FaultId;
  /** Whether some form of it would have shown the same. */
  alike: boolean;
  /** What tells it apart, whichever form it takes where there is such a clue; null where alike. */
  tellTale: Clue | null;
  /** By how many clues its likeliest form differs; Infinity when it cannot happen that evening. */
  differsBy: number;
  /** Where the test slews would have landed with that form; a star it would not drive to is left out. */
  testSlews: readonly Landing[];
};

/**
 * Compares what an evening showed with every form of every fault on the same evening. `evening` is the
 * one without fault, `shown` what came of it with one.
 */
export function comparisons(
  evening: Evening,
  sizes: FaultSizes,
  shown: EveningShown,
): readonly Comparison[] {
  return faults.map((fault) => {
    const forms = shownBy(fault, evening, sizes).map((form) => ({
      form,
      differs: cluesBetween(evening, shown, form),
      slewsApartDeg: firstSlewsApartDeg(shown, form),
    }));
    // Of forms that differ in as many clues, the one whose first slews come nearest to those seen.
    const [likeliest] = [...forms].sort(
      (a, b) => a.differs.length - b.differs.length || a.slewsApartDeg - b.slewsApartDeg,
    );
    const nearest = likeliest?.differs ?? null;
    const always = clues.find((clue) => forms.every(({ differs }) => differs.includes(clue)));
    return {
      fault: fault.id,
      alike: nearest?.length === 0,
      tellTale:
        nearest === null ? null : nearest.length === 0 ? null : (always ?? nearest[0] ?? null),
      differsBy: nearest?.length ?? Infinity,
      testSlews: likeliest?.form.testSlews ?? [],
    };
  });
}

const firstSlewsApartDeg = (one: EveningShown, other: EveningShown): number =>
  (['first', 'second'] as const)
    .map((which) => {
      const [a, b] = [one.evidence[which], other.evidence[which]];
      return Math.hypot(a.rightDeg - b.rightDeg, a.upDeg - b.upDeg);
    })
    .reduce((sum, apartDeg) => sum + apartDeg, 0);
