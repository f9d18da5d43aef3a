import { dotAfterTurns, turnsToMove, type Adjusters, type Turns } from '../../finder/adjusters';
import { choice, numeric, order, point } from '../build-item';
import { inNumber } from '../eyepieces-and-views/words';
import { pickOne } from '../../variants/pick-one';
import type { ItemDraw, ItemFamily } from '../item-family';
import { drawFar } from './day-scene';
import { squareArcmin, squaresInWords, windowDrawing, windowPlace } from './window-drawing';

/** Square to each other, as the window is: which way a turn to the right carries the dot. */
const screws = (sideRight: boolean, rearUp: boolean, arcminPerTurn: number): Adjusters => [
  { alongDeg: sideRight ? 0 : 180, arcminPerTurn },
  { alongDeg: rearUp ? 90 : 270, arcminPerTurn },
];
const screwNames = ['side screw', 'rear screw'] as const;

const turnsTold = (turns: number): string =>
  `${inNumber(Math.abs(turns), 2)} ${Math.abs(turns) === 1 ? 'turn' : 'turns'} to the ${turns > 0 ? 'right' : 'left'}`;
const both = ([side, rear]: Turns): string =>
  `Side screw ${turnsTold(side)}, rear screw ${turnsTold(rear)}`;

const sign = (random: ItemDraw['random']): 1 | -1 => (random.integer(0, 1) === 0 ? 1 : -1);
/** How the two screws work, in a sentence. */
const works = (sideRight: boolean, rearUp: boolean, arcmin: number): string =>
  `One turn to the right of the side screw carries the dot ${String(arcmin)}′ to the ${sideRight ? 'right' : 'left'}; of the rear screw, ${String(arcmin)}′ ${rearUp ? 'up' : 'down'}.`;

function howManyTurns({ random }: ItemDraw) {
  const perTurn = pickOne(random, [8, 10, 12, 15, 20]);
  const quarters = random.integer(2, 14);
  const offBy = (perTurn * quarters) / 4;
  const { name } = drawFar(random);
  const side = pickOne(random, ['left', 'right']);
  return numeric({
    prompt: `The ${name} is in the middle of the eyepiece, and the dot is ${inNumber(offBy, 2)}′ to the ${side} of it. One turn of the side screw carries the dot ${String(perTurn)}′. How many turns bring it onto the ${name}?`,
    unit: 'turns',
    key: quarters / 4,
    tolerance: { mode: 'absolute', full: 0.1, zero: 0.45 },
    explanation: `${inNumber(offBy, 2)}′ ÷ ${String(perTurn)}′ is ${inNumber(quarters / 4, 2)} turns. Which way, a small try shows.`,
    slips: [
      {
        gives: Number((perTurn / offBy).toFixed(3)),
        reason: 'That is upside down: what a turn does over what is wanted.',
      },
      {
        gives: offBy * perTurn,
        reason: 'That multiplies. Divide how far off it is by what a turn does.',
      },
    ].filter(({ gives }) => Math.abs(gives - quarters / 4) > 0.15),
  });
}

