import { several } from '../build-item';
import type { ItemDraw } from '../item-family';
import { someKit } from './kit-fields';

/** Each is so by the model of a pair's worth, or by the fit: see the tests. */
const lifts = [
  {
    text: 'Centring both stars more carefully',
    reason: 'What is left off the middle at the two stars is the first cause of a miss.',
  },
  {
    text: 'Taking two stars farther apart, in other directions',
    reason: 'The same slips then grow less over the sky.',
  },
  {
    text: 'Ending each centring right and up',
    reason: 'Else the play of the gears is in the readings, as if the star were off the middle.',
  },
  {
    text: 'Observing with an eyepiece that shows more sky',
    reason: 'The misses stay, but more of them end inside the field.',
  },
] as const;
const doesNotLift = [
  {
    text: 'Levelling the base to a tenth of a degree',
    reason: 'Two stars absorb a small lean: less than 0.001′ is left of a whole degree.',
    misconception: 'tilt-spoils-alignment',
  },
  {
    text: 'Entering the time to the second',
    reason: 'A clock that is a little wrong turns the sky a little, and two stars turn it back.',
  },
  {
    text: 'Taking the two brightest stars, wherever they are',
    reason: 'Bright is handy. What counts is where they stand.',
  },
  {
    text: 'Confirming each star twice',
    reason: 'The second press repeats the first, slip and all.',
  },
] as const;

export function whatLiftsIt({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const rate = random.integer(35, 75);
  const right = random.shuffle(lifts).slice(0, random.integer(2, 3));
  return several({
    prompt: `${kit.name}’s hit rate is only ${String(rate)} of 100. What would raise it?`,
    right: [...right],
    wrong: random.shuffle(doesNotLift).slice(0, 5 - right.length),
    explanation:
      'Pair, centring, last moves and eyepiece make the hit rate. A small lean does not.',
  });
}
