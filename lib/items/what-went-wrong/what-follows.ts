import type { FaultId } from '../../faults/fault-ids';
import { angleText } from '../align-on-two-stars/words';
import { pickOne } from '../../variants/pick-one';
import { choice } from '../build-item';
import type { ItemDraw } from '../item-family';
import { eveningStrip } from './evening-strip';
import { happened } from './fault-phrases';
import { someEvening, waysOf } from './some-evening';
import { absorbed, eveningOf } from './when-signs';

/** What the two stars make of a fault from the start does not hang on its size for these. */
const fromTheStart: readonly FaultId[] = [
  'compass-north',
  'base-not-level',
  'tube-not-level-at-start',
  'summer-time',
];

/** An evening with a fault from the start that is either taken out or refused. */
function fromStart(draw: ItemDraw) {
  const { random } = draw;
  for (;;) {
    const some = someEvening(draw);
    const fault = pickOne(random, fromTheStart);
    const told = waysOf(fault, some).filter(({ signature }) =>
      fault === 'summer-time' ? !signature.agreed : absorbed(signature) === true,
    );
    const picked = random.pick(told);
    if (picked !== undefined) return { ...some, fault, signature: picked.signature };
  }
}

export function whatFollows(draw: ItemDraw) {
  const { random } = draw;
  const late = random.next() < 0.45;
  const { signature, kit, fault, evening, place } = late
    ? eveningOf(draw, 'after')
    : fromStart(draw);
  const most = signature.laterDeg?.most ?? null;
  const names = `${evening.first.name} and ${evening.second.name}`;
  const key = most === null ? 'none' : late ? 'bad' : 'good';
  const size = late ? (most ?? 0) : Math.max(1.5, signature.firstDeg);
  const answers = {
    good: {
      text: 'They end near the middle: it is taken out',
      reason:
        key === 'good'
          ? `They end within ${angleText(60 * (most ?? 0))}.`
          : most === null
            ? 'The two stars did not go together at all.'
            : `A go-to is ${angleText(60 * most)} off.`,
    },
    bad: {
      text: `They miss, one of them by about ${angleText(60 * size)}`,
      reason:
        key === 'bad'
          ? 'What moves after the second star nobody takes out.'
          : 'So far the first slew was off. The two stars take it out, or are refused.',
    },
    none: {
      text: `There are none: ${names} are refused`,
      reason:
        key === 'none'
          ? 'They fit only with a base that leans by many degrees. No mount believes that.'
          : 'The two stars agreed: nothing spoke against them.',
    },
  };
  const others = (['good', 'bad', 'none'] as const).filter((one) => one !== key);
  return choice({
    prompt: `${kit.name}, ${place}, is aligned on ${names}. ${late ? 'After the second star' : 'From the start'}, this: ${happened[fault].toLowerCase()}. What will the go-tos do after the second star?`,
    right: answers[key],
    wrong: others.map((one) => answers[one]),
    explanation:
      'Ask when it happened. A lean, a wrong north or level from the start: two stars take it out. An hour of the clock: they would need a leaning base, and are refused. Afterwards: nothing takes it out.',
    afterwards: eveningStrip(signature),
  });
}
