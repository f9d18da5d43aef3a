import { dotAtInfinity, dotResidualArcmin } from '../../finder/dot-residual';
import { trueFieldArcmin } from '../../optics/true-field';
import { choice, match, numeric, order, point } from '../build-item';
import { ring, viewDrawing } from '../eyepieces-and-views/view-drawing';
import { inNumber, inThree } from '../eyepieces-and-views/words';
import { pickOne } from '../../variants/pick-one';
import type { ItemDraw, ItemFamily } from '../item-family';
import { drawNear, metres } from './day-scene';

const off = (apartMm: number, distanceM: number): number =>
  dotResidualArcmin({ apartMm, distanceM });
const apartOf = (random: ItemDraw['random']): number => 10 * random.integer(6, 10);

function reckon({ random }: ItemDraw) {
  const apartMm = apartOf(random);
  const distanceM = pickOne(random, [8, 10, 12, 15, 20, 25, 40, 50, 80, 100]);
  const key = off(apartMm, distanceM);
  return numeric({
    prompt: `A finder sits ${String(apartMm)} mm beside the tube. It was set on a post ${String(distanceM)} m away. By how many arcminutes is the dot off at the stars? (1 mm at 1 m is 3.44′.)`,
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'relative', full: 0.06, zero: 0.25 },
    explanation: `${String(apartMm)} × 3.44′ ÷ ${String(distanceM)} is ${inThree(key)}′. The farther the post, the smaller it gets.`,
    slips: [
      {
        gives: Number((apartMm * 3.44).toFixed(1)),
        reason: `That is for a post 1 m away. Divide by the distance, ${String(distanceM)} m.`,
      },
      {
        gives: Number((apartMm / distanceM).toFixed(2)),
        reason: 'That is in millimetres at 1 m. Each of them is 3.44′.',
      },
    ],
  });
}

/** Predict, then see: the dot on a star tonight. */
function tonight({ random, world }: ItemDraw) {
  for (;;) {
    const kit = pickOne(random, world.kits);
    const eyepiece = pickOne(random, kit.eyepieces);
    const apartMm = kit.finderBesideTubeMm;
    const { name, distanceM } =
      random.integer(0, 1) === 0
        ? drawNear(random)
        : { name: 'chimney', distanceM: 10 * random.integer(3, 30) };
    const residual = off(apartMm, distanceM);
    const radius = trueFieldArcmin(kit, eyepiece) / 2;
    const share = residual / radius;
    if (Math.abs(share - 1) < 0.15) continue;
    const [offBy, edge] = [inThree(residual), inThree(radius)];
    const inside = `In the eyepiece, ${offBy}′ from the middle; the edge is at ${edge}′`;
    const outside = `Not in the eyepiece: it is ${offBy}′ off, and the edge is at ${edge}′`;
    return choice({
      prompt: `${kit.name}’s finder sits ${String(apartMm)} mm beside the tube and was set with care on a ${name} ${String(distanceM)} m away. Tonight the dot is on a star. Where is the star in the ${String(eyepiece.focalLengthMm)} mm eyepiece, which shows ${inThree(2 * radius)}′ across?`,
      explanation: `The two lines of sight cross at the ${name} and part again: ${String(apartMm)} mm at ${String(distanceM)} m are ${offBy}′. From the middle to the edge it is ${edge}′.`,
      right: {
        text: share < 1 ? inside : outside,
        reason: `${offBy}′ is ${share < 1 ? 'less' : 'more'} than ${edge}′.`,
      },
      wrong: [
        {
          text: `Exactly in the middle: the dot was set with care, so it holds for the stars`,
          reason: `It holds for the ${name} only. At the stars the dot is off by ${offBy}′.`,
          misconception: 'near-target-good',
        },
        share < 1
          ? {
              text: `Not in the eyepiece: it is ${inThree(residual * 4)}′ off, and the edge is at ${edge}′`,
              reason: `${String(apartMm)} mm at ${String(distanceM)} m are ${offBy}′, not four times that.`,
            }
          : {
              text: `In the eyepiece, ${inThree(radius / 3)}′ from the middle; the edge is at ${edge}′`,
              reason: `${String(apartMm)} mm at ${String(distanceM)} m are ${offBy}′: more than ${edge}′.`,
            },
      ],
      afterwards: viewDrawing(
        `The eyepiece ${share < 1 ? 'with the star in it' : 'without the star, which stands outside the ring'}: ${offBy}′ from the middle, the edge at ${edge}′.`,
        [{ right: Math.min(share, 1.35), up: 0, size: 0.04 }],
      ),
    });
  }
}

const distances = [6, 8, 10, 15, 20, 30, 50, 80, 120, 200, 300, 500] as const;

