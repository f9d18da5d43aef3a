import { vialMm } from '../../levelling/vial';
import { degreesToRadians, radiansToDegrees } from '../../units/angle';
import { choice, match, numeric, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { afterChange, drawHead, legAndOthers, legNames, leaningHead } from './leaning-head';
import { emptyVial, placeAt, placeWords, spotAt, vialShowing } from './vial-drawing';
import { clockWords, figures, grounds, one } from './words';

const why = 'The liquid runs to the low side and pushes the bubble to the high side.';

function highSide({ random }: ItemDraw) {
  const head = drawHead(random, 30 * random.integer(0, 11));
  const towards = head.risesTowardsDeg;
  const side = (deg: number) => `The side at ${clockWords(deg)}`;
  return choice({
    prompt: `The head of a tripod ${one(random, grounds)} leans. Which side of it stands highest?`,
    drawing: vialShowing(head.site, head.bubble),
    explanation: why,
    right: { text: side(towards), reason: `The bubble stands there, and it rises. ${why}` },
    wrong: [
      {
        text: side(towards + 180),
        reason: `That side is low. A ball would roll there; a bubble is air and goes up, to ${clockWords(towards)}.`,
        misconception: 'bubble-shows-low-side',
      },
      {
        text: side(towards + 90),
        reason: 'That is a quarter turn from the bubble. Across its own line the head is level.',
      },
      {
        text: side(towards - 90),
        reason: 'That is a quarter turn from the bubble. Across its own line the head is level.',
      },
    ],
  });
}

function howManyDegrees({ random }: ItemDraw) {
  const mm = random.integer(3, 18) / 2;
  const head = leaningHead({
    legADeg: 30 * random.integer(0, 11),
    tiltDeg: radiansToDegrees(Math.asin(mm / vialMm.curvatureRadius)),
    risesTowardsDeg: 15 * random.integer(0, 23),
  });
  return numeric({
    prompt: `In this vial the bubble moves 2 mm for each degree, and its circles lie 2 mm apart. How far off level is the head ${one(random, grounds)}?`,
    drawing: vialShowing(head.site, head.bubble),
    unit: 'degrees',
    key: head.tiltDeg,
    tolerance: { mode: 'absolute', full: 0.3, zero: 1 },
    explanation: `The bubble’s middle is ${figures(mm, 1)} mm from the middle of the ring. Two millimetres are one degree, so the head is ${figures(mm / 2, 2)}° off level.`,
    slips: [
      {
        gives: mm,
        reason: `${figures(mm, 1)} are the millimetres. Two of them make one degree.`,
      },
      ...(mm >= 2 ? [{ gives: 2 * mm, reason: 'You doubled where you should halve.' }] : []),
    ],
  });
}

function pointBubble({ random }: ItemDraw) {
  const { leg } = legAndOthers(random);
  const tiltDeg = random.integer(4, 9) / 2;
  const turn = 15 * random.integer(-3, 3);
  const legADeg = 30 * random.integer(0, 11);
  const towards = legADeg + 120 * leg + turn;
  const head = leaningHead({ legADeg, tiltDeg, risesTowardsDeg: (towards + 720) % 360 });
  const mm = Math.hypot(head.bubble.eastMm, head.bubble.northMm);
  const spot = (place: { eastMm: number; northMm: number }, reason: string) => ({
    ...spotAt(place),
    where: placeWords(place),
    reason,
  });
  return point({
    prompt: `The side at ${clockWords(towards)} stands ${figures(tiltDeg, 1)}° high. Point at the place where the middle of the bubble comes to rest. It moves 2 mm for each degree.`,
    drawing: emptyVial(head.site),
    explanation: `${why} ${figures(tiltDeg, 1)}° are ${figures(2 * tiltDeg, 1)} mm.`,
    right: spot(head.bubble, `On the high side, ${figures(2 * tiltDeg, 1)} mm from the middle.`),
    wrong: [
      {
        ...spot(placeAt(mm, towards + 180), 'That is the low side. The bubble goes up.'),
        misconception: 'bubble-shows-low-side',
      },
      spot(
        placeAt(mm / 2, towards),
        `The right side, but ${figures(tiltDeg, 1)} mm is one millimetre a degree. This vial gives two.`,
      ),
      spot(placeAt(mm, towards + 90), 'That is across the slope, where the head is level.'),
    ],
  });
}

function predictLegOut({ random }: ItemDraw) {
  const { leg, others } = legAndOthers(random);
  const out = random.next() < 0.5;
  const byMm = 5 * random.integer(3, 5);
  // Before: small, so that the bubble stays off the wall after the move.
  const legADeg = 30 * random.integer(0, 11);
  const head = leaningHead({
    legADeg,
    tiltDeg: random.integer(1, 4) / 2,
    risesTowardsDeg: 15 * random.integer(0, 23),
  });
  const after = afterChange(head, leg, out ? byMm : -byMm);
  const legDeg = head.site.legs[leg].azimuthDeg;
  const deg = (towards: number) => `Towards ${clockWords(towards)}`;
  const name = legNames[leg];
  const rises = out ? 'rises' : 'sinks';
  return choice({
    prompt: `You open leg ${name}, slide it ${out ? 'out' : 'in'} by ${String(byMm)} mm and lock it. Which way does the bubble move?`,
    drawing: vialShowing(head.site, head.bubble),
    afterwards: vialShowing(head.site, after.bubble, head.bubble),
    explanation: `Leg ${name} goes ${out ? 'out' : 'in'}, so the head ${rises} over it. A leg moves the bubble along its own line only: ${out ? 'towards the leg when it goes out' : 'away from the leg when it goes in'}.`,
    right: {
      text: deg(out ? legDeg : legDeg + 180),
      reason: `${out ? 'Towards' : 'Straight away from'} leg ${name}: the head ${rises} there.`,
    },
    wrong: [
      {
        text: deg(out ? legDeg + 180 : legDeg),
        reason: `The head ${rises} over leg ${name}, and the bubble goes to the side that rises.`,
        misconception: 'bubble-shows-low-side',
      },
      ...others.map((other) => {
        const otherDeg = head.site.legs[other].azimuthDeg;
        return {
          text: deg(out ? otherDeg : otherDeg + 180),
          reason: `That is the line of leg ${legNames[other]}. Leg ${name} moves the bubble along its own line.`,
        };
      }),
    ],
  });
}

function matchBubbles({ random }: ItemDraw) {
  const towards = 30 * random.integer(0, 11);
  const [small, large] = one(random, [
    [1, 3],
    [1, 4],
    [1.5, 3],
    [1.5, 4],
    [2, 4],
  ] as const);
  const cases = [
    { tiltDeg: small, deg: towards },
    { tiltDeg: large, deg: towards },
    { tiltDeg: small, deg: towards + 180 },
    { tiltDeg: small, deg: towards + 90 },
  ];
  const lean = (tiltDeg: number, deg: number) =>
    `${figures(tiltDeg, 1)}° high on the side at ${clockWords(deg)}`;
  const run = (tiltDeg: number) => vialMm.curvatureRadius * Math.sin(degreesToRadians(tiltDeg));
  return match({
    prompt: `Four times a tripod was set down ${one(random, grounds)}. What does each bubble, read around ${clockWords(towards)}, say about the head? Two millimetres are one degree.`,
    explanation: why,
    pairs: cases.map(({ tiltDeg, deg }) => ({
      left: `Bubble ${placeWords(placeAt(run(tiltDeg), deg))}`,
      right: lean(tiltDeg, deg),
      reason: `It stands on the high side, and ${figures(2 * tiltDeg, 1)} mm are ${figures(tiltDeg, 1)}°.`,
    })),
    spare: [lean(large, towards + 180)],
  });
}

/** The bubble read as it stands: which side, how many degrees. */
export const readTheBubble: ItemFamily = {
  id: 'read-the-bubble',
  lesson: 'level-enough',
  objective: 'bubble',
  skill: 'level',
  title: 'What the bubble tells',
  version: 1,
  templates: {
    'high-side': highSide,
    'how-many-degrees': howManyDegrees,
    'point-bubble': pointBubble,
    'predict-leg-out': predictLegOut,
    'match-bubbles': matchBubbles,
  },
};
