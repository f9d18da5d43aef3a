import type { ItemKit, ItemWorld } from '../item-family';
import type { Random } from '../../variants/random';
import type { DrawnTube } from '../../drawings/tube-drawing';

/** A telescope of the school as its light sees it. */
export const tubeOf = ({
  name,
  tubeType,
  focalLengthMm,
  apertureMm,
  tube,
}: ItemKit): DrawnTube => ({
  name,
  tubeType,
  focalLengthMm,
  apertureMm,
  lengthMm: tube.lengthMm,
  diameterMm: tube.diameterMm,
});

/** One of the telescopes. @throws where the school has none. */
export function someTube({ random, world }: { random: Random; world: ItemWorld }): DrawnTube {
  const kit = random.pick(world.kits);
  if (kit === undefined) throw new RangeError('questions about telescopes need a telescope');
  return tubeOf(kit);
}