function worstFirst({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const apartMm = apartOf(random);
  const four = random
    .shuffle(distances)
    .slice(0, 4)
    .sort((a, b) => a - b);
  const told = (distanceM: number) => `${inThree(off(apartMm, distanceM))}′`;
  return order({
    prompt: `${kit.name}’s finder sits ${String(apartMm)} mm beside the tube. On which of these posts would it be worst to set it, and on which best? The worst first.`,
    explanation: `At the stars the dot is off by ${four.map((one) => `${told(one)} (${metres(one)})`).join(', ')}: twice as far, half as much.`,
    steps: four.map((distanceM) => `A post ${metres(distanceM)} away`),
    rules: four.slice(1).map((distanceM, first) => ({
      first,
      then: first + 1,
      reason: `the nearer one leaves ${told(four[first] ?? distanceM)}, the other ${told(distanceM)}.`,
    })),
  });
}

function howMuchEach({ random }: ItemDraw) {
  const apartMm = apartOf(random);
  const three = random.shuffle(distances).slice(0, 3);
  const told = (distanceM: number) => `${inThree(off(apartMm, distanceM))}′`;
  const spareM = pickOne(
    random,
    distances.filter((one) => !three.includes(one)),
  );
  return match({
    prompt: `A finder ${String(apartMm)} mm beside the tube is set on one thing after another. By how much is it off at the stars each time?`,
    explanation: `${String(apartMm)} × 3.44′, over the distance in metres.`,
    pairs: three.map((distanceM) => ({
      left: `Set on something ${metres(distanceM)} away`,
      right: `Off by ${told(distanceM)}`,
      reason: `${String(apartMm)} × 3.44′ ÷ ${String(distanceM)} is ${told(distanceM)}.`,
    })),
    spare: [`Off by ${told(spareM)}`],
  });
}

const sides = [
  { told: 'to the right of', rightMm: 1, upMm: 0 },
  { told: 'to the left of', rightMm: -1, upMm: 0 },
  { told: 'above', rightMm: 0, upMm: 1 },
  { told: 'below', rightMm: 0, upMm: -1 },
] as const;

function toWhichSide({ random, world }: ItemDraw) {
  const kit =
    world.kits.find(({ orientation }) => orientation === 'true') ?? pickOne(random, world.kits);
  const side = pickOne(random, sides);
  const apartMm = apartOf(random);
  const { name, distanceM } = drawNear(random);
  const dot = dotAtInfinity({
    finderRightMm: apartMm * side.rightMm,
    finderUpMm: apartMm * side.upMm,
    distanceM,
  });
  const spots = sides.map(({ rightMm, upMm, told }) => ({
    x: ring.x + 62 * rightMm,
    y: ring.y - 62 * upMm,
    where: `${told} the middle of the view`,
    right: Math.sign(dot.rightArcmin) === rightMm && Math.sign(dot.upArcmin) === upMm,
    opposite: rightMm === side.rightMm && upMm === side.upMm,
  }));
  const bare = ({ x, y, where }: (typeof spots)[number]) => ({ x, y, where });
  const key = spots.find(({ right }) => right);
  if (key === undefined) throw new RangeError('a dot lies to one side');
  const why = `Finder and tube look at the ${name} from two places, and their lines of sight cross there. Beyond it each is on the other’s side.`;
  return point({
    prompt: `Seen from behind, the finder sits ${String(apartMm)} mm ${side.told} the tube of ${kit.name}. It was set on a ${name} ${String(distanceM)} m away. Tonight the dot is on a star. Where beside the middle of the view, which shows the sky as the eye does, is the star?`,
    drawing: viewDrawing(
      'The round view, a cross in its middle, and a place to each side of the middle: right, left, above and below.',
      [],
    ),
    explanation: why,
    right: { ...bare(key), reason: why },
    wrong: spots
      .filter(({ right }) => !right)
      .map((spot) => ({
        ...bare(spot),
        reason: spot.opposite
          ? `That is the finder’s own side. ${why}`
          : `The finder sits ${side.told} the tube, so the error lies along that line. ${why}`,
      })),
    afterwards: viewDrawing(
      `The star stands ${key.where}, ${inNumber(off(apartMm, distanceM), 1)}′ off.`,
      [{ right: (key.x - ring.x) / 105, up: (ring.y - key.y) / 105, size: 0.04 }],
    ),
  });
}

/** Two lines of sight that cross at what the finder was set on. */
export const crossedLines: ItemFamily = {
  id: 'crossed-lines',
  lesson: 'finder-by-day',
  objective: 'far',
  skill: 'finder',
  title: 'Why a finder is set on something far away',
  version: 1,
  templates: {
    reckon,
    tonight,
    'worst-first': worstFirst,
    'how-much-each': howMuchEach,
    'to-which-side': toWhichSide,
  },
};
