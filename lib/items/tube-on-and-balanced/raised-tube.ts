import { creepFrom } from '../../balance/creep';
import { freeFallMPerS2, torqueNm, type ClampedTube } from '../../balance/torque';
import { degreesToRadians } from '../../units/angle';
import type { Random } from '../../variants/random';
import { choice, match, numeric, point, several } from '../build-item';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { ItemDraw, ItemFamily } from '../item-family';
import { figures, grounds, one } from '../level-enough/words';
import { kilograms, pickKit } from './tube-case';

/** Where the pull of a raised tube goes. */
const rule =
  'Level, only the place along the tube counts. Raised, what lies above the axis leans back over it and what lies below swings forward.';

/** A tube that balances level and whose weight lies above or below the axis; the clutch gives way on the way up. */
function uneven(random: Random) {
  const massKg = random.integer(18, 42) / 10;
  const aboveMm = (random.pick([1, -1]) ?? 1) * random.integer(14, 26);
  // Between 35° and 55° the pull is as much as the clutch holds.
  const edgeMm = Math.round(Math.abs(aboveMm) * Math.sin(degreesToRadians(random.integer(35, 55))));
  const tube: ClampedTube = { massKg, forwardMm: 0, aboveMm };
  return { tube, edgeMm, holdingTorqueNm: (massKg * freeFallMPerS2 * edgeMm) / 1000 };
}

