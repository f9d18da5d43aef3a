import { coldShare, meanCurrentA, runTimeHours, usableCapacityAh } from '../../power/capacity';
import type { CellKind } from '../../power/cell';
import { bayCount } from '../../power/holder';
import { choice, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne, pickSome } from '../../variants/pick-one';
import { coldChartTemperatures, drawColdChart } from './draw-cold-chart';
import { telescopeNames } from './draw-needs';
import { drawNight } from './draw-night';
import { degreesText, voltsText } from '../../drawings/label-words';
import { kindNames } from '../../drawings/row-of-cells';
import { capitalised } from '../../wording/capital';

const round2 = (value: number): number => Math.round(100 * value) / 100;
const hoursText = (hours: number): string => `${hours.toFixed(1)} h`;

function meanCurrent({ random }: ItemDraw) {
  const trackingA = pickOne(random, [0.1, 0.15, 0.2, 0.25, 0.3]);
  const slewingA = random.integer(10, 16) / 10;
  const slewingShare = pickOne(random, [0.05, 0.1, 0.2, 0.25]);
  const key = round2(meanCurrentA({ trackingA, slewingA, slewingShare }));
  const part = `${String(Math.round(60 * slewingShare))} minutes of each hour`;
  return numeric({
    prompt: `${pickOne(random, telescopeNames)} slews for ${part}, at ${String(slewingA)} A. For the rest it tracks, at ${String(trackingA)} A. What is the mean current?`,
    unit: 'amperes',
    key,
    tolerance: { mode: 'absolute', full: 0.02, zero: 0.15 },
    explanation: `Each current times its share of the time, added: ${String(slewingA)} × ${String(slewingShare)} + ${String(trackingA)} × ${String(round2(1 - slewingShare))} = ${String(key)} A.`,
    slips: [
      {
        gives: round2((trackingA + slewingA) / 2),
        reason: 'That is the middle of the two. It slews for a small part of the time only.',
      },
      { gives: round2(trackingA + slewingA), reason: 'The two currents flow one after the other.' },
      { gives: slewingA, reason: 'That is the peak. Most of the time it only tracks.' },
    ],
  });
}

function hoursInTheCold({ random }: ItemDraw) {
  const kind = pickOne<CellKind>(random, ['alkaline', 'nickel-metal-hydride', 'lithium']);
  const meanA = pickOne(random, [0.2, 0.25, 0.3, 0.35, 0.4]);
  const temperatureC = pickOne(random, [-10, -5, 0, 5]);
  const capacity = round2(usableCapacityAh(kind, meanA));
  const share = round2(coldShare(kind, temperatureC));
  const key = round2((capacity * share) / meanA);
  return numeric({
    prompt: `Eight ${kindNames[kind]} cells in a row. At a mean current of ${String(meanA)} A each can give ${String(capacity)} ampere-hours when warm. At ${degreesText(temperatureC)} the cold leaves ${String(Math.round(100 * share))} % of it. How long do they last?`,
    unit: 'hours',
    key,
    tolerance: { mode: 'relative', full: 0.03, zero: 0.15 },
    explanation: `${String(capacity)} Ah × ${String(share)} ÷ ${String(meanA)} A = ${hoursText(key)}. One current flows through all eight, so the hours are those of one cell.`,
    slips: [
      {
        gives: round2(key * bayCount),
        reason:
          'You added the hours of eight cells. In a row one current empties all of them at once.',
        misconception: 'series-hours-add',
      },
      ...(share < 0.97
        ? [
            {
              gives: round2(capacity / meanA),
              reason: 'That is how long they last when warm. The cold takes its part.',
              misconception: 'cold-does-not-matter' as const,
            },
          ]
        : []),
    ],
  });
}

const lasts = (kind: CellKind, temperatureC: number, meanA: number): number =>
  runTimeHours({ cells: [{ kind, left: 1 }], meanCurrentA: meanA, temperatureC });

function shortestFirst({ random }: ItemDraw) {
  const meanA = pickOne(random, [0.25, 0.3, 0.35]);
  const all = (['alkaline', 'lithium', 'nickel-metal-hydride', 'zinc-carbon'] as const).flatMap(
    (kind) =>
      [-10, 0, 20].map((temperatureC) => ({
        text: `${capitalised(kindNames[kind])} at ${degreesText(temperatureC)}`,
        hours: lasts(kind, temperatureC, meanA),
      })),
  );
  // Only sets are fair in which each lasts a quarter longer than the one before.
  const chosen: typeof all = [];
  for (const one of random.shuffle(all)) {
    const clear = chosen.every(
      ({ hours }) => Math.max(hours / one.hours, one.hours / hours) > 1.25,
    );
    if (clear && chosen.length < 4) chosen.push(one);
  }
  const sorted = [...chosen].sort((a, b) => a.hours - b.hours);
  const steps = sorted.map(({ text }) => text);
  return order({
    prompt: `Eight fresh cells feed ${pickOne(random, telescopeNames)} at a mean of ${String(meanA)} A. Put these in order: the set that is empty first comes first.`,
    explanation: `${sorted.map(({ text, hours }) => `${text}: ${hoursText(hours)}`).join('; ')}.`,
    steps,
    rules: sorted.slice(1).map(({ hours }, i) => ({
      first: i,
      then: i + 1,
      reason: `they last ${hoursText(sorted[i]?.hours ?? 0)} and ${hoursText(hours)}.`,
    })),
  });
}

