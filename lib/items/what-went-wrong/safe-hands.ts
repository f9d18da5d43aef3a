import { pickOne } from '../../variants/pick-one';
import { choice, order, several } from '../build-item';
import type { ItemDraw } from '../item-family';

/* Cautions as in the design, "Cautions, always in view where they apply"; the rest is common practice. */

const cures = [
  {
    fault: 'whose cells have sagged',
    steps: [
      {
        text: 'Switch the mount off',
        because: 'cells go in and out with nothing drawing on them.',
      },
      { text: 'Take all the old cells out', because: 'old and new ones are never mixed.' },
      {
        text: 'Put in fresh ones of one kind, the right way round',
        because: 'without cells there is nothing to switch on.',
      },
      { text: 'Switch on', because: 'a computer that is off cannot be aligned.' },
      { text: 'Align on two stars', because: 'only an alignment can be checked.' },
      { text: 'Check on a third star', because: 'done.' },
    ],
  },
  {
    fault: 'whose tripod was kicked',
    steps: [
      {
        text: 'Press the feet firm, a second person at the mount',
        because: 'a leg that sinks further spoils all that follows.',
      },
      {
        text: 'Level the base by its bubble',
        because: 'levelling moves the mount, so it comes before the alignment.',
      },
      { text: 'Mark the legs with something white', because: 'before the next foot catches one.' },
      { text: 'Align on two stars', because: 'only an alignment can be checked.' },
      { text: 'Check on a third star', because: 'done.' },
    ],
  },
  {
    fault: 'whose tube creeps in its clamp',
    steps: [
      { text: 'Hold the tube with a hand', because: 'a loosened tube can slide out.' },
      { text: 'Loosen the clamp a little', because: 'it must be loose before it can be slid.' },
      { text: 'Slide the tube until it balances', because: 'a tube out of balance creeps again.' },
      {
        text: 'Tighten the clamp, then let go',
        because: 'a tube that can still move cannot be aligned.',
      },
      { text: 'Align on two stars', because: 'done.' },
    ],
  },
  {
    fault: 'whose cable caught on a leg',
    steps: [
      { text: 'Stop the motors and switch off', because: 'a moving mount pulls harder.' },
      { text: 'Unwind the cable', because: 'it must be free before it can be led anew.' },
      {
        text: 'Lead it so that it hangs free for a full turn',
        because: 'the next slew would catch it again.',
      },
      { text: 'Switch on and align on two stars', because: 'only an alignment can be checked.' },
      { text: 'Check on a third star', because: 'done.' },
    ],
  },
] as const;

