import { asSeen, type ImageOrientation } from '../../optics/image-orientation';
import { choice, match, point } from '../build-item';
import type { Shape } from '../../drawings/drawing';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';
import { ring, viewDrawing } from './view-drawing';
import {
  allWays,
  corner,
  sameWay,
  throughView,
  toThe,
  viewInWords,
  wrongWay,
  type Way,
} from './ways';
import { inNumber } from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

const through: Readonly<Record<ItemKit['tubeType'], string>> = {
  refractor: 'with its erecting prism',
  reflector: 'with its two mirrors',
  'maksutov-cassegrain': 'with its star diagonal',
};
const named = ({ name, tubeType }: ItemKit): string => `${name}, ${through[tubeType]},`;
const explain = ({ name, orientation }: ItemKit): string => `${name} ${viewInWords[orientation]}.`;
const others = (right: Way): Way[] => allWays.filter((way) => !sameWay(way, right));

/** A star in a corner of the view: a place in radii of the field, in tenths. */
function drawPlace({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const inView = pickOne(random, allWays);
  return { kit, inView, tenths: random.integer(4, 8), onSky: throughView(inView, kit.orientation) };
}
const starAt = ({ right, up }: Way, tenths: number, named?: string) => ({
  right: (right * tenths) / 10 / Math.SQRT2,
  up: (up * tenths) / 10 / Math.SQRT2,
  size: 0.04,
  ...(named === undefined ? {} : { named }),
});
const wayOut = (tenths: number): string => `${String(tenths)} tenths of the way to the edge`;

function readTheView(draw: ItemDraw) {
  const { kit, inView, tenths, onSky } = drawPlace(draw);
  return choice({
    prompt: `This is what you see in ${kit.name}, ${through[kit.tubeType]}. Where does the star stand on the sky, seen from the middle?`,
    drawing: viewDrawing(
      `The round view in ${kit.name}. A star shines in the ${corner(inView)}, ${wayOut(tenths)}.`,
      [starAt(inView, tenths)],
    ),
    explanation: explain(kit),
    right: { text: capitalised(corner(onSky)), reason: explain(kit) },
    wrong: others(onSky).map((said) => ({
      text: capitalised(corner(said)),
      ...wrongWay({ from: inView, said, orientation: kit.orientation }, kit.name),
    })),
    afterwards: viewDrawing(
      `The same piece of sky as the eye sees it: the star stands in the ${corner(onSky)}.`,
      [starAt(onSky, tenths)],
    ),
  });
}

function moveTheTube(draw: ItemDraw) {
  const { kit, inView, tenths, onSky } = drawPlace(draw);
  return choice({
    prompt: `${named(kit)} shows your star in the ${corner(inView)} of the view, ${wayOut(tenths)}. Which way must the tube go to bring it to the middle?`,
    explanation: `The tube must go to where the star stands on the sky. ${explain(kit)} So the star stands ${toThe(onSky)}.`,
    right: {
      text: capitalised(toThe(onSky)),
      reason: `On the sky the star stands there, and the tube goes to the star.`,
    },
    wrong: others(onSky).map((said) => ({
      text: capitalised(toThe(said)),
      ...wrongWay({ from: inView, said, orientation: kit.orientation }, kit.name),
    })),
    afterwards: viewDrawing(
      `Once the tube has gone ${toThe(onSky)}, the star stands in the middle of the view.`,
      [{ right: 0, up: 0, size: 0.04 }],
    ),
  });
}

const things = [
  { what: 'a weathercock on a roof', part: 'the beak', base: 'the roof' },
  { what: 'a flag on a mast', part: 'the flag', base: 'the mast' },
  { what: 'a crane', part: 'its long arm', base: 'its tower' },
  { what: 'a tree bent by the wind', part: 'the crown', base: 'the trunk' },
  { what: 'a signpost with one arm', part: 'the arm', base: 'the post' },
  { what: 'a chimney with smoke', part: 'the smoke', base: 'the chimney' },
] as const;

function threeViews({ random, world }: ItemDraw) {
  const { what, part, base } = pickOne(random, things);
  const right = random.integer(0, 1) === 0 ? 1 : -1;
  const side = (toRight: number) => (toRight > 0 ? 'right' : 'left');
  const told = (orientation: ImageOrientation) => {
    // What reaches to a side at the top, and what carries it from below.
    const seen = asSeen({ rightArcmin: right, upArcmin: 1 }, orientation);
    return `${part} to the ${side(seen.rightArcmin)}, ${base} at the ${seen.upArcmin > 0 ? 'bottom' : 'top'}`;
  };
  return match({
    prompt: `After sunset you look at ${what}: to the eye ${part} points to the ${side(right)}, with ${base} below. How does each telescope show it?`,
    explanation: world.kits.map(explain).join(' '),
    pairs: world.kits.map((kit) => ({
      left: `${kit.name}, ${through[kit.tubeType]}`,
      right: told(kit.orientation),
      reason: explain(kit),
    })),
    spare: [`${part} to the ${side(right)}, ${base} at the top`],
  });
}

const spotAt = (way: Way) => ({
  x: ring.x + way.right * 58,
  y: ring.y - way.up * 58,
  where: `in the ${corner(way)} of the view`,
});

function pointInTheView(draw: ItemDraw) {
  const { random } = draw;
  const { kit, onSky, inView } = drawPlace(draw);
  const [across, upward] = [random.integer(3, 9), random.integer(3, 9)];
  const offset = `${String(across)}′ to the ${onSky.right > 0 ? 'right' : 'left'} of a bright one and ${String(upward)}′ ${onSky.up > 0 ? 'above' : 'below'} it`;
  return point({
    prompt: `On the sky a faint star stands ${offset}. The bright one is in the middle of the view in ${kit.name}, ${through[kit.tubeType]}. Where do you look for the faint one?`,
    drawing: viewDrawing(
      `The round view in ${kit.name} with a bright star in the middle and four empty places, one in each corner.`,
      [{ right: 0, up: 0, size: 0.06 }],
      allWays.map((way): Shape => {
        const { x, y } = spotAt(way);
        return { kind: 'circle', cx: x, cy: y, r: 14, stroke: 'sky-line', dashed: true };
      }),
    ),
    explanation: explain(kit),
    right: { ...spotAt(inView), reason: `${explain(kit)} There it is.` },
    wrong: others(inView).map((said) => ({
      ...spotAt(said),
      ...wrongWay({ from: onSky, said, orientation: kit.orientation }, kit.name),
    })),
    afterwards: viewDrawing(
      `The faint star has come to light in the ${corner(inView)} of the view.`,
      [
        { right: 0, up: 0, size: 0.06 },
        { right: inView.right * 0.55, up: inView.up * 0.55, size: 0.03 },
      ],
    ),
  });
}

const drifts = [
  { told: 'to the right', rightArcmin: 1, upArcmin: 0 },
  { told: 'to the left', rightArcmin: -1, upArcmin: 0 },
  { told: 'straight up', rightArcmin: 0, upArcmin: 1 },
  { told: 'straight down', rightArcmin: 0, upArcmin: -1 },
] as const;
const edges = [
  { where: 'at the right edge', right: 1, up: 0 },
  { where: 'at the left edge', right: -1, up: 0 },
  { where: 'at the upper edge', right: 0, up: 1 },
  { where: 'at the lower edge', right: 0, up: -1 },
] as const;

function whereItLeaves({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const drift = pickOne(random, drifts);
  const minutes = random.integer(1, 3);
  const seen = asSeen(drift, kit.orientation);
  const asSpot = ({ where, right, up }: (typeof edges)[number]) => ({
    where,
    x: ring.x + right * 92,
    y: ring.y - up * 92,
  });
  const isKey = ({ right, up }: (typeof edges)[number]) =>
    Math.abs(right - seen.rightArcmin) + Math.abs(up - seen.upArcmin) < 1e-9;
  const key = edges.find(isKey);
  if (key === undefined) throw new RangeError('no edge for a drift');
  const clear = `To the eye it drifts ${drift.told}, and ${explain(kit)}`;
  return point({
    prompt: `The motors are off. To the naked eye a star drifts ${drift.told}. It was in the middle of the view in ${kit.name}, ${through[kit.tubeType]}, ${inNumber(minutes)} min ago. At which edge will it leave?`,
    drawing: viewDrawing(
      `The round view in ${kit.name} with a star still near the middle, and a place at each of its four edges.`,
      [{ right: 0, up: 0, size: 0.05 }],
    ),
    explanation: clear,
    right: { ...asSpot(key), reason: clear },
    wrong: edges
      .filter((edge) => edge !== key)
      .map((edge) => ({
        ...asSpot(edge),
        reason: `Not there. ${clear}`,
        ...(kit.orientation !== 'turned' &&
        edge.right === -drift.rightArcmin &&
        edge.up === -drift.upArcmin
          ? { misconception: 'view-always-upside-down' as const }
          : {}),
      })),
    afterwards: viewDrawing(
      `The star has drifted out of the view ${key.where}.`,
      [{ right: 0.88 * key.right, up: 0.88 * key.up, size: 0.05 }],
      [
        {
          kind: 'line',
          x1: ring.x,
          y1: ring.y,
          x2: ring.x + 88 * key.right,
          y2: ring.y - 88 * key.up,
          stroke: 'sky-line',
          dashed: true,
        },
      ],
    ),
  });
}

/** True, mirrored, turned: what a view does to right and left, up and down. */
export const whichWayRound: ItemFamily = {
  id: 'which-way-round',
  lesson: 'eyepieces-and-views',
  objective: 'way-round',
  skill: 'field',
  title: 'Which way round the view is',
  version: 1,
  templates: {
    'read-the-view': readTheView,
    'move-the-tube': moveTheTube,
    'three-views': threeViews,
    'point-in-the-view': pointInTheView,
    'where-it-leaves': whereItLeaves,
  },
};
