import { fieldRadiusArcmin } from '../../pointing/field-radius';
import { choice, match, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';
import { figures, grounds, one } from '../level-enough/words';
import { pickKit } from './tube-case';

/** What the eyepiece that one observes with shows to each side, arcminutes. */
function fieldOf(kit: ItemKit): number {
  const eyepiece = kit.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (eyepiece === undefined) throw new Error(`${kit.name} has no eyepiece to observe with`);
  return Math.round(fieldRadiusArcmin(kit.telescope, eyepiece));
}

const why =
  'The clutch slips, the tube moves, and the mount does not notice: its reading stands still. From then on every go-to is off by as much.';

function howFarOff({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const tenths = random.integer(3, 20);
  const field = fieldOf(kit);
  const key = 6 * tenths;
  return numeric({
    prompt: `After a good alignment ${one(random, grounds)} the tube of ${kit.name} creeps down by ${figures(tenths / 10, 1)}°, and nobody sees it. How many arcminutes too low do the next go-tos land?`,
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'absolute', full: 1, zero: 12 },
    explanation: `${figures(tenths / 10, 1)}° × 60 is ${String(key)}′. ${kit.name}’s eyepiece for observing shows ${String(field)}′ to each side, so the target is ${key > field ? 'out of view' : 'off the middle'}. ${why}`,
    slips: [
      { gives: tenths / 10, reason: 'Those are degrees. One degree is 60 arcminutes.' },
      {
        gives: 0,
        reason: `The alignment knows nothing of a slipping clutch. ${why}`,
      },
    ],
  });
}

function inTheEyepiece({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const field = fieldOf(kit);
  const arcmin = Math.max(6, 6 * Math.round((field * one(random, [0.4, 0.6, 1.6, 2.2, 3])) / 6));
  const inside = arcmin < field;
  const creptDeg = figures(arcmin / 60, 1);
  return choice({
    prompt: `${kit.name} was aligned well. Since then its tube has crept by ${creptDeg}°. Its eyepiece for observing shows ${String(field)}′ to each side. Where is the next target?`,
    explanation: `${creptDeg}° are ${String(arcmin)}′. ${why}`,
    right: {
      text: inside
        ? `In view, ${String(arcmin)}′ off the middle`
        : `Out of view, ${String(arcmin - field)}′ past the edge`,
      reason: `${String(arcmin)}′ is ${inside ? 'less' : 'more'} than the ${String(field)}′ from the middle to the edge.`,
    },
    wrong: [
      {
        text: 'In the middle: the motors make up for it',
        reason: 'The motors follow their readings, and the readings did not change.',
      },
      inside
        ? {
            text: `Out of view, ${String(arcmin)}′ past the edge`,
            reason: `${String(arcmin)}′ counts from the middle, and the edge is ${String(field)}′ away.`,
          }
        : {
            text: `In view, as the field is ${String(2 * field)}′ wide`,
            reason: `From the middle to the edge it is half of that, ${String(field)}′.`,
          },
      {
        text: `Off by another amount at each target, up to ${String(2 * arcmin)}′`,
        reason: 'A slip of the altitude is the same at every target.',
      },
    ],
  });
}

function whatCures({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const end = one(random, ['front', 'back'] as const);
  const other = end === 'front' ? 'back' : 'front';
  const [way, wrongWay] = end === 'front' ? ['back', 'forward'] : ['forward', 'back'];
  const mm = random.integer(12, 35);
  const cures = [
    {
      text: `Slide the tube ${way} in its clamp`,
      reason: `That brings the heavy ${end} nearer to the clamp.`,
    },
    {
      text: `Take a part off the ${end} that is not used tonight`,
      reason: `Less weight on the ${end}.`,
    },
    {
      text: `Strap a weight under the ${other}`,
      reason: `At the light end a weight helps, where the bar is too short to slide.`,
    },
  ];
  const none = [
    {
      text: `Turn the clutch as hard as it goes`,
      reason: 'It hides the pull and strains the clutch. The tube still wants to sink.',
      misconception: 'tighter-clutch-cures' as const,
    },
    {
      text: `Strap a weight under the middle, at the clamp`,
      reason: 'At the balance point a weight shifts nothing; it only makes the tube heavier.',
      misconception: 'weight-cures-creep' as const,
    },
    {
      text: `Slide the tube ${wrongWay} in its clamp`,
      reason: `Then still more of it lies on the ${end}.`,
      misconception: 'slide-towards-heavy' as const,
    },
    {
      text: `Strap a weight under the ${end}`,
      reason: `The ${end} is heavy already.`,
      misconception: 'weight-cures-creep' as const,
    },
  ];
  return several({
    prompt: `Let go, the ${end} of ${kit.name} sinks: its balance point lies ${String(mm)} mm ${end === 'front' ? 'in front of' : 'behind'} the clamp. Which of these cure it?`,
    explanation: 'Bring the balance point to the clamp. Nothing else cures creep.',
    right: random.shuffle(cures).slice(0, 2),
    wrong: random.shuffle(none).slice(0, 3),
  });
}

function anEvening({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const extra = one(random, ['the phone holder', 'the dew shield', 'the 25 mm eyepiece']);
  return order({
    prompt: `${kit.name} is in its clamp ${one(random, grounds)}, and tonight ${extra} is used. Put the work in order. The tube is balanced once, and well.`,
    explanation:
      'Everything on, then balance, then the clutch, then the stars. And nothing new afterwards.',
    steps: [
      `Put on ${extra} and all else that is used tonight, a hand on the tube`,
      'Slide the tube until it stays level when you let go',
      'Try it low and high, and mend what creeps',
      'Turn the clutch as it should be and leave it so',
      'Align on two stars',
    ],
    rules: [
      {
        first: 0,
        then: 1,
        reason: 'balanced bare, it is out of balance as soon as a part goes on.',
      },
      { first: 1, then: 2, reason: 'first level, then the whole range.' },
      { first: 2, then: 3, reason: 'a hard clutch hides what you want to see.' },
      { first: 3, then: 4, reason: 'a tube that slips after the alignment makes it worthless.' },
    ],
  });
}

function matchSigns({ random, world }: ItemDraw) {
  const kit = pickKit(random, world);
  const low = one(random, [10, 15, 20]);
  const high = one(random, [60, 65, 70]);
  return match({
    prompt: `A hand lets go of ${kit.name} at ${String(low)}° and at ${String(high)}°, again and again, with changes between. What does each pair of trials say?`,
    explanation:
      'The same end at both altitudes: wrong place along the tube. Only when raised, or one end low and the other high: the weight lies above or below the axis.',
    pairs: [
      {
        left: `Stays at ${String(low)}°, stays at ${String(high)}°`,
        right: 'Balanced well enough',
        reason: 'the clutch holds it low and high.',
      },
      {
        left: `Front sinks at ${String(low)}°, front sinks less at ${String(high)}°`,
        right: 'Too much in front: slide it back',
        reason: 'what lies in front pulls less the higher the tube.',
      },
      {
        left: `Back sinks at ${String(low)}°, back sinks less at ${String(high)}°`,
        right: 'Too much behind: slide it forward',
        reason: 'what lies behind pulls less the higher the tube.',
      },
      {
        left: `Stays at ${String(low)}°, back sinks at ${String(high)}°`,
        right: 'The weight lies above the axis',
        reason: 'raised, it leans back over the axis.',
      },
      {
        left: `Stays at ${String(low)}°, front sinks at ${String(high)}°`,
        right: 'The weight lies below the axis',
        reason: 'raised, it swings forward.',
      },
    ],
  });
}

/** What creep costs, and what cures it. */
export const creepAndClutch: ItemFamily = {
  id: 'creep-and-clutch',
  lesson: 'tube-on-and-balanced',
  objective: 'creep',
  skill: 'balance',
  title: 'Creep, what it costs and what cures it',
  version: 1,
  templates: {
    'how-far-off': howFarOff,
    'in-the-eyepiece': inTheEyepiece,
    'what-cures': whatCures,
    'an-evening': anEvening,
    'match-signs': matchSigns,
  },
};
