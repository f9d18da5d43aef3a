import { nightAhead, type NightAhead, type PowerNight } from '../../../power/night';
import type { BenchCriterion } from '../bench-result';
import type {
  MeanCurrentMistake,
  PowerCriterion,
  PowerSlip,
  RunTimeMistake,
  SlewingVoltsMistake,
} from './power-result';
import type { PowerSubmission } from './power-submission';

export type Judged = { criteria: BenchCriterion<PowerCriterion>[]; slips: PowerSlip[] };

/** Full marks within `full` of the right value, none from `none` on, a straight line between. */
const withinBand = (offBy: number, full: number, none: number): number =>
  Math.max(0, Math.min(1, (none - Math.abs(offBy)) / (none - full)));

/** Tables are read by eye: a tenth is as good as right. Volts: far less than the sag itself. */
const meanBand = { full: 0.02, none: 0.08 };
const runTimeBand = { full: 0.1, none: 0.3 };
const voltsBand = { full: 0.2, none: 1, shareOfSag: 0.8 };

type Foretold = Pick<
  PowerSubmission,
  'meanMilliamperes' | 'runTimeHours' | 'slewingVolts' | 'resets' | 'plan'
>;
type Share = { share: number; slip: PowerSlip | null };

/** Marks for an evening foretold. What was not answered earns nothing. */
export function judgeNight(night: PowerNight, said: Foretold): Judged {
  const ahead = nightAhead(night);
  const hours = runTimeShare(night, ahead, said);
  const volts = slewingVoltsShare(night, ahead, said);
  // What is concluded counts as far as it rests on figures: a bare yes or no is a guess.
  const all: [PowerCriterion, number, Share][] = [
    ['mean-current', 20, meanCurrentShare(night, ahead, said)],
    ['run-time', 40, hours],
    ['slewing-volts', 25, volts],
    ['resets', 5, restingOn(volts.share, resetsShare(night, ahead, said))],
    ['plan', 10, restingOn(Math.min(hours.share, volts.share), planShare(ahead, said))],
  ];
  return {
    criteria: all.map(([id, possible, { share }]) => ({ id, earned: possible * share, possible })),
    slips: all.flatMap(([, , { slip }]) => slip ?? []),
  };
}

const restingOn = (figures: number, { share, slip }: Share): Share => ({
  share: share * figures,
  slip,
});

const unanswered: Share = { share: 0, slip: null };

function meanCurrentShare(
  night: PowerNight,
  { meanA }: NightAhead,
  { meanMilliamperes: said }: Foretold,
): Share {
  if (said === null) return unanswered;
  const right = meanA * 1000;
  const share = withinBand(said / right - 1, meanBand.full, meanBand.none);
  const mistake = meanCurrentMistake(night, said);
  return { share, slip: share < 1 ? { code: 'mean-current-off', said, right, mistake } : null };
}

function runTimeShare(
  night: PowerNight,
  ahead: NightAhead,
  { runTimeHours: said }: Foretold,
): Share {
  if (said === null) return unanswered;
  const right = ahead.runTimeHours;
  const share = withinBand(said / right - 1, runTimeBand.full, runTimeBand.none);
  const mistake = runTimeMistake(night, ahead, said);
  return { share, slip: share < 1 ? { code: 'run-time-off', said, right, mistake } : null };
}

function slewingVoltsShare(
  night: PowerNight,
  ahead: NightAhead,
  { slewingVolts: said }: Foretold,
): Share {
  if (said === null) return unanswered;
  const right = ahead.slewingV;
  // Whoever forgets the sag earns nothing for it, however small it is.
  const none = Math.min(voltsBand.none, voltsBand.shareOfSag * (ahead.openV - right));
  const share = withinBand(said - right, voltsBand.full, none);
  const mistake = slewingVoltsMistake(night, ahead, said);
  return { share, slip: share < 1 ? { code: 'slewing-volts-off', said, right, mistake } : null };
}

function resetsShare({ needs }: PowerNight, ahead: NightAhead, { resets: said }: Foretold): Share {
  if (said === null) return unanswered;
  if (said === ahead.resets) return { share: 1, slip: null };
  const { resets, slewingV: volts } = ahead;
  return {
    share: 0,
    slip: { code: 'reset-misjudged', resets, volts, resetBelowV: needs.resetBelowV },
  };
}

function planShare({ plans }: NightAhead, { plan: said }: Foretold): Share {
  if (said === null) return unanswered;
  const [right = 'go'] = plans;
  return plans.includes(said)
    ? { share: 1, slip: null }
    : { share: 0, slip: { code: 'plan-wrong', said, right } };
}

/** A wrong figure this near to what a known mistake gives was most likely made by it. */
const likenessOfCurrent = 0.03;
const likenessOfHours = 0.06;
const likenessOfVolts = 0.15;

function meanCurrentMistake(
  { needs: { trackingA, slewingA } }: PowerNight,
  saidMilliamperes: number,
): MeanCurrentMistake | null {
  const mistakes: [MeanCurrentMistake, number][] = [
    ['tracking-only', trackingA],
    ['slewing-only', slewingA],
    ['plain-mean', (trackingA + slewingA) / 2],
    ['added', trackingA + slewingA],
  ];
  return nearest(
    mistakes,
    (value) => Math.abs(saidMilliamperes / (value * 1000) - 1),
    likenessOfCurrent,
  );
}

function runTimeMistake(
  night: PowerNight,
  ahead: NightAhead,
  saidHours: number,
): RunTimeMistake | null {
  const { trackingA, slewingA } = night.needs;
  const atShare = (slewingShare: number) => nightAhead({ ...night, slewingShare }).runTimeHours;
  const mistakes: [RunTimeMistake, number][] = [
    ['capacities-added', ahead.runTimeHours * 8],
    ['capacities-added', (ahead.runTimeHours * 8) / ahead.coldShare],
    ['cold-forgotten', ahead.runTimeHours / ahead.coldShare],
    // Worked at the current of tracking or slewing alone, with the capacity that belongs to it or not.
    ['tracking-only', atShare(0)],
    ['tracking-only', (ahead.capacityAh * ahead.coldShare) / trackingA],
    ['slewing-all-night', atShare(1)],
    ['slewing-all-night', (ahead.capacityAh * ahead.coldShare) / slewingA],
  ];
  return nearest(mistakes, (value) => Math.abs(saidHours / value - 1), likenessOfHours);
}

function slewingVoltsMistake(
  { needs }: PowerNight,
  { openV, resistanceOhm }: NightAhead,
  saidV: number,
): SlewingVoltsMistake | null {
  const mistakes: [SlewingVoltsMistake, number][] = [
    ['no-load', openV],
    ['one-cell', openV - (needs.slewingA * resistanceOhm) / 8],
    ['tracking-current', openV - needs.trackingA * resistanceOhm],
  ];
  return nearest(mistakes, (value) => Math.abs(saidV - value), likenessOfVolts);
}

function nearest<M>(
  mistakes: readonly [M, number][],
  distance: (value: number) => number,
  most: number,
): M | null {
  let found: { mistake: M; off: number } | null = null;
  for (const [mistake, value] of mistakes) {
    const off = distance(value);
    if (off <= most && (found === null || off < found.off)) found = { mistake, off };
  }
  return found?.mistake ?? null;
}
