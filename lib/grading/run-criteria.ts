import type { RunCriterion, RunResult } from './run-result';
import type { JudgedStar } from './run-stars';
import { centredShare } from './really-in-field';

// Full within the first figure, none beyond the second, straight between. Ours, without a source.
const startAzimuthDeg = [5, 15] as const;
const startAltitudeDeg = [2, 6] as const;
/** Of the centring eyepiece's field radius. */
const centring = [centredShare, 1] as const;
/** Of the minutes that the teacher allowed. */
const time = [1, 2] as const;

const ramp = (value: number, [full, none]: readonly [number, number]): number =>
  Math.min(1, Math.max(0, (none - value) / (none - full)));

/**
 * The parts of a run's mark, as shares of what each is worth; those that do not apply tonight are left
 * out and the rest grows to 100 together.
 */
export function runCriteria({
  start,
  stars: [first, second],
  pairShare,
  judgement,
  minutes,
  minutesAllowed,
}: {
  start: RunResult['start'];
  stars: readonly [JudgedStar, JudgedStar];
  pairShare: number | null;
  judgement: NonNullable<RunResult['judgement']>;
  minutes: number;
  minutesAllowed: number | null;
}): RunCriterion[] {
  const part = (id: RunCriterion['id'], possible: number, share: number): RunCriterion => ({
    id,
    possible,
    earned: possible * share,
  });
  const startShare = Math.min(
    ramp(Math.abs(start.azimuthErrorDeg), startAzimuthDeg),
    ramp(Math.abs(start.altitudeErrorDeg), startAltitudeDeg),
  );
  const { trusted, deserved } = judgement;
  const bothFound = first.found.right && second.found.right;
  const judgedRightly = deserved === 'either' || (deserved === 'trust') === trusted;
  const parts = [
    part('start-position', 10, startShare),
    part('first-star', 15, first.found.right ? 1 : 0),
    part('first-centring', 15, centringShare(first)),
    part('second-star', 15, second.found.right ? 1 : 0),
    part('second-centring', 15, centringShare(second)),
    // A pair that was chosen and then not found has aligned nothing.
    ...(pairShare === null ? [] : [part('pair', 10, bothFound ? pairShare : 0)]),
    part('judgement', 20, judgedRightly ? 1 : 0),
    ...(minutesAllowed === null ? [] : [part('time', 10, ramp(minutes / minutesAllowed, time))]),
  ];
  const scale = 100 / parts.reduce((sum, { possible }) => sum + possible, 0);
  return parts.map(({ id, earned, possible }) => ({
    id,
    earned: earned * scale,
    possible: possible * scale,
  }));
}

/** The wrong star earns nothing for being centred. */
const centringShare = ({ found, errorArcmin }: JudgedStar): number =>
  found.right ? ramp(errorArcmin / found.fieldRadiusArcmin, centring) : 0;
