import { order } from '../build-item';
import type { ItemDraw } from '../item-family';
import { someKit } from './kit-fields';
import { figures } from './words';
import { pickOne } from '../../variants/pick-one';

/** Common practice, no source. */
const afterAMiss = [
  {
    text: 'See in the finder how far off the slew has ended, and which way',
    because: 'the size and the direction are clues: without them there is nothing to think about.',
  },
  {
    text: 'Ask what could be wrong: a star’s name, a clutch, a kicked leg',
    because: 'what is not put right would spoil the next alignment as well.',
  },
  {
    text: 'Put right what you found',
    because: 'only a mount that is in order is worth aligning.',
  },
  {
    text: 'Align afresh on two stars',
    because: 'there must be a new alignment before it can be checked.',
  },
  { text: 'Check on a third star once more', because: 'done.' },
] as const;

export function afterTheMiss({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const off = figures(random.between(1.5, 6));
  const where = pickOne(random, ['south', 'east', 'west', 'north-east', 'south-west']);
  return order({
    prompt: `${kit.name} misses a third star in the ${where} by ${off}°. Put in order what you do.`,
    steps: afterAMiss.map(({ text }) => text),
    rules: afterAMiss.slice(1).map((_, index) => ({
      first: index,
      then: index + 1,
      reason: afterAMiss[index]?.because ?? '',
    })),
    explanation: 'Look, think, mend, align, check. Who aligns again at once repeats the fault.',
  });
}
