import type { Centre, Supply, SupplyForm, TelescopeNeeds } from '../power/supply';

export const formNames: Readonly<Record<SupplyForm, string>> = {
  'battery-pack': 'battery pack',
  'usb-pack': 'phone pack',
  'mains-adapter': 'mains adapter',
};

export const centreSign = (centre: Centre): '+' | '−' => (centre === 'positive' ? '+' : '−');
export const centreWord = (centre: Centre): string => (centre === 'positive' ? 'plus' : 'minus');
export const otherCentre = (centre: Centre): Centre =>
  centre === 'positive' ? 'negative' : 'positive';

/** "battery pack, 12 V, 2 A, middle pin +" */
export const labelText = ({ form, volts, ratedA, centre }: Omit<Supply, 'id'>): string =>
  `${formNames[form]}, ${String(volts)} V, ${String(ratedA)} A, middle pin ${centreSign(centre)}`;

/** What stands beside the telescope's socket, in a sentence's middle. */
export const plateText = ({ nominalV, slewingA, centre }: TelescopeNeeds): string =>
  `${String(nominalV)} V direct current, up to ${String(slewingA)} A, middle pin ${centreSign(centre)}`;

/** "−12.0 V" */
export const voltsText = (volts: number, digits = 1): string =>
  `${volts
    .toFixed(digits)
    .replace(/^-(?=0\.?0*$)/, '')
    .replace('-', '−')} V`;

export const degreesText = (celsius: number): string => `${String(celsius).replace('-', '−')} °C`;
