import type { FaultId } from '../../faults/fault-ids';
import { angleText } from '../align-on-two-stars/words';
import { several } from '../build-item';
import type { ItemDraw } from '../item-family';
import { happened } from './fault-phrases';
import { someEvening, waysOf, type Way } from './some-evening';
import { absorbed } from './when-signs';

/** Each is taken out or not whatever its size; those that can come at any time, after the second star. */
const sortable: readonly FaultId[] = [
  'compass-north',
  'base-not-level',
  'tube-not-level-at-start',
  'wrong-star',
  'swapped-stars',
];
const lateOnes: readonly FaultId[] = [
  'tripod-bumped',
  'clutch-unlocked',
  'cable-snag',
  'tube-slips',
  'supply-reset',
];
const happensLate = ({ way }: Way): boolean =>
  way.setup.disturbances.length > 0 &&
  way.setup.disturbances.every(({ afterConfirm }) => afterConfirm === 2);

export function whatIsAbsorbed(draw: ItemDraw) {
  const { random } = draw;
  for (;;) {
    const some = someEvening(draw);
    const told = random.shuffle([...sortable, ...lateOnes]).flatMap((fault) => {
      const late = lateOnes.includes(fault);
      const ways = waysOf(fault, some).filter((one) => !late || happensLate(one));
      const [way] = random.shuffle(ways);
      if (way === undefined) return [];
      const { signature } = way;
      const takenOut = absorbed(signature);
      if (takenOut === null) return [];
      const { laterDeg } = signature;
      return [
        {
          takenOut,
          text: late ? `${happened[fault]}, after the second star` : happened[fault],
          reason: takenOut
            ? `Afterwards go-tos end within ${angleText(60 * (laterDeg?.most ?? 0))}: the two stars took it out.`
            : laterDeg === null
              ? 'There was no alignment: the two stars did not go together.'
              : `Afterwards a go-to is ${angleText(60 * laterDeg.most)} off.`,
        },
      ];
    });
    const right = told.filter(({ takenOut }) => takenOut).slice(0, 2);
    const wrong = told.filter(({ takenOut }) => !takenOut).slice(0, 3);
    if (right.length === 0 || wrong.length < 2) continue;
    const plain = ({ text, reason }: (typeof told)[number]) => ({ text, reason });
    return several({
      prompt: `On an evening ${some.place} ${some.kit.name} is aligned on ${some.evening.first.name} and ${some.evening.second.name}. Which of these would the two stars take out, so that go-tos are good afterwards?`,
      right: right.map(plain),
      wrong: wrong.map((one) => ({
        ...plain(one),
        ...(one.text.startsWith(happened['tripod-bumped'])
          ? { misconception: 'level-afterwards' as const }
          : {}),
      })),
      explanation:
        'What was wrong from the start, and stays as it is, the two stars take out: a lean, a wrong north, a wrong level. What happens between or after them, or in naming them, they cannot.',
    });
  }
}
