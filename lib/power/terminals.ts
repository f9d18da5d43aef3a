import { seriesSource, underLoadV } from './holder';
import { holderPlug, type PowerBench, type PowerSetup } from './power-bench';
import { suppliedV } from './supply';

/** What the telescope's computer does with what its socket gets. */
export const computerStates = [
  'off',
  'no-power',
  'too-few-volts',
  'running',
  'reversed',
  'over-voltage',
] as const;
export type ComputerState = (typeof computerStates)[number];

/** Volts at the plug: positive where the telescope's socket wants positive. Null: an open circuit. */
export type Terminals = { volts: number | null; currentA: number; computer: ComputerState };

/** Less than this is nothing: four cells against four, a meter's last digit. */
const nothingV = 0.5;

/**
 * Volts of a plug, the holder's or a supply's, while a current flows through it. Null while the holder
 * has an empty bay, or for a plug that is not on the bench.
 */
export function plugVolts(
  { needs, temperatureC, supplies }: PowerSetup,
  { bays }: Pick<PowerBench, 'bays'>,
  plug: string,
  currentA: number,
): number | null {
  if (plug === holderPlug) {
    const source = bays.length === 0 ? null : seriesSource(bays, temperatureC);
    return source && underLoadV(source, currentA);
  }
  const supply = supplies.find(({ id }) => id === plug);
  if (supply === undefined) return null;
  return suppliedV(supply, currentA) * (supply.centre === needs.centre ? 1 : -1);
}

/**
 * The telescope's terminals: at rest with the switch off, else under its load while tracking. A
 * computer that does not run is taken to draw nothing.
 */
export function terminalsOf(setup: PowerSetup, bench: PowerBench): Terminals {
  const { needs } = setup;
  const open = bench.plugged === null ? null : plugVolts(setup, bench, bench.plugged, 0);
  const idle = (computer: ComputerState): Terminals => ({ volts: open, currentA: 0, computer });
  if (!bench.on) return idle('off');
  if (bench.plugged === null || open === null || Math.abs(open) < nothingV) return idle('no-power');
  if (open < 0) return idle('reversed');
  if (open > needs.highestV) return idle('over-voltage');
  const volts = plugVolts(setup, bench, bench.plugged, needs.trackingA);
  if (volts === null || volts < needs.resetBelowV) return idle('too-few-volts');
  return { volts, currentA: needs.trackingA, computer: 'running' };
}

/**
 * Whether the power is on as far as a hand can tell: then no plug of the hand control goes in or out.
 * That a bay happens to be empty is luck, and no rule to work by.
 */
export const isPowerOn = ({ on, plugged }: Pick<PowerBench, 'on' | 'plugged'>): boolean =>
  on && plugged !== null;

/** Volts at the terminals at the peak of a slew; null unless the computer runs. */
export function slewingV(setup: PowerSetup, bench: PowerBench): number | null {
  if (bench.plugged === null || terminalsOf(setup, bench).computer !== 'running') return null;
  return plugVolts(setup, bench, bench.plugged, setup.needs.slewingA);
}
