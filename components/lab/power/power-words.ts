import type { Cell, CellKind } from '@/lib/power/cell';
import type { BayEnd } from '@/lib/power/holder';
import type { PowerPlan } from '@/lib/power/night';
import { holderPlug } from '@/lib/power/power-bench';
import type { Centre, Supply, SupplyForm, SupplyVerdict } from '@/lib/power/supply';
import type { ComputerState } from '@/lib/power/terminals';

/** "−12.0 V"; null is an open circuit. */
export const voltsText = (volts: number | null, digits = 1): string =>
  volts === null ? '– – V' : `${signed(volts, digits)} V`;

const signed = (value: number, digits: number): string => {
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
};

export const ampsText = (amps: number): string => `${amps.toFixed(2)} A`;
export const degreesCText = (celsius: number): string => `${signed(celsius, 0)} °C`;

export const kindNames: Readonly<Record<CellKind, string>> = {
  alkaline: 'alkaline',
  'zinc-carbon': 'zinc-carbon',
  lithium: 'lithium',
  'nickel-metal-hydride': 'rechargeable NiMH',
};

/** As printed on a cell's side: short enough to be read there. */
export const kindPrinted: Readonly<Record<CellKind, string>> = {
  alkaline: 'ALKALINE',
  'zinc-carbon': 'ZINC',
  lithium: 'LITHIUM',
  'nickel-metal-hydride': 'NiMH',
};

/** With two decimals: used cells differ from fresh ones in the second. */
export const cellReads = (volts: number): string => voltsText(volts, 2);

export const ways: Readonly<Record<BayEnd, string>> = {
  top: 'plus end up',
  bottom: 'plus end down',
};
export const springAt = (end: BayEnd): string =>
  end === 'top' ? 'spring at the top' : 'spring at the bottom';

/** Bays are counted from 1 wherever people read. */
export const bayName = (bay: number): string => `bay ${String(bay + 1)}`;
export const baysText = (bays: readonly number[]): string =>
  `${bays.length === 1 ? 'bay' : 'bays'} ${listed(bays.map((bay) => String(bay + 1)))}`;

export const listed = (items: readonly string[]): string =>
  items.length < 2
    ? (items[0] ?? '')
    : `${items.slice(0, -1).join(', ')} and ${items[items.length - 1] ?? ''}`;

export const formNames: Readonly<Record<SupplyForm, string>> = {
  'battery-pack': 'battery pack',
  'usb-pack': 'phone pack',
  'mains-adapter': 'mains adapter',
};
export const centreText = (centre: Centre): string =>
  centre === 'positive' ? 'middle pin +' : 'middle pin −';
export const plugName = (plug: string): string =>
  plug === holderPlug ? 'the holder' : `supply ${plug}`;

/** What stands on its label. */
export const labelText = ({ volts, ratedA, centre, form }: Supply): string =>
  `${formNames[form]}: ${String(volts)} V direct current, ${String(ratedA)} A, ${centreText(centre)}`;

export const verdictNames: Readonly<Record<SupplyVerdict, string>> = {
  fits: 'it serves',
  'wrong-polarity': 'wrong polarity',
  'too-many-volts': 'too many volts',
  'too-few-volts': 'too few volts',
  'too-little-current': 'too little current',
  'mains-outdoors': 'mains: not for students outdoors',
};

export const planNames: Readonly<Record<PowerPlan, string>> = {
  go: 'Go ahead with these cells',
  'spare-set': 'Take a spare set of eight of the same kind',
  'other-supply': 'Use another supply: these cells will not do',
};

/** What the telescope's lamp and motors show. */
export const computerWords: Readonly<Record<ComputerState, string>> = {
  off: 'Switched off',
  'no-power': 'Switched on, but nothing arrives: the lamp is dark',
  'too-few-volts': 'Too few volts: the lamp flickers, nothing starts',
  running: 'Running: the lamp is lit',
  reversed: 'The polarity is reversed: the lamp stays dark',
  'over-voltage': 'Too many volts: the lamp is far too bright',
};

export const cellText = ({ id, kind }: Pick<Cell, 'kind'> & { id: string }): string =>
  `cell ${id}, ${kindNames[kind]}`;

/** A stud of the closed holder, of `last + 1`. */
export const studName = (stud: number, last: number): string =>
  stud === 0 ? '0, minus lead' : stud === last ? `${String(stud)}, plus lead` : String(stud);
