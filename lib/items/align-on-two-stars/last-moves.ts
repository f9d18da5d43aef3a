import { lagAfter } from '../../alignment/play';
import type { Random } from '../../variants/random';
import { choice, match, numeric, order, several } from '../build-item';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import type { ItemDraw, ItemFamily } from '../item-family';
import { someKit } from './kit-fields';
import { arcmin, figures } from './words';
import { pickOne } from '../../variants/pick-one';

/** Turns of one motor, arcminutes; +1 is the final approach direction. */
export type Moves = readonly number[];

/** Tube minus reading after moves that began with the play taken up; in [0, play]. */
export const lagOf = (moves: Moves, play: number): number =>
  moves.reduce((lag, moved) => lagAfter(lag, moved, play, 1), 0);

type Axis = { plus: string; minus: string };
const axes: readonly Axis[] = [
  { plus: 'right', minus: 'left' },
  { plus: 'up', minus: 'down' },
];

export const movesText = (moves: Moves, { plus, minus }: Axis): string =>
  moves.map((moved) => `${arcmin(Math.abs(moved))} ${moved > 0 ? plus : minus}`).join(', then ');

/** Play of a small mount's gears, arcminutes; our own, no source. */
const somePlay = (random: Random): number => random.integer(6, 14);

const kindsOfEnding = {
  /** Ends far enough the right way. */
  taken: (random: Random, play: number): Moves => [
    random.integer(10, 40),
    -random.integer(play + 4, 2 * play + 10),
    random.integer(play + 1, play + 12),
  ],
  straight: (random: Random, play: number): Moves => [
    -random.integer(2, 12),
    random.integer(play + 2, play + 40),
  ],
  short: (random: Random, play: number): Moves => [
    random.integer(10, 40),
    -random.integer(play + 4, 2 * play + 10),
    random.integer(2, play - 2),
  ],
  wrong: (random: Random, play: number): Moves => [
    random.integer(10, 40),
    -random.integer(play + 1, 2 * play + 10),
  ],
  little: (random: Random, play: number): Moves => [
    random.integer(play + 6, 40),
    -random.integer(2, play - 2),
  ],
} as const;

const whyOf = (moves: Moves, play: number, { plus, minus }: Axis): string => {
  const lag = lagOf(moves, play);
  const last = moves.at(-1) ?? 0;
  if (lag === 0)
    return `The last ${arcmin(last)} ${plus} take up all of the ${arcmin(play)} of play.`;
  return last > 0
    ? `${arcmin(last)} ${plus} is less than the play of ${arcmin(play)}: ${arcmin(lag)} of it are left.`
    : `It ends with a move ${minus}, so ${arcmin(lag)} of play are in the reading.`;
};

