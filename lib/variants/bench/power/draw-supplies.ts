import type { Supply, TelescopeNeeds } from '../../../power/supply';
import type { Random } from '../../random';

const tags = Array.from('PQRSTU');

/**
 * Six supplies whose plugs all fit: one that serves, and five with exactly one thing against each.
 * Every number that must be compared keeps clear of its limit.
 */
export function drawSupplies(needs: TelescopeNeeds, random: Random): Supply[] {
  const { nominalV, centre, slewingA } = needs;
  const enough = () => random.pick([2, 2.5, 3, 5]) ?? 2;
  const right: Omit<Supply, 'id'> = {
    form: 'battery-pack',
    volts: nominalV,
    ratedA: enough(),
    centre,
  };
  const others: Omit<Supply, 'id'>[] = [
    { ...right, ratedA: enough(), centre: centre === 'positive' ? 'negative' : 'positive' },
    { ...right, ratedA: enough(), volts: random.pick([18, 19, 24]) ?? 24 },
    random.next() < 0.5
      ? { ...right, ratedA: enough(), form: 'usb-pack', volts: 5 }
      : { ...right, ratedA: enough(), volts: random.pick([6, 9]) ?? 9 },
    { ...right, ratedA: random.pick([0.3, 0.5, 0.8]) ?? 0.5 },
    { ...right, ratedA: Math.max(2, Math.ceil(slewingA)), form: 'mains-adapter' },
  ];
  return random.shuffle([right, ...others]).map((supply, i) => ({ ...supply, id: tags[i] ?? '' }));
}
