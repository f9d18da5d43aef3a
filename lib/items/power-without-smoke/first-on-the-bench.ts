import { point } from '../build-item';
import type { ItemDraw } from '../item-family';
import { pickOne } from '../../variants/pick-one';
import { benchSpots, drawBench, type LeftBench } from './draw-bench';
import { telescopeNames } from './draw-needs';
import { switchingRule } from './switching-rule';

/** What has to be put right first on a bench as it was left. */
function firstThing({ on, supply, cellsIn }: LeftBench) {
  if (on) return 'switch';
  if (supply && !cellsIn) return 'socket';
  if (!cellsIn) return 'holder';
  return 'handControl';
}

const lefts: readonly [LeftBench, ...LeftBench[]] = [
  { on: true, supply: true, handControl: false, cellsIn: true },
  { on: true, supply: false, handControl: true, cellsIn: false },
  { on: true, supply: true, handControl: true, cellsIn: false },
  { on: false, supply: true, handControl: true, cellsIn: false },
  { on: false, supply: true, handControl: false, cellsIn: false },
  { on: false, supply: false, handControl: true, cellsIn: false },
  { on: false, supply: false, handControl: false, cellsIn: true },
];
const because = {
  switch: 'The switch stands on. Nothing is plugged or pulled before it is off.',
  socket:
    'The holder has an empty bay and is plugged in. Its plug comes out before a cell goes in.',
  holder: 'Switch off and plug out: now the empty bay gets its cell.',
  handControl: 'Switch off, cells in, supply out: the hand control goes in first.',
} as const;

/** A bench as it was left: where the hand goes first. */
export function firstOnTheBench({ random }: ItemDraw) {
  const left = pickOne(random, lefts);
  const first = firstThing(left);
  const spots = ['switch', 'socket', 'handControl', 'holder'] as const;
  const whenWrong = {
    switch: 'The switch stands off, as it should: it goes on last.',
    socket: left.supply ? 'The plug comes later.' : 'The supply goes in after the hand control.',
    handControl: left.handControl
      ? 'The hand control is in already.'
      : 'The hand control waits for what comes before it.',
    holder: left.cellsIn
      ? 'The holder is full.'
      : 'The empty bay waits: switch and plug come first.',
  };
  return point({
    prompt: `This is how ${pickOne(random, telescopeNames)}’s bench was left. You want to get it running. Point at what your hand goes to first.`,
    drawing: drawBench(left),
    explanation: switchingRule,
    right: { ...benchSpots[first], reason: because[first] },
    wrong: spots
      .filter((spot) => spot !== first)
      .map((spot) => ({ ...benchSpots[spot], reason: whenWrong[spot] })),
  });
}
