import type { PointItem } from '../item';

type Spot = Omit<PointItem['spots'][number], 'id'>;
/** A place with what is there, by which it is asked for. */
export type KnownSpot<Is extends string> = Spot & { is: Is };

/** The place that is asked for, and the others. @throws when none is it. */
export function askedSpot<Is extends string>(
  spots: readonly KnownSpot<Is>[],
  asked: Is,
): { right: Spot; wrong: Spot[] } {
  const written = ({ x, y, where, reason, misconception }: KnownSpot<Is>): Spot => ({
    x,
    y,
    where,
    reason,
    ...(misconception === undefined ? {} : { misconception }),
  });
  const right = spots.find(({ is }) => is === asked);
  if (right === undefined) throw new RangeError(`nothing in the drawing is ${asked}`);
  return {
    right: written(right),
    wrong: spots.filter(({ is }) => is !== asked).map(written),
  };
}
