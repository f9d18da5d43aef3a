import { point } from '../build-item';
import type { Shape } from '../../drawings/drawing';
import { pickOne } from '../../variants/pick-one';
import type { ItemDraw } from '../item-family';

const compass = [
  { name: 'north', right: 0, up: 1 },
  { name: 'east', right: 1, up: 0 },
  { name: 'south', right: 0, up: -1 },
  { name: 'west', right: -1, up: 0 },
] as const;
type Side = (typeof compass)[number];
const place = ({ right, up }: Side) => ({ x: 150 + 62 * right, y: 110 - 62 * up });

/** A plan of a house, north up: only the side away from the Sun lies in its shadow. */
export function whereToStand({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  // South of the tropics the midday Sun stands in the north; everywhere it rises and sets.
  const sun = pickOne(random, compass);
  const house = pickOne(random, ['school', 'gym', 'library', 'club house', 'town hall']);
  const shadow = compass.find(({ right, up }) => right === -sun.right && up === -sun.up);
  if (shadow === undefined) throw new RangeError('a house has four sides');
  const tree = { x: 278, y: 40, where: 'under the tree, off to the north-east' };
  const spot = (side: Side) => ({ ...place(side), where: `${side.name} of the ${house}` });
  const arrow = place(sun);
  return point({
    prompt: `Seen from above, north at the top: the Sun shines from the ${sun.name}. Where may ${kit.name} be opened, with an adult beside it?`,
    drawing: {
      width: 320,
      height: 220,
      alternative: `A plan with north at the top and the ${house} in the middle. The Sun stands in the ${sun.name}. There is a place on each side of the ${house}, and one more under a tree off to the north-east.`,
      shapes: [
        { kind: 'rect', x: 0, y: 0, w: 320, h: 220, fill: 'panel', stroke: 'line' },
        { kind: 'rect', x: 116, y: 76, w: 68, h: 68, fill: 'soft', stroke: 'ink' },
        { kind: 'text', x: 150, y: 115, text: house, anchor: 'middle', size: 13, tone: 'panel' },
        { kind: 'circle', cx: tree.x, cy: tree.y, r: 26, fill: 'sunken', stroke: 'good', width: 2 },
        { kind: 'text', x: tree.x, y: tree.y + 44, text: 'tree', anchor: 'middle', size: 13 },
        {
          kind: 'text',
          x: 150 + 96 * sun.right + (sun.right === 0 ? 40 : 0),
          y: 110 - 98 * sun.up + (sun.up === 0 ? 32 : sun.up > 0 ? 14 : 4),
          text: 'Sun',
          anchor: 'middle',
          bold: true,
        },
        ...[-16, 0, 16].map((aside): Shape => ({
          kind: 'line',
          x1: arrow.x + 36 * sun.right + aside * Math.abs(sun.up),
          y1: arrow.y - 36 * sun.up + aside * Math.abs(sun.right),
          x2: arrow.x + 16 * sun.right + aside * Math.abs(sun.up),
          y2: arrow.y - 16 * sun.up + aside * Math.abs(sun.right),
          stroke: 'accent',
          width: 3,
        })),
      ],
    },
    explanation: `The shadow falls away from the Sun, to the ${shadow.name}. There the ${house} hides the Sun, whatever the tube is turned to.`,
    right: { ...spot(shadow), reason: `Here the ${house} stands between telescope and Sun.` },
    wrong: [
      ...compass
        .filter((side) => side !== shadow)
        .map((side) => ({
          ...spot(side),
          reason:
            side === sun
              ? 'This is the sunny side: the Sun shines straight at the telescope.'
              : `The shadow falls to the ${shadow.name}. Here the Sun shines past the wall.`,
        })),
      { ...tree, reason: 'A tree lets the Sun through its leaves. It takes a building.' },
    ],
  });
}
