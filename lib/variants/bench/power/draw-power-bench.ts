import { otherEnd, type BayEnd } from '../../../power/holder';
import type { BenchCell, PowerSetup } from '../../../power/power-bench';
import type { TelescopeNeeds } from '../../../power/supply';
import type { Random } from '../../random';
import type { PowerVariant } from './power-variant';

/** What stands beside the socket and in the telescope's papers. */
export function drawNeeds(random: Random): TelescopeNeeds {
  return {
    nominalV: 12,
    centre: 'positive',
    highestV: 14,
    // 0.9 V a cell, where the tests of the cells' standard end.
    resetBelowV: 7.2,
    trackingA: random.integer(15, 30) / 100,
    slewingA: random.integer(11, 15) / 10,
  };
}

/** A mild evening with nothing plugged in, changed by what the template needs. */
export function drawBench(
  random: Random,
  over: Partial<PowerSetup>,
): Pick<PowerVariant, 'setup' | 'night'> {
  const setup: PowerSetup = {
    needs: drawNeeds(random),
    temperatureC: random.integer(8, 18),
    springEnds: drawSprings(random),
    cells: [],
    supplies: [],
    start: { bays: [], plugged: null, handControl: false, on: false },
    ...over,
  };
  return { setup, night: null };
}

/** Holders are moulded in several ways: the springs tell, not the neighbour. t is top, b bottom. */
const patterns = ['tbtbtbtb', 'ttbbttbb', 'tbbttbbt', 'ttttbbbb', 'tbtbbtbt'];

export function drawSprings(random: Random): BayEnd[] {
  const mirrored = random.next() < 0.5;
  return Array.from(random.pick(patterns) ?? '', (letter) => {
    const end = letter === 't' ? 'top' : 'bottom';
    return mirrored ? otherEnd(end) : end;
  });
}

/** No I and O, which look like figures. */
const tags = Array.from('ABCDEFGHJKLMNP');

/** The same cells with letters on their tags, in any order. */
export function tagged(random: Random, cells: readonly Omit<BenchCell, 'id'>[]): BenchCell[] {
  const letters = random.shuffle(tags.slice(0, cells.length));
  return cells.map((cell, i) => ({ ...cell, id: letters[i] ?? '' }));
}

export const inOrderOfTags = (cells: readonly BenchCell[]): BenchCell[] =>
  [...cells].sort((one, other) => (one.id < other.id ? -1 : 1));
