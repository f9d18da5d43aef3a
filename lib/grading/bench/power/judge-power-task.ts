import { seriesSource } from '../../../power/holder';
import { benchAtStart } from '../../../power/power-bench';
import { faultsOfSupply, type SupplyVerdict } from '../../../power/supply';
import {
  nightOf,
  type PowerTemplate,
  type PowerVariant,
} from '../../../variants/bench/power/power-variant';
import { judgeNight, type Judged } from './power-night-criteria';
import type { PowerCriterion, PowerSlip } from './power-result';
import type { PowerSubmission } from './power-submission';
import {
  matchShare,
  orderShare,
  reversedIn,
  runningShare,
  wayRoundShare,
  type Wiring,
} from './power-wiring-criteria';

type Judge = (variant: PowerVariant, submission: PowerSubmission, wiring: Wiring) => Judged;
type Share = { share: number; slips: readonly PowerSlip[] };

/** The marks of one task, part by part; they add up to 100 in every template. */
export const judgePowerTask: Judge = (variant, submission, wiring) =>
  judges[variant.template](variant, submission, wiring);

const judges: Readonly<Record<PowerTemplate, Judge>> = {
  'fill-the-holder': (_variant, _submission, wiring) =>
    parts([
      ['cells', 30, matchShare(wiring)],
      ['way-round', 30, wayRoundShare(wiring)],
      ['running', 15, runningShare(wiring)],
      ['order', 25, orderShare(wiring)],
    ]),
  'choose-the-supply': (variant, submission, wiring) =>
    parts([
      ['supply', 40, supplyShare(wiring)],
      ['verdicts', 30, verdictsShare(variant, submission)],
      ['order', 30, orderShare(wiring)],
    ]),
  'find-the-reversed': (variant, submission, wiring) =>
    parts([
      ['count', 20, countShare(variant, submission)],
      ['found', 40, foundShare(variant, wiring)],
      ['readings', 10, readingsShare(variant, wiring)],
      ['order', 30, orderShare(wiring)],
    ]),
  'last-the-night': (variant, submission) => {
    const night = nightOf(variant);
    if (night === null) throw new Error('a task of last-the-night holds its evening');
    return judgeNight(night, submission);
  },
  'switch-on': (_variant, _submission, wiring) =>
    parts([
      ['repaired', 25, repairedShare(wiring)],
      ['running', 15, runningShare(wiring)],
      ['order', 60, orderShare(wiring)],
    ]),
};

function parts(all: readonly (readonly [PowerCriterion, number, Share])[]): Judged {
  return {
    criteria: all.map(([id, possible, { share }]) => ({ id, earned: possible * share, possible })),
    slips: all.flatMap(([, , { slips }]) => slips),
  };
}

function supplyShare({ setup, bench }: Wiring): Share {
  const supply = setup.supplies.find(({ id }) => id === bench.plugged);
  if (supply === undefined) return { share: 0, slips: [] };
  const [why] = faultsOfSupply(supply, setup.needs);
  if (why === undefined) return { share: 1, slips: [] };
  // That mains was plugged in is told by what it did already.
  const told = why === 'mains-outdoors';
  return { share: 0, slips: told ? [] : [{ code: 'wrong-supply', supply: supply.id, why }] };
}

/** Each supply counts the same. Where two things speak against one, either is right. */
function verdictsShare({ setup }: PowerVariant, { verdicts }: PowerSubmission): Share {
  const slips: PowerSlip[] = [];
  let right = 0;
  for (const supply of setup.supplies) {
    const faults = faultsOfSupply(supply, setup.needs);
    const rightOnes: readonly SupplyVerdict[] = faults.length === 0 ? ['fits'] : faults;
    const said = verdicts[supply.id];
    const [first = 'fits'] = rightOnes;
    if (said !== undefined && rightOnes.includes(said)) right += 1;
    else if (said !== undefined)
      slips.push({ code: 'verdict-wrong', supply: supply.id, said, right: first });
  }
  return { share: right / Math.max(1, setup.supplies.length), slips };
}

function countShare({ setup }: PowerVariant, { reversedCount }: PowerSubmission): Share {
  const start = benchAtStart(setup);
  const right = reversedIn(start);
  if (reversedCount === right) return { share: 1, slips: [] };
  const openV = seriesSource(start.bays, setup.temperatureC)?.openV ?? 0;
  return {
    share: 0,
    slips:
      reversedCount === null ? [] : [{ code: 'count-wrong', said: reversedCount, right, openV }],
  };
}

/** What was turned right of what had to be; a cell turned in vain takes one back. */
function foundShare({ setup }: PowerVariant, wiring: Wiring): Share {
  const atStart = reversedIn(benchAtStart(setup));
  const left = reversedIn(wiring.bench);
  const empty = wiring.bench.bays.filter(({ put }) => put === null).length;
  return {
    share: Math.max(0, (atStart - left - empty) / Math.max(1, atStart)),
    slips: wayRoundShare(wiring).slips,
  };
}

/** The total, then halving by halving with one to spare; each reading more costs a tenth. */
export const readingsEnough = (variant: PowerVariant): number =>
  1 + 4 * reversedIn(benchAtStart(variant.setup));

/** Sparing readings are worth something only where they led to the cells. */
function readingsShare(variant: PowerVariant, wiring: Wiring): Share {
  if (foundShare(variant, wiring).share < 1) return { share: 0, slips: [] };
  const taken = wiring.bench.readings.length;
  const enough = readingsEnough(variant);
  return {
    share: Math.max(0, 1 - Math.max(0, taken - enough) / 10),
    slips: taken > enough ? [{ code: 'many-readings', taken, enough }] : [],
  };
}

/** The one bay that was not as it should be: all or nothing, and nothing else made worse. */
function repairedShare(wiring: Wiring): Share {
  const [match, way] = [matchShare(wiring), wayRoundShare(wiring)];
  return {
    share: match.share === 1 && way.share === 1 ? 1 : 0,
    slips: [...match.slips, ...way.slips],
  };
}
