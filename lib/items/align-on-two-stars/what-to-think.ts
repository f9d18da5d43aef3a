import { match, several } from '../build-item';
import type { ItemDraw } from '../item-family';
import { someKit } from './kit-fields';
import { arcmin, deg, figures } from './words';
import { pickOne } from '../../variants/pick-one';

const messages = [
  {
    left: (n: number) => `These two agree to ${arcmin(n)}`,
    right: 'The angle is right. Now check on a third',
    reason: 'That is what an honest pair says. The third star is still to come.',
  },
  {
    left: (n: number) => `These two disagree by ${deg(n / 1.7)}`,
    right: 'The tube swung too far or not far enough',
    reason: 'A wrong star, or something slipped between the two.',
  },
  {
    left: () => 'The base would lie on its side',
    right: 'Each star went by the other one’s name',
    reason: 'The angle is the same either way round; the base is not.',
  },
  {
    left: () => 'These two leave it open how the mount stands',
    right: 'Take another pair, in another direction',
    reason: 'Too close, right opposite or one above the other: two such stars settle too little.',
  },
  {
    left: () => 'These two do not fit together',
    right: 'Only an impossible zero would fit them',
    reason: 'No tube lay so far off level: probably one was a wrong star.',
  },
] as const;

export function whatToThink({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const told = random.shuffle(messages).slice(0, 4);
  const n = random.integer(2, 9);
  const when = pickOne(random, [
    'After the second star',
    'At the end of the run',
    'On four evenings',
  ]);
  return match({
    prompt: `${when} the hand control of a telescope such as ${kit.name} can say different things. What does each one mean?`,
    pairs: told.map(({ left, right, reason }) => ({ left: left(n), right, reason })),
    explanation:
      'The mount compares an angle, a zero and a lean with what it was told. It cannot see the sky.',
  });
}

const trueOfIt = [
  {
    text: 'Both figures are what careful hands leave',
    reason: 'Half a degree or so is what eye and bubble come to.',
  },
  {
    text: 'A third star is still worth a look',
    reason: 'Two stars fit nearly always once the zero is left open.',
  },
  {
    text: 'The mount now allows for both of them',
    reason: 'Lean and zero are part of what it worked out.',
  },
  {
    text: 'The stars need not have been centred perfectly',
    reason: 'A slip of some arcminutes changes the zero and the lean a little, and still fits.',
  },
] as const;
const untrueOfIt = [
  {
    text: 'The base must be levelled before you go on',
    reason: 'Two stars absorb a small lean. Moving the legs now would spoil the alignment.',
    misconception: 'tilt-spoils-alignment',
  },
  {
    text: 'It is proved that both stars were right',
    reason: 'A wrong star can fit too, with another zero and another lean.',
    misconception: 'agreement-proves-all',
  },
  {
    text: 'Every target will be in the eyepiece',
    reason: 'How many will be is the hit rate, and it hangs on the pair and on your centring.',
    misconception: 'agreement-proves-all',
  },
  {
    text: 'The tube must be laid level once more',
    reason: 'It was needed at the start only. Its error is known and allowed for.',
  },
] as const;

export function whatIsSo({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const zero = random.integer(2, 7) / 10;
  const lean = random.integer(1, 6) / 10;
  const right = random.shuffle(trueOfIt).slice(0, random.integer(2, 3));
  return several({
    prompt: `${kit.name} says: “These two agree to 1′ or better. The tube stood ${figures(zero)}° off level at the start. The base stands ${figures(lean)}° off level.” What is so?`,
    right: [...right],
    wrong: random.shuffle(untrueOfIt).slice(0, 5 - right.length),
    explanation:
      'Believable figures are a good sign, and no proof. The lean and the zero are found and allowed for.',
  });
}
