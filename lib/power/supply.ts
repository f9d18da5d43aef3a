/** What the plug's middle pin carries; null where the label does not say. */
export type Centre = 'positive' | 'negative';

export const supplyForms = ['battery-pack', 'usb-pack', 'mains-adapter'] as const;
export type SupplyForm = (typeof supplyForms)[number];

/** A supply by its label: direct current. Its plug fits; that proves nothing. */
export type Supply = {
  /** A letter on a tag. */
  id: string;
  form: SupplyForm;
  volts: number;
  /** The most it is made to give. */
  ratedA: number;
  centre: Centre;
};

/** What stands beside the telescope's socket, and when its computer restarts. */
export type TelescopeNeeds = {
  nominalV: number;
  centre: Centre;
  /** More than this harms it. */
  highestV: number;
  /** With less than this it restarts and forgets the alignment. */
  resetBelowV: number;
  trackingA: number;
  /** At the peak, both motors running. */
  slewingA: number;
};

/** Volts within this of each other count as equal: labels are rounded. */
const equalV = 1;

export const supplyVerdicts = [
  'fits',
  'wrong-polarity',
  'too-many-volts',
  'too-few-volts',
  'too-little-current',
  'mains-outdoors',
] as const;
export type SupplyVerdict = (typeof supplyVerdicts)[number];

/**
 * All that speaks against a supply for a student outdoors: voltage and polarity must be equal, the
 * rated current at least the peak while slewing, and the mains is the teacher's. Empty: it fits.
 */
export function faultsOfSupply(supply: Supply, needs: TelescopeNeeds): SupplyVerdict[] {
  const faults: SupplyVerdict[] = [];
  if (supply.form === 'mains-adapter') faults.push('mains-outdoors');
  if (supply.centre !== needs.centre) faults.push('wrong-polarity');
  if (supply.volts > needs.nominalV + equalV) faults.push('too-many-volts');
  if (supply.volts < needs.nominalV - equalV) faults.push('too-few-volts');
  if (supply.ratedA < needs.slewingA) faults.push('too-little-current');
  return faults;
}

/**
 * Volts of a supply while a current flows, without its sign. Up to its rated current it holds; beyond,
 * it gives no more than its rated power, volts times amperes (our approximation, no source).
 */
export const suppliedV = ({ volts, ratedA }: Supply, currentA: number): number =>
  currentA <= ratedA ? volts : (volts * ratedA) / currentA;