function whichTurns({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const [sideRight, rearUp] = [random.integer(0, 1) === 0, random.integer(0, 1) === 0];
  const perTurn = 2 * squareArcmin;
  const dot = {
    right: sign(random) * random.integer(1, 3),
    up: sign(random) * random.integer(1, 3),
  };
  const [side, rear] = turnsToMove(
    { rightArcmin: -dot.right * squareArcmin, upArcmin: -dot.up * squareArcmin },
    screws(sideRight, rearUp, perTurn),
  );
  // Exact quarters; the least bit of rounding is taken off.
  const exact: Turns = [Math.round(side * 4) / 4, Math.round(rear * 4) / 4];
  const [a, b] = exact;
  return choice({
    prompt: `${kit.name}’s finder, seen from behind. ${works(sideRight, rearUp, perTurn)} A square is ${String(squareArcmin)}′ wide. How do you bring the dot onto the tip of the spire?`,
    drawing: windowDrawing(
      `The finder’s window with the tip of a spire in the middle. The dot is ${squaresInWords(dot)}.`,
      { dot },
    ),
    explanation: `The dot is ${squaresInWords(dot)}, and two squares make a turn.`,
    right: {
      text: both(exact),
      reason: `That carries it ${String(Math.abs(dot.right))} across and ${String(Math.abs(dot.up))} ${dot.up > 0 ? 'down' : 'up'}: onto the tip.`,
    },
    wrong: [
      {
        text: both([-a, b]),
        reason: `The side screw the wrong way: the dot goes farther to the ${dot.right > 0 ? 'right' : 'left'}.`,
      },
      {
        text: both([a, -b]),
        reason: `The rear screw the wrong way: the dot goes farther ${dot.up > 0 ? 'up' : 'down'}.`,
      },
      { text: both([-a, -b]), reason: 'Both the wrong way: the dot goes twice as far off.' },
    ],
  });
}

function whereDoesItGo({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const [sideRight, rearUp] = [random.integer(0, 1) === 0, random.integer(0, 1) === 0];
  const perTurn = 2 * squareArcmin;
  const turns: Turns = [
    sign(random) * random.integer(1, 3) * 0.5,
    sign(random) * random.integer(1, 3) * 0.5,
  ];
  const after = dotAfterTurns(
    { rightArcmin: 0, upArcmin: 0 },
    screws(sideRight, rearUp, perTurn),
    turns,
  );
  const right = Math.round(after.rightArcmin / squareArcmin);
  const up = Math.round(after.upArcmin / squareArcmin);
  const spot = (square: { right: number; up: number }) => ({
    ...windowPlace(square),
    where: squaresInWords(square)
      .replaceAll('of it', 'of the tip')
      .replaceAll(/(above|below) it/g, '$1 the tip'),
  });
  const others = [
    { right: -right, up },
    { right, up: -up },
    { right: -right, up: -up },
  ];
  return point({
    prompt: `The dot of ${kit.name} is on the tip of the spire. ${works(sideRight, rearUp, perTurn)} Somebody turns the side screw ${turnsTold(turns[0])} and the rear screw ${turnsTold(turns[1])}. Where is the dot then? A square is ${String(squareArcmin)}′.`,
    drawing: windowDrawing(
      'The finder’s window with the tip of a spire in the middle, squares to count, and four empty rings, one to each corner.',
      { empty: [{ right, up }, ...others] },
    ),
    explanation: `Each half turn is one square. The side screw carries it ${right > 0 ? 'right' : 'left'}, the rear screw ${up > 0 ? 'up' : 'down'}.`,
    right: { ...spot({ right, up }), reason: `There it is: ${squaresInWords({ right, up })}.` },
    wrong: others.map((square) => ({
      ...spot(square),
      reason:
        square.up === up
          ? `The side screw carries it to the ${right > 0 ? 'right' : 'left'} here.`
          : square.right === right
            ? `The rear screw carries it ${up > 0 ? 'up' : 'down'} here.`
            : 'Both screws the other way: that would be after turning them back twice.',
    })),
    afterwards: windowDrawing(`The dot is ${squaresInWords({ right, up })}.`, {
      dot: { right, up },
    }),
  });
}

function afterATry({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const screw = pickOne(random, screwNames);
  const { name } = drawFar(random);
  const before = 6 * random.integer(4, 8);
  const moved = 6 * random.integer(1, 2);
  const nearer = random.integer(0, 1) === 0;
  const now = nearer ? before - moved : before + moved;
  const turned = pickOne(random, ['left', 'right']);
  const back = turned === 'left' ? 'right' : 'left';
  const more = inNumber(now / moved / 2, 2);
  const goOn = `${more} turns more to the ${turned}, with the ${screw}`;
  const goBack = `${more} turns to the ${back}, with the ${screw}`;
  const other = screw === 'side screw' ? 'rear screw' : 'side screw';
  return choice({
    prompt: `The ${name} is in the middle of ${kit.name}’s eyepiece. The dot was ${String(before)}′ beside it. You turn the ${screw} half a turn to the ${turned}, and the dot is ${String(now)}′ beside it. What now?`,
    explanation: `Half a turn carried the dot ${String(moved)}′, so a turn carries it ${String(2 * moved)}′, and ${String(now)}′ take ${more} turns. It came ${nearer ? 'nearer: go on' : 'no nearer: turn back'}.`,
    right: {
      text: nearer ? goOn : goBack,
      reason: `The dot came ${nearer ? 'nearer, so that way is right' : 'to be farther off, so the other way is right'}.`,
    },
    wrong: [
      {
        text: nearer ? goBack : goOn,
        reason: nearer
          ? 'It came nearer that way. Turned back, it goes off again.'
          : 'It went farther off that way. Turn back.',
      },
      {
        text: `${more} turns of the ${other}, to the ${turned}`,
        reason: `The ${other} moves the dot on the other line, across this one.`,
      },
      {
        text: `Move the tube by ${String(now)}′, until the dot is on the ${name}`,
        reason: `Then the ${name} leaves the eyepiece. The tube stays; the dot comes to it.`,
        misconception: 'tube-to-the-dot',
      },
    ],
  });
}

function fromFarOff({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const { name } = drawFar(random);
  const screw = pickOne(random, screwNames);
  return order({
    prompt: `By day, in the shadow of a building and with an adult beside you, ${kit.name} is open on a ${name}. How do you find out what the ${screw} does, and use it?`,
    explanation:
      'The tube comes first and then stays. A small try shows which way a screw works; then it is turned on or back, and the eyepiece has the last word.',
    steps: [
      `Bring the ${name} to the middle of the eyepiece`,
      `Turn the ${screw} by a quarter, and watch the dot`,
      `Turn it on or back until the dot is level with the ${name}`,
      `Look whether the ${name} is still in the middle of the eyepiece`,
    ],
    rules: [
      { first: 0, then: 1, reason: `the dot is set by where the ${name} is in the eyepiece.` },
      { first: 1, then: 2, reason: 'only a try shows which way the screw carries the dot.' },
      { first: 2, then: 3, reason: 'a hand on the screw may have nudged the tube.' },
    ],
  });
}

/** Two screws, two lines, and a dot that comes to the target. */
export const twoScrews: ItemFamily = {
  id: 'two-screws',
  lesson: 'finder-by-day',
  objective: 'screws',
  skill: 'finder',
  title: 'Turning the two adjusters',
  version: 1,
  templates: {
    'how-many-turns': howManyTurns,
    'which-turns': whichTurns,
    'where-does-it-go': whereDoesItGo,
    'after-a-try': afterATry,
    'from-far-off': fromFarOff,
  },
};