export function stepsOfCure({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const { fault, steps } = pickOne(random, cures);
  return order({
    prompt: `You have ${kit.name} before you, ${fault}. Put in order what you do.`,
    steps: steps.map(({ text }) => text),
    rules: steps.slice(1).map((_, index) => ({
      first: index,
      then: index + 1,
      reason: steps[index]?.because ?? '',
    })),
    explanation: 'First make it safe, then mend it, then align, then check.',
  });
}

const cautious = [
  {
    says: 'The finder is off, and it is still light',
    right: {
      text: 'Wait until dark and set it on a star',
      reason: 'No Sun, and nothing is farther away than a star.',
    },
    wrong: [
      {
        text: 'Set it on a tree near the low Sun',
        reason: 'One look at the Sun blinds. By day it is an adult’s job, far from the Sun.',
        misconception: 'sun-harmless',
      },
      {
        text: 'Set it on a fence close by at once',
        reason: 'Set on something near, dot and tube part again farther out.',
      },
      {
        text: 'Take its cap off and try with the Sun behind cloud',
        reason: 'Cloud breaks. Caps stay on until the Sun has set.',
        misconception: 'sun-harmless',
      },
    ],
  },
  {
    says: 'The cells are weak, and somebody offers a mains lead across the wet grass',
    right: {
      text: 'Take fresh cells of one kind instead',
      reason: 'Students use cells; mains outdoors is the teacher’s, dry and on a protected socket.',
    },
    wrong: [
      {
        text: 'Take the lead, but step round the puddles',
        reason: 'Mains and wet ground can kill. It is for the teacher to decide, by local rules.',
      },
      {
        text: 'Mix two new cells in among the old ones',
        reason: 'Old and new cells are never mixed: the old ones can leak or get hot.',
      },
      {
        text: 'Charge the old cells from somebody’s car',
        reason: 'Cells that are not made for charging are never charged.',
      },
    ],
  },
  {
    says: 'The tripod sinks on one side, the telescope on it',
    right: {
      text: 'Two people: one holds, one sets the leg',
      reason: 'A leg lock that is opened holds nothing up.',
    },
    wrong: [
      {
        text: 'Open the leg lock quickly by yourself',
        reason: 'The leg gives way, and the telescope falls.',
        misconception: 'open-lock-holds',
      },
      {
        text: 'Pull it straight by the end of the tube',
        reason: 'That strains clutch and clamp, and moves the tube behind the motors’ back.',
        misconception: 'push-by-hand',
      },
      {
        text: 'Push a foot under it while it leans',
        reason: 'Fingers and feet stay clear of a leg that is moving.',
      },
    ],
  },
  {
    says: 'The tube creeps down when the mount points high',
    right: {
      text: 'Hold the tube, then loosen its clamp',
      reason: 'Loosened, it can slide out. A hand below it comes first.',
    },
    wrong: [
      { text: 'Loosen the clamp and watch where it goes', reason: 'It goes to the ground.' },
      {
        text: 'Turn the clutch harder with a tool',
        reason: 'That hides the imbalance and can strip the screw.',
        misconception: 'tighter-clutch-cures',
      },
      {
        text: 'Hang a bag on the eyepiece end',
        reason: 'Most likely the wrong end, and it swings. Slide the tube instead.',
        misconception: 'weight-cures-creep',
      },
    ],
  },
  {
    says: 'The cable pulls tight in the middle of a slew',
    right: {
      text: 'Stop the slew, switch off, then free it',
      reason: 'Nothing moves then, neither the mount nor your fingers in it.',
    },
    wrong: [
      {
        text: 'Lift it off the leg while it is turning',
        reason: 'Fingers and cables get caught in a turning mount.',
      },
      {
        text: 'Push the tube back a little by hand',
        reason: 'The motors go on pulling, and the readings are lost.',
        misconception: 'push-by-hand',
      },
      {
        text: 'Let it finish: cables are strong',
        reason: 'The plug gives way first, or the tripod goes over.',
      },
    ],
  },
] as const;

export function safeHands({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const { says, right, wrong } = pickOne(random, cautious);
  const when = pickOne(random, ['With your class', 'At the club', 'In the school yard']);
  return choice({
    prompt: `${when}, at ${kit.name}: ${says.charAt(0).toLowerCase()}${says.slice(1)}. What do you do?`,
    right,
    wrong: [...wrong],
    explanation: `${right.reason} Call an adult whenever you are in doubt.`,
  });
}

const moves = [
  {
    text: 'A leg was made longer by a hand’s breadth',
    reason: 'The base stands differently now, and the mount cannot feel it.',
  },
  {
    text: 'The tube was turned with a clutch open',
    reason: 'The readings are no longer those of the tube.',
  },
  { text: 'The mount was switched off and on', reason: 'It has forgotten the two stars.' },
  { text: 'The whole tripod was carried to a better place', reason: 'It faces another way now.' },
] as const;
const stays = [
  {
    text: 'The 25 mm eyepiece was changed for the 9 mm',
    reason: 'The mount points as before; only the field is narrower.',
  },
  { text: 'The focus was turned', reason: 'That moves the picture, not the pointing.' },
  { text: 'The finder’s dot was set on a star', reason: 'The finder is no part of the alignment.' },
  { text: 'Another target was chosen', reason: 'That is what the alignment is for.' },
  { text: 'The red light was switched off', reason: 'The mount has no eyes.' },
] as const;

export function needsAligning({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const star = pickOne(random, [
    'Vega and Capella',
    'Arcturus and Altair',
    'Regulus and Aldebaran',
    'Deneb and Hamal',
  ]);
  const right = random.shuffle(moves).slice(0, 2);
  return several({
    prompt: `${kit.name} is well aligned on ${star}. After which of these must it be aligned again?`,
    right: [...right],
    wrong: random.shuffle(stays).slice(0, 3),
    explanation:
      'Whatever moves the base or the tube without the motors, or makes the mount forget.',
  });
}
