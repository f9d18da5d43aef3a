import { choice, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { claims } from './sun-claims';
import { inNumber, withAperture } from './words';
import { pickOne } from '../../variants/pick-one';

/** By area: how much more sunlight a tube sends into an eye than the pupil alone would let in. */
function howMuchMore({ random }: ItemDraw) {
  const apertureMm = pickOne(random, [30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 90]);
  // Below a thousand times, so that nobody is led to write a comma for thousands.
  const pupilMm = pickOne(
    random,
    [2, 2.5, 3].filter((mm) => (apertureMm / mm) ** 2 < 1000),
  );
  const key = (apertureMm / pupilMm) ** 2;
  const wide = apertureMm / pupilMm;
  const what = apertureMm <= 50 ? 'A finder telescope' : 'A telescope';
  return numeric({
    prompt: `By day the pupil of your eye is about ${inNumber(pupilMm, 1)} mm wide. ${what} is ${String(apertureMm)} mm wide. How many times as much sunlight does it gather as your eye alone?`,
    unit: 'times',
    key,
    tolerance: { mode: 'relative', full: 0.05, zero: 0.2 },
    explanation: `It is ${inNumber(wide, 1)} times as wide, and so ${inNumber(wide, 1)} × ${inNumber(wide, 1)} times as large in area: about ${inNumber(key)} times. That is why the Sun in a telescope blinds at once.`,
    slips: [
      {
        gives: Number(wide.toFixed(2)),
        reason: 'That compares the widths. Light comes through the whole area: width times width.',
      },
      {
        gives: Number((apertureMm * pupilMm).toFixed(1)),
        reason: 'That multiplies the two widths. Divide them, then take the square.',
      },
    ],
  });
}

function whatDoYouSay({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const { said, right, wrong, why } = pickOne(random, claims);
  return choice({
    prompt: `${pickOne(random, ['Robin', 'Ash', 'Linnet', 'Moss'])} stands by ${kit.name} on a school day and says: “${said}” What do you answer?`,
    explanation:
      'An open telescope and the Sun in the sky do not go together. Caps stay on tube and finder until it has set.',
    right: { text: right, reason: why },
    wrong: wrong.map(([text, reason]) => ({
      text,
      reason,
      misconception: 'sun-harmless' as const,
    })),
  });
}

function firstLight({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const target = pickOne(random, ['the Moon', 'Vega', 'Saturn', 'Jupiter', 'Capella', 'Mizar']);
  return order({
    prompt: `You want to see ${target} in ${withAperture(kit)} this evening. Put the steps in order.`,
    explanation:
      'The Sun first: nothing is opened before it has set. Then the caps, then the tube is turned, and only then comes an eye.',
    steps: [
      'See that the Sun has set',
      'Take the caps off tube and finder',
      `Turn the tube to ${target} with the red dot`,
      'Look into the eyepiece',
      'Put the caps back on before you leave',
    ],
    rules: [
      {
        first: 0,
        then: 1,
        reason: 'a cap that comes off while the Sun is up opens the way for its light.',
      },
      { first: 1, then: 2, reason: 'a capped finder shows neither dot nor sky.' },
      { first: 2, then: 3, reason: 'first something must be in the field that may be looked at.' },
      { first: 3, then: 4, reason: 'capped, nobody sees anything in it.' },
    ],
  });
}

const safe = [
  ['The Moon, an hour after sunset', 'The Sun is down, and the Moon harms no eye.'],
  ['A bright star, an hour after sunset', 'The Sun is down.'],
  ['Saturn at midnight', 'The Sun is far below the horizon.'],
  ['A lamp across a dark room, blinds closed', 'No sunlight comes in.'],
  ['Putting the capped tube on its mount at noon', 'Capped, no light comes through.'],
] as const;
const unsafe = [
  ['The Sun through thin cloud', 'Thin cloud lets enough through to burn, gathered by the tube.'],
  ['The setting Sun, red and low', 'It is still the Sun. It must be gone.'],
  ['The Sun with sunglasses on', 'Sunglasses are made for eyes alone, not for a telescope’s heat.'],
  ['The Sun for half a second only', 'It burns before an eye can shut.'],
  ['A bird, with the Sun just behind the tree', 'A small move, and the Sun is in the field.'],
  ['The Sun through a capped tube’s open finder', 'A finder is a way to the Sun as well.'],
  ['The day Moon, alone, in the sunshine', 'Alone and in the sunshine the Sun is a slip away.'],
] as const;

function whichMay({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  return several({
    prompt: pickOne(random, [
      `Which of these may you do with ${kit.name}?`,
      `${kit.name} is out. Which of these are safe?`,
      `Which of these would your teacher let you do with ${kit.name}?`,
      `You help with ${kit.name} today. Which of these harm nobody?`,
    ]),
    explanation:
      'With the Sun up, the caps stay on. Cloud, sunglasses or haste do not change that.',
    right: random
      .shuffle(safe)
      .slice(0, 2)
      .map(([text, reason]) => ({ text, reason })),
    wrong: random
      .shuffle(unsafe)
      .slice(0, 3)
      .map(([text, reason]) => ({ text, reason, misconception: 'sun-harmless' as const })),
  });
}

/** The Sun above all. */
export const eyeAndSun: ItemFamily = {
  id: 'eye-and-sun',
  lesson: 'eyepieces-and-views',
  objective: 'eye-safe',
  skill: 'safety',
  title: 'No eye at an open telescope while the Sun is up',
  version: 1,
  templates: {
    'how-much-more': howMuchMore,
    'what-do-you-say': whatDoYouSay,
    'first-light': firstLight,
    'which-may': whichMay,
  },
};