function raiseIt({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const { tube, edgeMm, holdingTorqueNm } = uneven(random);
  const altitudeDeg = one(random, [15, 20, 75, 80, 85]);
  const { moves } = creepFrom(tube, altitudeDeg, holdingTorqueNm);
  const lies = tube.aboveMm > 0 ? 'above' : 'below';
  const mm = Math.abs(tube.aboveMm);
  const arm = Math.round(mm * Math.sin(degreesToRadians(altitudeDeg)));
  const texts = {
    front: 'Its front sinks, as the weight swings forward',
    back: 'Its back sinks, as the weight leans back',
    holds: `It stays: the clutch takes ${String(edgeMm)} mm`,
  };
  const reasons = {
    front: `That is so where the weight lies below the axis and its arm, here ${String(arm)} mm, is more than the clutch takes.`,
    back: `That is so where the weight lies above the axis and its arm, here ${String(arm)} mm, is more than the clutch takes.`,
    holds: `Raised to ${String(altitudeDeg)}° the weight pulls on an arm of ${String(arm)} mm.`,
  };
  const others = (['front', 'back', 'holds'] as const).filter((end) => end !== moves);
  return choice({
    prompt: `${kit.name} balances level. Its weight lies ${String(mm)} mm ${lies} the altitude axis, and its clutch takes an arm of ${String(edgeMm)} mm. You raise it to ${String(altitudeDeg)}° and let go. What happens?`,
    explanation: `${rule} At ${String(altitudeDeg)}° the arm is ${String(mm)} mm × sin ${String(altitudeDeg)}°, which is ${String(arm)} mm; the clutch takes ${String(edgeMm)} mm.`,
    right: {
      text: texts[moves],
      reason:
        moves === 'holds'
          ? 'Still within what the clutch takes.'
          : `${String(arm)} mm is more than ${String(edgeMm)} mm.`,
    },
    wrong: [
      ...others.map((end) => ({ text: texts[end], reason: reasons[end] })),
      moves === 'holds'
        ? {
            text: `It sinks at once, since raised tubes always creep past ${String(altitudeDeg - 5)}°`,
            reason: 'It depends on where the weight lies and on what the clutch takes.',
          }
        : {
            text: `It stays at ${String(altitudeDeg)}°: what balances level balances everywhere`,
            reason: 'Only if the weight lies at the height of the axis.',
            misconception: 'level-balance-is-all' as const,
          },
    ],
  });
}

function armAt60({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const offMm = 2 * random.integer(6, 24);
  const front = random.next() < 0.5;
  const massKg = random.integer(18, 40) / 10;
  const tube = { massKg, forwardMm: front ? offMm : -offMm, aboveMm: 0 };
  const altitudeDeg = 60;
  const key = Math.abs((1000 * torqueNm(tube, altitudeDeg)) / (massKg * freeFallMPerS2));
  return numeric({
    prompt: `All weight of ${kit.name}, ${kilograms(massKg)}, acts ${String(offMm)} mm ${front ? 'in front of' : 'behind'} the axis, at the axis’s own height. Level it pulls on an arm of ${String(offMm)} mm. How long is the arm with the tube raised to ${String(altitudeDeg)}°?`,
    unit: 'millimetres',
    key,
    tolerance: { mode: 'relative', full: 0.06, zero: 0.5 },
    explanation: `The arm is counted level, straight out from the axis. At 60° a stick reaches only half as far out as lying level: cos 60° is ½, so ${figures(offMm / 2)} mm.`,
    slips: [
      {
        gives: offMm,
        reason:
          'That is the arm of the level tube. Raised, the weight comes nearer to over the axis.',
      },
      { gives: 0, reason: 'At 90° it would be nothing. At 60° half of it is left.' },
    ],
  });
}

const heights = [0, 30, 45, 60, 90] as const;

function matchArms({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const offMm = 10 * random.integer(2, 9);
  const above = random.next() < 0.5;
  const altitudes = random.shuffle(heights).slice(0, 4);
  const arm = (deg: number): number =>
    Math.abs(offMm * (above ? Math.sin(degreesToRadians(deg)) : Math.cos(degreesToRadians(deg))));
  return match({
    prompt: `The weight of ${kit.name} acts ${String(offMm)} mm ${above ? 'above the axis, and the tube balances level' : 'in front of the axis, at its height'}. On how long an arm does it pull at each altitude?`,
    explanation: above
      ? 'What lies above the axis does nothing while the tube is level, and more and more as it rises.'
      : 'What lies in front pulls most while the tube is level, and not at all straight up.',
    pairs: altitudes.map((deg) => ({
      left: `Raised to ${String(deg)}°`,
      right: `${figures(arm(deg))} mm`,
      reason: `${String(offMm)} mm × ${above ? 'sin' : 'cos'} ${String(deg)}°.`,
    })),
  });
}

const plot = { left: 46, right: 306, middle: 100, half: 74 };
const plotX = (deg: number) => plot.left + ((plot.right - plot.left) * deg) / 90;
const plotY = (share: number) => plot.middle - plot.half * Math.max(-1, Math.min(1, share / 2));

/** Pull against altitude with the band that the clutch holds. */
function pullPlot(share: (deg: number) => number): ItemDrawing {
  const curve = Array.from({ length: 46 }, (_, i) => 2 * i)
    .map(
      (deg, i) => `${i === 0 ? 'M' : 'L'}${plotX(deg).toFixed(1)} ${plotY(share(deg)).toFixed(1)}`,
    )
    .join(' ');
  const label = (
    x: number,
    y: number,
    text: string,
    anchor: 'start' | 'middle' = 'start',
  ): Shape => ({
    kind: 'text',
    x,
    y,
    text,
    size: 12,
    tone: 'ink',
    anchor,
  });
  const read = [0, 15, 30, 45, 60, 75, 90]
    .map((deg) => `at ${String(deg)}° ${figures(Math.abs(share(deg)), 1)}`)
    .join(', ');
  return {
    width: 320,
    height: 205,
    alternative: `A curve of how hard a tube’s weight pulls, at altitudes from 0° to 90°. As a share of what the clutch holds it is: ${read}.`,
    shapes: [
      {
        kind: 'rect',
        x: plot.left,
        y: plotY(1),
        w: 260,
        h: plotY(-1) - plotY(1),
        fill: 'sunken',
        stroke: 'strong',
        width: 1,
      },
      {
        kind: 'line',
        x1: plot.left,
        y1: plot.middle,
        x2: plot.right,
        y2: plot.middle,
        stroke: 'strong',
        width: 1,
      },
      { kind: 'path', d: curve, stroke: 'accent', width: 3.5 },
      label(2, 20, 'front'),
      label(2, 34, 'sinks'),
      label(2, plot.middle + 4, 'holds'),
      label(2, 164, 'back'),
      label(2, 178, 'sinks'),
      ...[0, 15, 30, 45, 60, 75, 90].map((deg) =>
        label(plotX(deg), 198, `${String(deg)}°`, 'middle'),
      ),
    ],
  };
}

/** The share of the clutch's torque that the weight takes; crosses 1 once on the way up, or down. */
function crossing(random: Random) {
  const { tube, edgeMm } = uneven(random);
  const forwardMm = Math.round(edgeMm * random.between(-0.5, 0.5));
  const leant = { ...tube, forwardMm };
  const share = (deg: number) =>
    (1000 * torqueNm(leant, deg)) / (tube.massKg * freeFallMPerS2 * edgeMm);
  return share;
}

function whereItCreeps({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const share = crossing(random);
  const altitudes = [5, 15, 30, 45, 60, 75, 85];
  const clear = altitudes.filter((deg) => Math.abs(Math.abs(share(deg)) - 1) > 0.08);
  const options = clear.map((deg) => ({
    text: `Raised to ${String(deg)}°`,
    creeps: Math.abs(share(deg)) > 1,
    reason: `The curve is at ${figures(Math.abs(share(deg)), 1)} of what the clutch holds there.`,
  }));
  const creeps = options.filter((one) => one.creeps);
  const holds = options.filter((one) => !one.creeps);
  const wantsHold = creeps.length === 0 || random.next() < 0.5;
  const shown = [...random.shuffle(creeps).slice(0, 3), ...random.shuffle(holds).slice(0, 3)];
  const right = shown.filter((one) => one.creeps !== wantsHold);
  const wrong = shown.filter((one) => one.creeps === wantsHold);
  return several({
    prompt: `This curve is of ${kit.name}, as it is clamped ${one(random, grounds)}. The grey band is what the clutch holds. At which altitudes does the tube ${wantsHold ? 'stay' : 'creep'}?`,
    drawing: pullPlot(share),
    explanation: 'Inside the band the clutch holds. Outside, the end that pulls sinks.',
    right: right.map(({ text, reason }) => ({ text, reason })),
    wrong: wrong.map(({ text, reason }) => ({ text, reason })),
  });
}

function pointCreeps({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const share = crossing(random);
  const altitudes = [0, 15, 30, 45, 60, 75, 90];
  const worst = altitudes.reduce((a, b) => (Math.abs(share(b)) > Math.abs(share(a)) ? b : a));
  const others = altitudes
    .filter((deg) => Math.abs(share(deg)) < Math.abs(share(worst)) - 0.12)
    .filter((_, index) => index % 2 === 0)
    .slice(0, 3);
  const spot = (deg: number) => ({
    x: plotX(deg),
    y: plotY(share(deg)),
    where: `the curve at ${String(deg)}°`,
    reason: `There the weight pulls ${figures(Math.abs(share(deg)), 1)} times what the clutch holds.`,
  });
  return point({
    prompt: `The curve shows how hard the weight of ${kit.name} pulls ${one(random, grounds)}, and the band what the clutch holds. Point at the place where the tube pulls hardest, either way.`,
    drawing: pullPlot(share),
    explanation: 'The farther from the middle line, up or down, the harder it pulls.',
    right: spot(worst),
    wrong: others.map(spot),
  });
}

/** Balanced level, and then raised. */
export const raisedTube: ItemFamily = {
  id: 'raised-tube',
  lesson: 'tube-on-and-balanced',
  objective: 'raised',
  skill: 'balance',
  title: 'Balanced level, and then raised',
  version: 1,
  templates: {
    'raise-it': raiseIt,
    'arm-at-60': armAt60,
    'match-arms': matchArms,
    'where-it-creeps': whereItCreeps,
    'point-creeps': pointCreeps,
  },
};
