import { cellVoltage } from '@/lib/power/cell';
import type { BenchCell } from '@/lib/power/power-bench';
import { isHolderClosed, type PowerVariant } from '@/lib/variants/bench/power/power-variant';
import type { Readout } from './power-play';
import { ampsText, cellReads, voltsText } from './power-words';

type MeterState = {
  variant: PowerVariant;
  /** In the learner's hand. */
  heldCell: BenchCell | undefined;
  probes: { red: number | null; black: number | null };
  lastVolts: number | null;
  isPlugged: boolean;
  readout: Readout;
};

/** What the meter is held to, and what it reads there: a cell in the hand, two studs, or the socket. */
export function meterShows(state: MeterState): { at: string; reads: string; also?: string } {
  const { heldCell, probes, readout } = state;
  if (heldCell !== undefined)
    return { at: `across cell ${heldCell.id}`, reads: cellReads(cellVoltage(heldCell)) };
  if (!isHolderClosed(state.variant) || state.isPlugged)
    return {
      at: 'at the socket',
      reads: voltsText(readout.volts),
      also: ampsText(readout.amps),
    };
  if (probes.black === null) return { at: 'black: tap a stud', reads: voltsText(null) };
  if (probes.red === null) return { at: 'red: tap a stud', reads: voltsText(null) };
  return {
    at: `red ${String(probes.red)}, black ${String(probes.black)}`,
    reads: voltsText(state.lastVolts),
  };
}
