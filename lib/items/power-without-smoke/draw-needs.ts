import type { Centre, TelescopeNeeds } from '../../power/supply';
import type { Random } from '../../variants/random';
import { pickOne } from '../../variants/pick-one';

/** The plate of a telescope: 12 V, as all three of the school's are; what it takes differs. */
export function drawNeeds(random: Random): TelescopeNeeds {
  return {
    nominalV: 12,
    centre: pickOne<Centre>(random, ['positive', 'negative']),
    highestV: 14,
    resetBelowV: 7.2,
    trackingA: pickOne(random, [0.15, 0.2, 0.25, 0.3]),
    slewingA: random.integer(10, 16) / 10,
  };
}

export const telescopeNames = ['Wren', 'Heron', 'Owl'] as const;
