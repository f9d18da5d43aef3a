import type { Random } from '../../variants/random';
import { choice, match, numeric, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { leaningHead } from './leaning-head';
import { placeAt, placeWords, spotAt, vialShowing } from './vial-drawing';
import { clockWords, figures, grounds, one } from './words';

/** Where the bubble stood, and stands after the arm with the vial went half round; along one line, millimetres. */
type Seen = { beforeMm: number; afterMm: number; clockwiseDeg: number };

const headMm = ({ beforeMm, afterMm }: Seen): number => (beforeMm + afterMm) / 2;
const ownMm = ({ beforeMm, afterMm }: Seen): number => (beforeMm - afterMm) / 2;

/** The ground's directions stay; legs are drawn as marks of it. */
const standing = (random: Random) =>
  leaningHead({ legADeg: 30 * random.integer(0, 11), tiltDeg: 0, risesTowardsDeg: 0 }).site;

const draw = (random: Random, seen: Seen) =>
  vialShowing(
    standing(random),
    placeAt(seen.afterMm, seen.clockwiseDeg),
    placeAt(seen.beforeMm, seen.clockwiseDeg),
  );

const rule =
  'What leans over with the head stays on the same side when the vial is turned; what is the vial’s own goes round with it. So the head’s part is halfway between the two places, and the vial’s own is half the way from one to the other.';

/** Both parts there, of different size, and the bubble off the wall both times. */
function bothOut(random: Random): Seen {
  const [head, own] = one(random, [
    [3, 1],
    [2, 1],
    [4, 1.5],
    [4, 2],
    [1, 2.5],
    [1.5, 3],
    [5, 2],
    [2, 3],
    [3, 2],
    [5, 3],
  ] as const);
  const sign = random.pick([1, -1]) ?? 1;
  return {
    beforeMm: head + sign * own,
    afterMm: head - sign * own,
    clockwiseDeg: 15 * random.integer(0, 23),
  };
}

function ownFault({ random }: ItemDraw) {
  const seen = bothOut(random);
  const own = Math.abs(ownMm(seen));
  const way = Math.abs(seen.beforeMm - seen.afterMm);
  return numeric({
    prompt: `The arm with the vial was turned by half a turn ${one(random, grounds)}. The dashed bubble is before, the full one after; nothing else was touched. How far off is the vial itself?`,
    drawing: draw(random, seen),
    unit: 'millimetres of bubble',
    key: own,
    tolerance: { mode: 'absolute', full: 0.3, zero: 1.5 },
    explanation: `The bubble went ${figures(way, 1)} mm over the ground. Half of that, ${figures(own, 1)} mm, is the vial’s own. ${rule}`,
    slips: [
      {
        gives: way,
        reason: `${figures(way, 1)} mm is the whole way. The fault points one way before and the other way after, so only half of it is the vial’s.`,
      },
      {
        gives: Math.abs(headMm(seen)),
        reason: 'That is halfway between the two places: the head’s part. The vial’s is the rest.',
      },
    ],
  });
}

function headsPart({ random }: ItemDraw) {
  const seen = bothOut(random);
  const mm = Math.abs(headMm(seen));
  return numeric({
    prompt: `Dashed is the bubble before, full the bubble after the vial went half round on its arm ${one(random, grounds)}. Two millimetres are one degree. How far does the head really lean?`,
    drawing: draw(random, seen),
    unit: 'degrees',
    key: mm / 2,
    tolerance: { mode: 'absolute', full: 0.2, zero: 0.8 },
    explanation: `Halfway between the two places is ${figures(mm, 1)} mm from the middle, and that is ${figures(mm / 2, 2)}°. ${rule}`,
    slips: [
      {
        gives: Math.abs(seen.afterMm) / 2,
        reason: 'You read the second place alone. It has the vial’s own fault in it.',
        misconception: 'vial-never-lies' as const,
      },
      {
        gives: Math.abs(seen.beforeMm) / 2,
        reason: 'You read the first place alone. It has the vial’s own fault in it.',
        misconception: 'vial-never-lies' as const,
      },
    ].filter(({ gives }) => Math.abs(gives - mm / 2) > 0.3),
  });
}

/** What a half-turn showed, and what that says. */
function verdictOf(seen: Seen): string {
  const [head, own] = [Math.abs(headMm(seen)) / 2, Math.abs(ownMm(seen))];
  const leans = head === 0 ? 'The head is level' : `The head leans by ${figures(head, 2)}°`;
  return `${leans}, ${own === 0 ? 'the vial is true' : `the vial is ${figures(own, 1)} mm out`}`;
}

function verdict({ random }: ItemDraw) {
  const clockwiseDeg = 15 * random.integer(0, 23);
  const mm = random.integer(2, 8);
  const kind = one(random, ['lean', 'vial', 'both', 'hidden'] as const);
  const seen: Seen = {
    lean: { beforeMm: mm, afterMm: mm, clockwiseDeg },
    vial: { beforeMm: mm, afterMm: -mm, clockwiseDeg },
    both: { beforeMm: mm, afterMm: 0, clockwiseDeg },
    hidden: { beforeMm: 0, afterMm: mm, clockwiseDeg },
  }[kind];
  const cases: readonly Seen[] = [
    { beforeMm: mm, afterMm: mm, clockwiseDeg },
    { beforeMm: mm, afterMm: -mm, clockwiseDeg },
    { beforeMm: mm, afterMm: 0, clockwiseDeg },
  ];
  const right = verdictOf(seen);
  const reasons: Readonly<Record<string, string>> = {
    lean: 'That is so when the bubble keeps its place over the ground through the half-turn.',
    vial: 'That is so when the bubble goes to the place right opposite.',
    both: 'That is so when the bubble comes to the middle, or leaves it: half and half.',
  };
  const where = (place: number) => placeWords(placeAt(place, clockwiseDeg));
  return choice({
    prompt: `The bubble stands ${where(seen.beforeMm)}. You turn the arm with the vial half round, and over the ground the bubble stands ${where(seen.afterMm)}. What is so? Two millimetres are one degree.`,
    explanation: rule,
    right: {
      text: right,
      reason: `Halfway between is ${figures(Math.abs(headMm(seen)), 2)} mm, the head’s; half the way is ${figures(Math.abs(ownMm(seen)), 2)} mm, the vial’s.`,
    },
    wrong: [
      ...cases
        .map((one, index) => ({
          text: verdictOf(one),
          reason: reasons[['lean', 'vial', 'both'][index] ?? ''] ?? '',
        }))
        .filter(({ text }) => text !== right),
      {
        text: `The head leans by ${figures(mm / 2, 2)}°, and so does the vial`,
        reason: 'Then the bubble would have moved by twice that, and to another place.',
        misconception: 'vial-never-lies' as const,
      },
    ],
  });
}

function leaveIt({ random }: ItemDraw) {
  const [head, own] = one(random, [
    [2.5, 5],
    [-2.5, 5],
    [2.5, 5.5],
    [-2.5, 5.5],
    [3, 6],
    [-3, 6],
    [2.5, 6],
    [-2.5, 6],
  ] as const);
  const clockwiseDeg = 15 * random.integer(0, 23);
  const seen: Seen = { beforeMm: head + own, afterMm: head - own, clockwiseDeg };
  const spot = (mm: number, reason: string) => {
    const place = placeAt(mm, clockwiseDeg);
    return { ...spotAt(place), where: placeWords(place), reason };
  };
  return point({
    prompt: `A vial that took a knock: dashed before, full after the half-turn ${one(random, grounds)}. It stays turned as it is now. At which place must the bubble stand when the head is level?`,
    drawing: draw(random, seen),
    explanation: `The bubble went ${figures(2 * own, 1)} mm, so ${figures(own, 1)} mm are the vial’s, and they point the way in which the bubble went. ${rule}`,
    right: spot(
      -own,
      `Off the middle by the vial’s own ${figures(own, 1)} mm, the way in which it went. Turned back, it would stand as far off on the other side.`,
    ),
    wrong: [
      {
        ...spot(
          0,
          `With this vial a bubble in the ring means a head that leans by ${figures(own / 2, 2)}°.`,
        ),
        misconception: 'vial-never-lies' as const,
      },
      spot(own, 'That is where it would stand with the vial turned back.'),
      spot(
        head - own,
        `There it stands now, and the head still leans by ${figures(Math.abs(head) / 2, 2)}°.`,
      ),
    ],
  });
}

function matchTurns({ random }: ItemDraw) {
  const clockwiseDeg = 30 * random.integer(0, 11);
  const mm = random.integer(2, 6);
  const cases: readonly { seen: Seen; reason: string }[] = [
    {
      seen: { beforeMm: mm, afterMm: mm, clockwiseDeg },
      reason: 'it kept its place, so all of it is the head’s.',
    },
    {
      seen: { beforeMm: mm, afterMm: -mm, clockwiseDeg },
      reason: 'it went right across, so all of it is the vial’s.',
    },
    {
      seen: { beforeMm: mm, afterMm: 0, clockwiseDeg },
      reason: 'half of the way is the vial’s, and halfway between is the head’s.',
    },
  ];
  const where = (place: number) =>
    place === 0
      ? 'in the ring'
      : `${figures(Math.abs(place))} mm off, at ${clockWords(clockwiseDeg + (place < 0 ? 180 : 0))}`;
  return match({
    prompt: `Three vials ${one(random, grounds)} are turned half round on their arms, the first places all ${figures(mm)} mm off. What does each half-turn show?`,
    explanation: rule,
    pairs: cases.map(({ seen, reason }) => ({
      left: `First ${where(seen.beforeMm)}; then ${where(seen.afterMm)}`,
      right: verdictOf(seen),
      reason,
    })),
    spare: ['The head is level, the vial is true'],
  });
}

/** Whether a vial may be believed. */
export const halfTurnOfTheVial: ItemFamily = {
  id: 'half-turn-of-the-vial',
  lesson: 'level-enough',
  objective: 'vial',
  skill: 'level',
  title: 'The half-turn that tests a vial',
  version: 1,
  templates: {
    'own-fault': ownFault,
    'heads-part': headsPart,
    verdict,
    'leave-it': leaveIt,
    'match-turns': matchTurns,
  },
};
