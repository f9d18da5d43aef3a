import { creepFrom } from '../../balance/creep';
import { clampedAt } from '../../balance/torque';
import { choice, match, numeric, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { figures, grounds, one } from '../level-enough/words';
import { drawTube, type TubeCase } from './tube-case';
import { tubeDrawing, xOf } from './tube-drawing';

/** What the engine's tube does, level, when the hand leaves it. */
const letGo = ({ whole, holdingTorqueNm }: TubeCase, clampMm: number) =>
  creepFrom(clampedAt(whole, clampMm), 0, holdingTorqueNm);

const why =
  'The side of the clamp on which the balance point lies is the heavy one, and the heavy end sinks.';

function letItGo({ random, world }: ItemDraw) {
  const tube = drawTube(random, world);
  const { kit, balanceMm, edgeMm } = tube;
  const offMm = one(random, [-3.2, -2.4, -1.7, -0.4, 0, 0.4, 1.7, 2.4, 3.2]) * edgeMm;
  const clampMm = Math.round(balanceMm + offMm);
  const { moves } = letGo(tube, clampMm);
  const by = Math.abs(clampMm - balanceMm);
  const ends = {
    front: {
      text: `The front sinks: it is heavy by ${String(by)} mm`,
      reason: `The balance point would have to lie nearer to the front than the clamp.`,
    },
    back: {
      text: `The back sinks: it is heavy by ${String(by)} mm`,
      reason: `The balance point would have to lie nearer to the back than the clamp.`,
    },
    holds: {
      text: `It stays: ${String(by)} mm is within what the clutch holds`,
      reason: `The clutch holds ${String(edgeMm)} mm either way, and this is ${String(by)} mm.`,
    },
  };
  const others = (['front', 'back', 'holds'] as const).filter((end) => end !== moves);
  return choice({
    prompt: `${kit.name} lies level in its clamp ${one(random, grounds)}. The clutch holds it while the clamp is within ${String(edgeMm)} mm of the balance point. You take your hand away. What happens?`,
    drawing: tubeDrawing({ kit, clampMm, balanceMm }),
    afterwards: tubeDrawing({
      kit,
      clampMm,
      balanceMm,
      frontDownDeg: moves === 'holds' ? 0 : moves === 'front' ? 9 : -9,
    }),
    explanation: `The clamp grips at ${String(clampMm)} mm and the balance point is at ${String(balanceMm)} mm: ${String(by)} mm apart, and the clutch takes ${String(edgeMm)} mm. ${moves === 'holds' ? 'So it holds.' : why}`,
    right: {
      ...ends[moves],
      reason:
        moves === 'holds'
          ? `${String(by)} mm is less than ${String(edgeMm)} mm.`
          : `The balance point lies on the ${moves} side of the clamp, farther than the clutch takes.`,
    },
    wrong: [
      ...others.map((end) => ends[end]),
      {
        text: `It stays: ${kit.name} is gripped near its middle`,
        reason: 'Not the middle counts, but where the weights even out.',
        misconception: 'middle-is-balance' as const,
      },
    ],
  });
}

/** A clamp so far from the balance point that one end plainly sinks. */
function sinking(draw: ItemDraw) {
  const tube = drawTube(draw.random, draw.world);
  const side = draw.random.pick([1, -1]) ?? 1;
  const byMm = draw.random.integer(15, 45);
  const clampMm = tube.balanceMm + side * byMm;
  const { moves } = letGo(tube, clampMm);
  if (moves === 'holds') throw new Error('so far off no clutch of ours holds');
  // The tube goes the other way than the heavy end.
  return { tube, byMm, clampMm, heavy: moves, way: moves === 'front' ? 'back' : 'forward' };
}

function whichWay(draw: ItemDraw) {
  const { tube, byMm, clampMm, heavy, way } = sinking(draw);
  const other = way === 'back' ? 'forward' : 'back';
  return choice({
    prompt: `Let go ${one(draw.random, grounds)}, the ${heavy} of ${tube.kit.name} sinks. Somebody holds it level again, and you open the clamp. How must the tube slide?`,
    drawing: tubeDrawing({ kit: tube.kit, clampMm, balanceMm: tube.balanceMm }),
    explanation: `The heavy end comes nearer to the clamp: the ${heavy} is heavy, so the tube slides ${way}, by the ${String(byMm)} mm between clamp and balance point.`,
    right: {
      text: `${way === 'back' ? 'Back' : 'Forward'} by ${String(byMm)} mm`,
      reason: 'Then the clamp grips at the balance point.',
    },
    wrong: [
      {
        text: `${other === 'back' ? 'Back' : 'Forward'} by ${String(byMm)} mm`,
        reason: `Then still more of the tube lies on the ${heavy} side, and it sinks harder.`,
        misconception: 'slide-towards-heavy',
      },
      {
        text: `${way === 'back' ? 'Back' : 'Forward'} by ${String(2 * byMm)} mm`,
        reason: `That is past the balance point by ${String(byMm)} mm: the other end would sink.`,
      },
      {
        text: 'Not at all; turn the clutch harder',
        reason: 'That hides it. The tube still pulls, and creeps sooner or later.',
        misconception: 'tighter-clutch-cures',
      },
    ],
  });
}

function howFar(draw: ItemDraw) {
  const { tube, byMm, clampMm, heavy, way } = sinking(draw);
  return numeric({
    prompt: `${tube.kit.name} is to be balanced ${one(draw.random, grounds)}. Read the drawing: how many millimetres must the tube slide ${way}?`,
    drawing: tubeDrawing({ kit: tube.kit, clampMm, balanceMm: tube.balanceMm }),
    unit: 'millimetres',
    key: byMm,
    // The tape is read between marks of 100 mm.
    tolerance: { mode: 'absolute', full: 8, zero: 30 },
    explanation: `The clamp grips at ${String(clampMm)} mm, the balance point lies at ${String(tube.balanceMm)} mm: ${String(byMm)} mm apart. The ${heavy} is heavy, so the tube goes ${way}.`,
    slips: [
      {
        gives: tube.balanceMm,
        reason:
          'That is the place of the balance point on the tape, not how far it is from the clamp.',
      },
      { gives: clampMm, reason: 'That is where the clamp grips now.' },
    ],
  });
}

function gripHere({ random, world }: ItemDraw) {
  const tube = drawTube(random, world);
  const { kit, balanceMm } = tube;
  const middleMm = Math.round(kit.tube.lengthMm / 2);
  const clampMm = Math.round(
    balanceMm + (random.pick([1, -1]) ?? 1) * kit.tube.lengthMm * random.between(0.24, 0.3),
  );
  const { moves } = letGo(tube, clampMm);
  const mirrored = 2 * clampMm - balanceMm;
  const spot = (mm: number, reason: string) => ({
    x: xOf(kit, mm),
    y: 92,
    reason,
    where: `at ${String(Math.round(mm))} mm of the tape`,
  });
  const balanceNearMiddle = Math.abs(balanceMm - middleMm) * (296 / (kit.tube.lengthMm + 230)) < 26;
  const inside = (mm: number) => mm > -60 && mm < kit.tube.lengthMm + 60;
  return point({
    prompt: `Clamped at ${String(clampMm)} mm, the ${moves} of ${kit.name} sinks. All weights together balance at ${String(balanceMm)} mm. Point at the place where the clamp should grip.`,
    drawing: tubeDrawing({ kit, clampMm }),
    explanation: 'Gripped at its balance point, a level tube pulls neither way.',
    right: spot(balanceMm, 'Here both sides pull alike.'),
    wrong: [
      spot(clampMm, `Here it is gripped now, and the ${moves} sinks.`),
      ...(inside(mirrored)
        ? [
            {
              ...spot(
                mirrored,
                'The wrong way: the heavy end would be farther from the clamp still.',
              ),
              misconception: 'slide-towards-heavy' as const,
            },
          ]
        : []),
      ...(balanceNearMiddle
        ? []
        : [
            {
              ...spot(middleMm, 'The middle of the tube. Its weights do not even out there.'),
              misconception: 'middle-is-balance' as const,
            },
          ]),
      spot(moves === 'front' ? 8 : kit.tube.lengthMm - 8, 'The very end: there is no bar to grip.'),
    ],
  });
}

function matchEnds({ random, world }: ItemDraw) {
  const tube = drawTube(random, world);
  const { balanceMm, edgeMm, kit } = tube;
  const offs = [
    -random.integer(edgeMm + 5, edgeMm + 14),
    random.integer(2, edgeMm - 3),
    random.integer(edgeMm + 5, edgeMm + 14),
    -random.integer(edgeMm + 20, edgeMm + 30),
  ];
  const says = (offMm: number): string => {
    const { moves } = letGo(tube, balanceMm + offMm);
    return moves === 'holds'
      ? 'It stays where it is'
      : `The ${moves} sinks; slide it ${moves === 'front' ? 'back' : 'forward'} by ${figures(Math.abs(offMm))} mm`;
  };
  return match({
    prompt: `${kit.name} balances at ${String(balanceMm)} mm from its front end, and its clutch takes ${String(edgeMm)} mm either way. What does it do with the clamp at each of these places?`,
    explanation: `${why} A clamp nearer to the back than the balance point leaves the front heavy.`,
    pairs: offs.map((offMm) => ({
      left: `Clamp at ${String(balanceMm + offMm)} mm`,
      right: says(offMm),
      reason: `it is ${String(Math.abs(offMm))} mm ${offMm > 0 ? 'behind' : 'in front of'} the balance point.`,
    })),
    spare: [`The front sinks; slide it forward by ${String(Math.abs(offs[0] ?? 0))} mm`],
  });
}

/** Which end is heavy, and which way the tube has to go. */
export const whichEndSinks: ItemFamily = {
  id: 'which-end-sinks',
  lesson: 'tube-on-and-balanced',
  objective: 'heavy-end',
  skill: 'balance',
  title: 'Which end sinks, and which way to slide',
  version: 1,
  templates: {
    'let-it-go': letItGo,
    'which-way': whichWay,
    'how-far': howFar,
    'grip-here': gripHere,
    'match-ends': matchEnds,
  },
};
