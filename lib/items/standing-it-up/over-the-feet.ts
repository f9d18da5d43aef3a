import { feetOf, plumbPoint, stabilityOf, type LoadedStand } from '../../assembly/stability';
import { choice, numeric, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askers } from '../what-is-in-the-case/askers';
import { pickOne } from '../../variants/pick-one';
import { askedSpot, type KnownSpot } from '../what-is-in-the-case/asked-spot';
import {
  gridMm,
  onPlan,
  outcomeInWords,
  planDrawing,
  planInWords,
} from '../../drawings/plan-drawing';
import { lineName, plainStand, someStand } from '../../drawings/some-stand';

const edges = [
  [0, 1],
  [1, 2],
  [0, 2],
] as const;
const rule = 'A stand stands as long as its plumb point lies inside the triangle of its feet.';
const mm = (value: number): string => `${String(Math.round(Math.abs(value)))} mm`;

/** On ground that slopes, so that it clearly stands or clearly tips. */
function onSlope(draw: ItemDraw): LoadedStand {
  const { random } = draw;
  for (let tries = 0; tries < 200; tries++) {
    const stand: LoadedStand = {
      ...someStand(random),
      groundSlopeDeg: random.integer(4, 20),
      fallsTowardsDeg: 30 * random.integer(0, 11),
    };
    const { marginMm } = stabilityOf(stand);
    if (Math.abs(marginMm) > 25 && marginMm > -120 && inView(stand)) return stand;
  }
  return plainStand;
}
const inView = (stand: LoadedStand): boolean => {
  const { x, y } = onPlan(plumbPoint(stand));
  return x > 12 && x < 308 && y > 12 && y < 238;
};

function answers(stand: LoadedStand) {
  const { marginMm, overFeet } = stabilityOf(stand);
  const stands = marginMm > 0;
  const outcome = outcomeInWords(stand);
  const over = edges.map((edge) => ({
    text: `It tips over the line ${lineName(edge)}`,
    right: !stands && lineName(edge) === lineName(overFeet),
  }));
  const said = [
    { text: `It stands, ${mm(stands ? marginMm : 60)} to spare`, right: stands },
    ...over,
  ];
  return {
    right: { text: said.find(({ right }) => right)?.text ?? '', reason: outcome },
    wrong: said
      .filter(({ right }) => !right)
      .map(({ text }) => ({ text, reason: `${outcome} ${rule}` })),
  };
}

function standsOrTips(draw: ItemDraw) {
  const stand = onSlope(draw);
  const words = planInWords(stand);
  return choice({
    prompt: `${pickOne(draw.random, askers)} hangs a plumb line from where the weight is, ${String(stand.tubeMassKg)} kg of tube included. The plan shows where it meets the ground. What does the stand do when nobody holds it?`,
    drawing: planDrawing(stand, { words }),
    explanation: rule,
    ...answers(stand),
  });
}

const towards: Readonly<Record<number, string>> = {
  0: 'towards foot A',
  60: 'between feet A and B',
  120: 'towards foot B',
  180: 'between feet B and C',
  240: 'towards foot C',
  300: 'between feet C and A',
};

function onASlope(draw: ItemDraw) {
  const { random } = draw;
  let stand = plainStand;
  for (let tries = 0; tries < 300; tries++) {
    stand = {
      ...someStand(random),
      groundSlopeDeg: random.integer(3, 18),
      fallsTowardsDeg: 60 * random.integer(0, 5),
    };
    const { marginMm } = stabilityOf(stand);
    if (Math.abs(marginMm) > 30 && marginMm > -120 && inView(stand)) break;
  }
  const level = { ...stand, groundSlopeDeg: 0 };
  return choice({
    prompt: `On level ground the plan looks like this. The same stand, its legs equally long, is set down where the ground falls by ${String(stand.groundSlopeDeg)}°, ${towards[stand.fallsTowardsDeg] ?? ''}. What happens?`,
    drawing: planDrawing(level, { words: planInWords(level) }),
    afterwards: planDrawing(stand, { words: `${planInWords(stand)} ${outcomeInWords(stand)}` }),
    explanation: `On a slope the plumb point moves downhill. ${rule} Better: make the downhill leg longer, so that the head is level again.`,
    ...answers(stand),
  });
}

