import { nightAhead, type NightAhead, type PowerNight } from '../../power/night';
import type { CellKind } from '../../power/cell';
import type { Random } from '../../variants/random';
import { pickOne } from '../../variants/pick-one';

/** What is compared keeps this clear of its limit, so that no rounding decides. */
const clearV = 0.5;
const clearShare = 0.2;
const tries = 200;

const kinds = ['alkaline', 'lithium', 'nickel-metal-hydride'] as const;

type DrawnNight = PowerNight & { ahead: NightAhead };

/** An evening on eight fresh cells, its numbers round and its outcome no close call. */
export function drawNight(
  random: Random,
  wanted: (night: DrawnNight) => boolean = () => true,
): DrawnNight {
  for (let attempt = 0; attempt < tries; attempt++) {
    const night: PowerNight = {
      kind: pickOne<CellKind>(random, kinds),
      slewingShare: pickOne(random, [0.1, 0.2]),
      temperatureC: random.integer(-10, 15),
      hours: random.integer(4, 12) / 2,
      needs: {
        nominalV: 12,
        centre: 'positive',
        highestV: 14,
        resetBelowV: 7.2,
        trackingA: pickOne(random, [0.15, 0.2, 0.25, 0.3]),
        slewingA: random.integer(10, 18) / 10,
      },
    };
    const drawn = { ...night, ahead: nightAhead(night) };
    const { slewingV, runTimeHours } = drawn.ahead;
    const clear =
      Math.abs(slewingV - night.needs.resetBelowV) >= clearV &&
      Math.abs(runTimeHours / night.hours - 1) >= clearShare;
    if (clear && wanted(drawn)) return drawn;
  }
  throw new Error('no such evening was drawn');
}
