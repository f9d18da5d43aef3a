import { suppliedV } from '../../power/supply';
import type { ItemDraw } from '../item-family';
import { choice } from '../build-item';
import { pickOne } from '../../variants/pick-one';
import { drawMeter } from '../../drawings/draw-meter';
import { drawNeeds, telescopeNames } from './draw-needs';

/** Predict the amperes, then see the meter: the telescope decides, not the supply. */
export function predictTheCurrent({ random }: ItemDraw) {
  const needs = drawNeeds(random);
  const ratedA = pickOne(random, [2, 2.5, 3, 5, 8, 10]);
  const slews = random.next() < 0.5;
  const takes = slews ? needs.slewingA : needs.trackingA;
  const other = slews ? needs.trackingA : needs.slewingA;
  const supply = {
    id: 'P',
    form: 'battery-pack',
    volts: 12,
    ratedA,
    centre: needs.centre,
  } as const;
  const volts = suppliedV(supply, takes);
  return choice({
    prompt: `${pickOne(random, telescopeNames)} takes ${String(needs.trackingA)} A while it tracks and ${String(needs.slewingA)} A while it slews. It runs on a pack of 12 V and ${String(ratedA)} A. Predict: how much current flows while it ${slews ? 'slews' : 'tracks'}?`,
    explanation: `The telescope takes what it needs: ${String(takes)} A. The ${String(ratedA)} A on the label are the most that the pack could give.`,
    afterwards: drawMeter({
      amperes: takes,
      volts,
      title: slews ? 'While slewing' : 'While tracking',
    }),
    right: {
      text: `${String(takes)} A`,
      reason: `That is what it takes while it ${slews ? 'slews' : 'tracks'}, whatever more the pack could give.`,
    },
    wrong: [
      {
        text: `${String(ratedA)} A`,
        reason: 'That is the most the pack could give. It does not push it into the telescope.',
        misconception: 'rated-current-is-pushed',
      },
      {
        text: `${String(other)} A`,
        reason: `That is what it takes while it ${slews ? 'tracks' : 'slews'}.`,
      },
      {
        text: `${String(Math.round(100 * (needs.trackingA + needs.slewingA)) / 100)} A`,
        reason: 'That adds the two. While it slews, its slewing current is all that it takes.',
      },
    ],
  });
}
