import type { FaultId } from '../../faults/fault-ids';
import { angleText } from '../align-on-two-stars/words';
import { pickOne } from '../../variants/pick-one';
import { choice, match, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { eveningStrip } from './evening-strip';
import { happened } from './fault-phrases';
import type { Signature } from './some-evening';
import { whatFollows } from './what-follows';
import { whatIsAbsorbed } from './what-is-absorbed';
import { eveningOf, type When } from './when-signs';

const whenText: Readonly<Record<When, string>> = {
  before: 'Before the first star',
  between: 'Between the two stars',
  after: 'After the second star',
};

const whyWhen = (signature: Signature): Readonly<Record<When, string>> => ({
  before: `That would show in the first slew already. It was ${angleText(60 * signature.firstDeg)} off, as steady hands leave it.`,
  between: 'Then the two stars would not fit together, or only with a strange lean.',
  after: 'Then the slews before would have been good, and the two stars too.',
});

function beforeBetweenAfter(draw: ItemDraw) {
  const when = pickOne(draw.random, ['before', 'between', 'after'] as const);
  const { signature, kit, fault } = eveningOf(draw, when);
  const why = whyWhen(signature);
  const others = (['before', 'between', 'after'] as const).filter((one) => one !== when);
  return choice({
    prompt: `This is what an evening with ${kit.name} showed. When did something go wrong?`,
    drawing: eveningStrip(signature),
    right: {
      text: whenText[when],
      reason: {
        before: `The first slew is ${angleText(60 * signature.firstDeg)} off: more than hands leave.`,
        between: 'The first slew was good, the second was not, and the two do not fit together.',
        after: 'Both slews and both stars were good. Only what came afterwards is off.',
      }[when],
    },
    wrong: [
      ...others.map((one) => ({
        text: whenText[one],
        reason:
          when === 'before' && one === 'between'
            ? 'The first slew came before that, and it is far off already.'
            : why[one],
      })),
      {
        text: 'Never: this is a good evening',
        reason: 'Look at each row: one of them is off by far more than hands leave.',
      },
    ],
    explanation: `It was this: ${happened[fault].toLowerCase()}. Go down the rows. The first that is far off tells when.`,
  });
}

const firstSeen: readonly { fault: FaultId; seen: string; reason: string }[] = [
  {
    fault: 'summer-time',
    seen: 'In the first slew',
    reason: 'The mount looks for every star an hour early or late.',
  },
  {
    fault: 'compass-north',
    seen: 'In the first slew',
    reason: 'Every slew is turned by the needle’s error.',
  },
  { fault: 'latitude', seen: 'In the first slew', reason: 'The whole believed sky is tipped.' },
  {
    fault: 'swapped-stars',
    seen: 'When the two stars are compared',
    reason: 'The slews were good; only the names are exchanged.',
  },
  {
    fault: 'wrong-star',
    seen: 'When the two stars are compared',
    reason:
      'Until then nobody could know; and a mount that solves for its zero may not notice at all.',
  },
];

function whereItShows({ random }: ItemDraw) {
  const early = random.shuffle(firstSeen.filter(({ seen }) => seen.includes('first'))).slice(0, 2);
  const [compared] = random.shuffle(firstSeen.filter(({ seen }) => seen.includes('compared')));
  const kick = pickOne(random, [
    {
      left: 'A leg is kicked during the third go-to',
      seen: 'In the go-tos afterwards',
      reason: 'What was right before is off from then on.',
    },
    {
      left: 'The tube is pushed by hand after the alignment',
      seen: 'In the go-tos afterwards',
      reason: 'From then on the readings are untrue.',
    },
    {
      left: 'A leg sinks when all is aligned',
      seen: 'In the go-tos afterwards',
      reason: 'The mount cannot feel it.',
    },
  ]);
  if (compared === undefined) throw new Error('one of them shows late');
  const who = pickOne(random, ['a class', 'two friends', 'a club', 'a family']);
  return match({
    prompt: `Four evenings of ${who}, four faults. Where does each one show first?`,
    pairs: [
      ...[...early, compared].map(({ fault, seen, reason }) => ({
        left: happened[fault],
        right: seen,
        reason,
      })),
      { left: kick.left, right: kick.seen, reason: kick.reason },
    ],
    explanation: 'Ask when it showed first. What came before that moment was in order.',
  });
}

const search = [
  {
    text: 'Write down how far off it was, and which way',
    because: 'size and direction are the first clues.',
  },
  {
    text: 'Ask whether the slews before were off as well',
    because: 'that sorts the causes into before, between and after.',
  },
  {
    text: 'List what could have happened at that time',
    because: 'there must be suspects before you can test them.',
  },
  {
    text: 'Make one test slew that tells the suspects apart',
    because: 'a test without suspects answers nothing.',
  },
  {
    text: 'Put right what the test showed',
    because: 'a new alignment would only repeat the fault.',
  },
  { text: 'Align again and check on a third star', because: 'done.' },
] as const;

function searchInOrder({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const target = pickOne(random, [
    'a star cluster',
    'a nebula',
    'a double star',
    'a planet',
    'the third star',
  ]);
  const kept = search.filter((_, i) => i === 0 || i === 5 || random.next() < 0.75);
  const steps = kept.length < 3 ? search : kept;
  return order({
    prompt: `${kit.name} was aligned, and misses ${target}. Put in order how you look for the cause.`,
    steps: steps.map(({ text }) => text),
    rules: steps.slice(1).map((_, index) => ({
      first: index,
      then: index + 1,
      reason: steps[index]?.because ?? '',
    })),
    explanation: 'First the evidence, then suspects, then one test, then the cure, then the proof.',
  });
}

/** Before, between or after the two stars. */
export const whenItBegan: ItemFamily = {
  id: 'when-it-began',
  lesson: 'what-went-wrong',
  objective: 'sort',
  skill: 'diagnose',
  title: 'When did it go wrong?',
  version: 1,
  templates: {
    'before-between-after': beforeBetweenAfter,
    'what-is-absorbed': whatIsAbsorbed,
    'where-it-shows': whereItShows,
    'search-in-order': searchInOrder,
    'what-follows': whatFollows,
  },
};