function readTheMargin({ random }: ItemDraw) {
  // The line B–C runs across the page, so that the squares can be counted.
  const squares = random.integer(2, 8) / 2;
  const margin = squares * gridMm;
  let stand: LoadedStand = plainStand;
  for (let tries = 0; tries < 400; tries++) {
    const next: LoadedStand = {
      ...someStand(random),
      armBearingDeg: 180,
      fallsTowardsDeg: 180,
      groundSlopeDeg: random.integer(0, 60) / 10,
    };
    const better =
      Math.abs(stabilityOf(next).marginMm - margin) <
      Math.abs(stabilityOf(stand).marginMm - margin);
    if (better && stabilityOf(next).marginMm > 30) stand = next;
  }
  const key = stabilityOf(stand).marginMm;
  const south = -plumbPoint(stand).northMm;
  const line = -(feetOf(stand)[1]?.northMm ?? 0);
  const cm = (value: number) => (value / 10).toFixed(1);
  return numeric({
    prompt: `Each square is ${String(gridMm)} mm wide. How far inside the line B–C does the plumb point lie?`,
    drawing: planDrawing(stand, {
      grid: true,
      words: `${planInWords(stand)} Measured downwards on the page from the middle of the tripod, the line B–C lies at ${cm(line)} cm and the plumb point at ${cm(south)} cm.`,
    }),
    unit: 'mm',
    key,
    tolerance: { mode: 'absolute', full: 12, zero: 45 },
    explanation: `Count the squares straight from the dot to the line: ${(key / gridMm).toFixed(1)} of ${String(gridMm)} mm make ${mm(key)}. That is how far the weight may still move that way.`,
    slips: [
      {
        gives: Number((key / gridMm).toFixed(1)),
        reason: `That is the number of squares. Each of them is ${String(gridMm)} mm wide.`,
      },
    ],
  });
}

/** On the page: foot A stands at the top, B at the lower right, C at the lower left. */
const sideOf = (edge: readonly [number, number]): string =>
  ({ 'A–B': 'right-hand', 'B–C': 'lower', 'A–C': 'left-hand' })[lineName(edge)] ?? '';

function firstToTip({ random }: ItemDraw) {
  let stand = plainStand;
  for (let tries = 0; tries < 100; tries++) {
    stand = { ...someStand(random), tubeMassKg: random.integer(25, 45) / 10 };
    const margins = edges.map((edge) => marginTo(stand, edge)).sort((a, b) => a - b);
    if ((margins[1] ?? 0) - (margins[0] ?? 0) > 25) break;
  }
  const { overFeet, marginMm } = stabilityOf(stand);
  const feet = feetOf(stand);
  const spots: KnownSpot<string>[] = edges.map((edge) => {
    const [a, b] = edge.map((index) => feet[index]);
    const half = {
      eastMm: ((a?.eastMm ?? 0) + (b?.eastMm ?? 0)) / 2,
      northMm: ((a?.northMm ?? 0) + (b?.northMm ?? 0)) / 2,
    };
    return {
      is: lineName(edge),
      ...onPlan(half),
      where: `halfway along the ${sideOf(edge)} line`,
      reason: `From the dot to the ${sideOf(edge)} line it is ${mm(marginTo(stand, edge))}; the nearest is the ${sideOf(overFeet)} line, ${mm(marginMm)} away.`,
    };
  });
  return point({
    prompt:
      'Somebody leans on the mount, and the stand begins to tip. Over which line does it take the least? Point at its middle.',
    drawing: planDrawing(stand, { letters: false, words: planInWords(stand, { letters: false }) }),
    explanation: `The nearest line is the first: that is where the weight has the shortest way to go. ${rule}`,
    ...askedSpot(spots, lineName(overFeet)),
  });
}

/** From the plumb point to one of the lines, by the area of the triangle over it. */
function marginTo(stand: LoadedStand, [one, other]: readonly [number, number]): number {
  const feet = feetOf(stand);
  const [a, b] = [feet[one], feet[other]];
  const p = plumbPoint(stand);
  if (a === undefined || b === undefined) return Infinity;
  const twice = Math.abs(
    (b.eastMm - a.eastMm) * (p.northMm - a.northMm) -
      (b.northMm - a.northMm) * (p.eastMm - a.eastMm),
  );
  return twice / Math.hypot(b.eastMm - a.eastMm, b.northMm - a.northMm);
}

export const overTheFeet: ItemFamily = {
  id: 'over-the-feet',
  lesson: 'standing-it-up',
  objective: 'tip',
  skill: 'assemble',
  title: 'Whether a stand tips, and which way',
  version: 1,
  templates: {
    'stands-or-tips': standsOrTips,
    'on-a-slope': onASlope,
    'read-the-margin': readTheMargin,
    'first-to-tip': firstToTip,
  },
};