function readsTrue({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const play = somePlay(random);
  const axis = pickOne(random, axes);
  const right = pickOne(random, [kindsOfEnding.taken, kindsOfEnding.straight])(random, play);
  const wrong = [kindsOfEnding.short, kindsOfEnding.wrong, kindsOfEnding.little].map((kind) =>
    kind(random, play),
  );
  return choice({
    prompt: `${kit.name}’s gears have ${arcmin(play)} of play, taken up by moves ${axis.plus}. After which moves is the reading true?`,
    right: { text: movesText(right, axis), reason: whyOf(right, play, axis) },
    wrong: wrong.map((moves) => ({
      text: movesText(moves, axis),
      reason: whyOf(moves, play, axis),
      ...((moves.at(-1) ?? 0) < 0 ? { misconception: 'play-does-no-harm' as const } : {}),
    })),
    explanation: `The last move must go ${axis.plus}, and farther than the play.`,
  });
}

function tubeMoves({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const play = somePlay(random);
  const axis = pickOne(random, axes);
  const pressed = random.integer(play + 5, 3 * play + 10);
  // The tube moves by what the motor does less what the lag grows by.
  const key = pressed - (lagOf([-pressed], play) - lagOf([], play));
  return numeric({
    prompt: `${kit.name}’s gears have ${arcmin(play)} of play. The last move went ${axis.plus}, and all play is taken up. Now the motor turns ${arcmin(pressed)} ${axis.minus}. By how much does the tube move?`,
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'absolute', full: 0.5, zero: 2.5 },
    explanation: `First the motor turns through the play, ${arcmin(play)}, and the tube stands. Then the tube goes along: ${arcmin(pressed)} − ${arcmin(play)} = ${arcmin(key)}.`,
    slips: [
      {
        gives: pressed,
        reason: 'So the motor turned. But at first it only ran through the play.',
        misconception: 'play-does-no-harm',
      },
      {
        gives: pressed + play,
        reason: 'Play makes the tube move less than the motor, not more.',
      },
    ],
    afterwards: motorAndTube(pressed, key, axis),
  });
}

/** Two bars: what the motor turned and what the tube did. */
function motorAndTube(motor: number, tube: number, { minus }: Axis): ItemDrawing {
  const px = 240 / motor;
  const bar = (y: number, length: number, text: string, fill: 'accent' | 'strong'): Shape[] => [
    { kind: 'text', x: 20, y: y - 6, text, size: 13, tone: 'ink' },
    { kind: 'rect', x: 20, y, w: Math.round(length * px), h: 16, fill },
  ];
  return {
    width: 320,
    height: 110,
    alternative: `The motor turns ${arcmin(motor)} ${minus}, the tube only ${arcmin(tube)}.`,
    shapes: [
      ...bar(26, motor, `The motor: ${arcmin(motor)} ${minus}`, 'accent'),
      ...bar(76, tube, `The tube: ${arcmin(tube)} ${minus}`, 'strong'),
    ],
  };
}

function lagMatch({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const play = somePlay(random);
  const axis = pickOne(random, axes);
  const some = [
    pickOne(random, [kindsOfEnding.taken, kindsOfEnding.straight])(random, play),
    kindsOfEnding.short(random, play),
    kindsOfEnding.wrong(random, play),
  ];
  return match({
    prompt: `${kit.name}’s gears have ${arcmin(play)} of play, taken up by moves ${axis.plus}; it is taken up at the start. By how much is the reading untrue after these moves?`,
    pairs: some.map((moves) => ({
      left: movesText(moves, axis),
      right: `By ${arcmin(lagOf(moves, play))}`,
      reason: whyOf(moves, play, axis),
    })),
    explanation: `A move ${axis.minus} that is longer than the play leaves all of it in the reading. Moves ${axis.plus} take it up again, minute by minute.`,
  });
}

const overshot = [
  {
    text: (axis: Axis) => `See that the star was passed while moving ${axis.plus}`,
    because: 'first see what is wrong.',
  },
  {
    text: (axis: Axis) =>
      `Press ${axis.minus} until the star is well beyond the middle on the other side`,
    because: 'there must be room to come back in the right direction.',
  },
  {
    text: (axis: Axis) => `Press ${axis.plus}, slowly, and watch the tube begin to move`,
    because: 'the first part of that move only takes up the play.',
  },
  {
    text: () => 'Stop when the star sits in the middle',
    because: 'the reading is true now, but of the middle only if the star is there.',
  },
  { text: () => 'Press “This is the star”', because: 'done.' },
] as const;

function comeBack({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const axis = pickOne(random, axes);
  const star = pickOne(random, ['Vega', 'Deneb', 'Capella', 'Regulus', 'Spica', 'Altair']);
  return order({
    prompt: `${kit.name} ends its slews ${axis.plus}. While centring ${star} you went too far ${axis.plus}. Put in order what you do.`,
    steps: overshot.map(({ text }) => text(axis)),
    rules: overshot.slice(1).map((_, index) => ({
      first: index,
      then: index + 1,
      reason: overshot[index]?.because ?? '',
    })),
    explanation: `Do not creep back ${axis.minus} to the middle. Go beyond it, and come back ${axis.plus}.`,
  });
}

function whichEndings({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const play = somePlay(random);
  const axis = pickOne(random, axes);
  const written = (moves: Moves) => ({
    text: movesText(moves, axis),
    reason: whyOf(moves, play, axis),
  });
  const right = [kindsOfEnding.taken, kindsOfEnding.straight].map((kind) =>
    written(kind(random, play)),
  );
  const wrong = random
    .shuffle([kindsOfEnding.short, kindsOfEnding.wrong, kindsOfEnding.little])
    .slice(0, 2)
    .map((kind) => written(kind(random, play)));
  return several({
    prompt: `With ${arcmin(play)} of play in ${kit.name}’s gears, which moves end with a true reading? It is true after moves ${axis.plus}.`,
    right,
    wrong,
    explanation: `Those whose last move goes ${axis.plus} by more than ${figures(play, 0)}′.`,
  });
}

function otherMount({ random }: ItemDraw) {
  const [across, along] = [pickOne(random, ['right', 'left']), pickOne(random, ['up', 'down'])];
  const other = { right: 'left', left: 'right', up: 'down', down: 'up' } as const;
  const name = pickOne(random, ['a borrowed mount', 'the club’s old mount', 'a neighbour’s mount']);
  const from = pickOne(random, ['manual', 'label', 'card in its box']);
  const ending = (a: string, b: string): string => `Short moves ${a} and ${b}`;
  const wrongWay = (axis: string): string =>
    `A last move ${axis} leaves the play of that axis in its reading.`;
  return choice({
    prompt: `You align ${name}. Its ${from} says: “Ends every slew going ${across} and ${along}.” With which moves do you end each centring?`,
    right: {
      text: ending(across, along),
      reason: 'The same way as its slews, so that the play lies on the same side.',
    },
    wrong: [
      {
        text: ending(other[across as keyof typeof other], along),
        reason: wrongWay(other[across as keyof typeof other]),
      },
      {
        text: ending(across, other[along as keyof typeof other]),
        reason: wrongWay(other[along as keyof typeof other]),
      },
      {
        text: ending(other[across as keyof typeof other], other[along as keyof typeof other]),
        reason: 'Both axes then carry their whole play in the readings.',
      },
    ],
    explanation:
      'Right and up is the rule for our three telescopes, not for all. Look it up: the last moves go as the mount’s own slews end.',
  });
}

/** Play, and how the last moves keep it out of the readings. */
export const lastMoves: ItemFamily = {
  id: 'last-moves',
  lesson: 'align-on-two-stars',
  objective: 'play',
  skill: 'align',
  title: 'The last moves, and play in the gears',
  version: 2,
  templates: {
    'reads-true': readsTrue,
    'tube-moves': tubeMoves,
    'lag-match': lagMatch,
    'come-back': comeBack,
    'which-endings': whichEndings,
    'other-mount': otherMount,
  },
};