function planTheNight({ random }: ItemDraw) {
  const wanted = pickOne(random, ['go', 'spare-set', 'other-supply']);
  const { ahead, kind, temperatureC, hours, needs } = drawNight(
    random,
    (night) => night.ahead.plans[0] === wanted,
  );
  const { runTimeHours: lasting, slewingV, plans } = ahead;
  const [best = 'go'] = plans;
  const text = {
    go: `Go: ${hoursText(lasting)} are enough for ${hoursText(hours)}`,
    'spare-set': `Take a spare set: ${hoursText(lasting)} do not reach`,
    'other-supply': `Take another supply: ${voltsText(slewingV)} in a slew are too few`,
  };
  const reason = {
    go:
      best === 'go'
        ? 'The volts hold in a slew and the hours reach.'
        : best === 'spare-set'
          ? `They last ${hoursText(lasting)}, and the class wants ${hoursText(hours)}.`
          : 'The first slew restarts the computer, however long the cells would last.',
    'spare-set':
      best === 'spare-set'
        ? 'The volts hold, the hours do not: a second set of the same kind does it.'
        : best === 'go'
          ? `They last ${hoursText(lasting)}, longer than the class stays.`
          : 'Spare cells of the kind fall just as far in a slew.',
    'other-supply':
      best === 'other-supply'
        ? `Below ${voltsText(needs.resetBelowV)} it restarts, and spare cells of the kind fall just as far.`
        : `${voltsText(slewingV)} in a slew are above ${voltsText(needs.resetBelowV)}: the computer runs on.`,
  };
  const option = (plan: 'go' | 'spare-set' | 'other-supply') => ({
    text: text[plan],
    reason: reason[plan],
  });
  return choice({
    prompt: `Eight fresh ${kindNames[kind]} cells at ${degreesText(temperatureC)}: worked out on paper they last ${hoursText(lasting)} and hold ${voltsText(slewingV)} in a slew. ${pickOne(random, telescopeNames)} restarts below ${voltsText(needs.resetBelowV)}. The class stays for ${hoursText(hours)}. What is the plan?`,
    explanation:
      'First the volts in a slew, then the hours. Too few volts cannot be cured with more hours.',
    right: option(best),
    wrong: (['go', 'spare-set', 'other-supply'] as const).filter((one) => one !== best).map(option),
  });
}

function readTheColdChart({ random }: ItemDraw) {
  const kinds = pickSome<CellKind>(random, ['alkaline', 'zinc-carbon', 'lithium'], 2);
  const kind = kinds[0] ?? 'alkaline';
  const other = kinds[1] ?? 'lithium';
  const temperatureC = random.pick(coldChartTemperatures) ?? 0;
  const percent = (one: CellKind) => Math.round(100 * coldShare(one, temperatureC));
  return numeric({
    prompt: `The chart shows what the cold leaves of a cell. How much is left of a cell of kind “${kindNames[kind]}” at ${degreesText(temperatureC)}?`,
    drawing: drawColdChart(kind, other),
    unit: 'per cent',
    key: percent(kind),
    tolerance: { mode: 'absolute', full: 5, zero: 15 },
    explanation: `Go up from ${degreesText(temperatureC)} to the line of ${kindNames[kind]}, then across to the left: ${String(percent(kind))} %.`,
    slips:
      Math.abs(percent(kind) - percent(other)) > 10
        ? [{ gives: percent(other), reason: `That is the line of ${kindNames[other]}.` }]
        : [],
  });
}

/** How long cells last: mean current, capacity, cold, and the plan that follows. */
export const hoursOnCells: ItemFamily = {
  id: 'hours-on-cells',
  lesson: 'power-without-smoke',
  objective: 'hours',
  skill: 'power',
  title: 'How long the cells last',
  version: 1,
  templates: {
    'mean-current': meanCurrent,
    'hours-in-the-cold': hoursInTheCold,
    'shortest-first': shortestFirst,
    'plan-the-night': planTheNight,
    'read-the-cold-chart': readTheColdChart,
  },
};
