import type { FaultId } from '../../faults/fault-ids';
import type { ItemDraw } from '../item-family';
import { someEvening, waysOf, type Signature } from './some-evening';

/** Off by less than this is what hands leave, and by more than that is a fault; degrees. */
const little = { firstDeg: 1.6, laterDeg: 0.35 };
const much = { firstDeg: 4, laterDeg: 0.9 };

export type When = 'before' | 'between' | 'after';

/** When something went wrong, by what it shows; null where that leaves it open. */
export function whenOf({ firstDeg, secondDeg, agreed, laterDeg, shown }: Signature): When | null {
  if (firstDeg > much.firstDeg)
    return laterDeg === null || laterDeg.most < little.laterDeg ? 'before' : null;
  if (firstDeg > little.firstDeg) return null;
  if (!agreed && secondDeg > 1.9) return 'between';
  const { outcome } = shown.evidence;
  const honest =
    outcome.kind === 'agree' &&
    Math.abs(outcome.model.altitudeZeroDeg) < 0.8 &&
    outcome.baseTiltDeg < 0.8;
  if (honest && secondDeg < little.firstDeg && laterDeg !== null && laterDeg.most > much.laterDeg)
    return 'after';
  return null;
}

const byWhen: Readonly<Record<When, readonly FaultId[]>> = {
  before: ['summer-time', 'time-zone', 'date', 'longitude-sign', 'latitude', 'compass-north'],
  between: ['tripod-bumped', 'clutch-unlocked', 'cable-snag', 'tube-slips'],
  after: ['tripod-bumped', 'clutch-unlocked', 'cable-snag', 'tube-slips'],
};

/** An evening that went wrong at that time, and shows it. */
export function eveningOf(draw: ItemDraw, when: When) {
  const { random } = draw;
  for (;;) {
    const some = someEvening(draw);
    const told = byWhen[when].flatMap((fault) =>
      waysOf(fault, some)
        .filter(({ signature }) => whenOf(signature) === when)
        .map(({ signature }) => ({ ...some, fault, signature })),
    );
    const picked = random.pick(told);
    if (picked !== undefined) return picked;
  }
}

/** Whether a two-star alignment takes it out; null where it is neither this nor that. */
export function absorbed({ agreed, laterDeg }: Signature): boolean | null {
  if (!agreed || laterDeg === null) return false;
  if (laterDeg.most < little.laterDeg) return true;
  return laterDeg.most > much.laterDeg ? false : null;
}
