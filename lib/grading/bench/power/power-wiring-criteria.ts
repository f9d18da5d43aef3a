import type { Happening } from '../../../power/act';
import { isFresh, type CellKind } from '../../../power/cell';
import { isReversed, seriesSource } from '../../../power/holder';
import type { PowerBench, PowerSetup } from '../../../power/power-bench';
import { slewingV, terminalsOf } from '../../../power/terminals';
import type { PowerSlip } from './power-result';

export type Wiring = { setup: PowerSetup; bench: PowerBench; happened: readonly Happening[] };

const clamp = (value: number): number => Math.max(0, Math.min(1, value));

const hasHappened = ({ happened }: Wiring, ...codes: Happening['code'][]): boolean =>
  happened.some(({ code }) => codes.includes(code));

/**
 * The order of the design: switch off, hand control, supply, switch on; and no cell moved while the
 * holder is plugged in. Each part counts the same. What was put right counts as right, but for what
 * had power on it when it was done.
 */
export function orderShare(wiring: Wiring): { share: number; slips: PowerSlip[] } {
  const { setup, bench } = wiring;
  const slips: PowerSlip[] = [];
  const judge = (right: boolean, slip: PowerSlip): boolean => {
    if (!right) slips.push(slip);
    return right;
  };
  const quiet = !hasHappened(
    wiring,
    'hand-control-live',
    'hand-control-pulled-live',
    'hand-control-with-switch-on',
  );
  const pulled = hasHappened(wiring, 'hand-control-pulled-live');
  if (hasHappened(wiring, 'hand-control-live')) slips.push({ code: 'hand-control-live' });
  if (pulled) slips.push({ code: 'hand-control-pulled-live' });
  if (hasHappened(wiring, 'hand-control-with-switch-on'))
    slips.push({ code: 'hand-control-with-switch-on' });
  const parts = [
    quiet && bench.handControl,
    judge(bench.supplyWentInAfter === true, { code: 'supply-before-hand-control' }),
    judge(
      bench.switchedOnLast === true,
      hasHappened(wiring, 'supply-with-switch-on')
        ? { code: 'supply-with-switch-on' }
        : { code: 'switch-not-last' },
    ),
  ];
  if (setup.springEnds.length > 0)
    parts.push(
      judge(!hasHappened(wiring, 'cells-moved-while-plugged'), {
        code: 'cells-moved-while-plugged',
      }),
    );
  return { share: parts.filter(Boolean).length / parts.length, slips };
}

/** At the limit the learner gets the benefit: less than a meter's needle would show. */
const deadBandV = 0.1;

/** Whether it runs, and goes on running through a slew: half of it each. */
export function runningShare({ setup, bench }: Wiring): { share: number; slips: PowerSlip[] } {
  const { computer } = terminalsOf(setup, bench);
  const { resetBelowV } = setup.needs;
  if (computer !== 'running' || !bench.handControl)
    return {
      share: 0,
      // What harms has a slip of its own.
      slips:
        computer === 'running' || computer === 'reversed' || computer === 'over-voltage'
          ? []
          : [{ code: 'not-running', computer }],
    };
  const volts = slewingV(setup, bench);
  if (volts !== null && volts >= resetBelowV - deadBandV) return { share: 1, slips: [] };
  return { share: 0.5, slips: [{ code: 'slew-resets', volts: volts ?? 0, resetBelowV }] };
}

/** How many cells of one kind and fresh sit in the holder, at most: 0–1, nothing for half of them. */
export function matchShare({ bench }: Wiring): { share: number; slips: PowerSlip[] } {
  const put = bench.bays.flatMap((bay) => (bay.put ? [bay.put.cell] : []));
  const counts = new Map<CellKind, number>();
  for (const cell of put) {
    if (isFresh(cell)) counts.set(cell.kind, (counts.get(cell.kind) ?? 0) + 1);
  }
  const most = Math.max(0, ...counts.values());
  const kinds = [...new Set(put.map(({ kind }) => kind))];
  const used = put.filter((cell) => !isFresh(cell)).map(({ id }) => id);
  const slips: PowerSlip[] = [];
  if (kinds.length > 1) slips.push({ code: 'kinds-mixed', kinds });
  if (used.length > 0) slips.push({ code: 'used-among-fresh', cells: used });
  return { share: upwardsOfHalf(most, bench), slips };
}

/** How many cells sit the right way round: nothing for half of them, as by chance. */
export function wayRoundShare({ setup, bench }: Wiring): { share: number; slips: PowerSlip[] } {
  const empty = baysWhere(bench, ({ put }) => put === null);
  const reversed = baysWhere(bench, isReversed);
  const slips: PowerSlip[] = [];
  if (reversed.length > 0) {
    const openV = seriesSource(bench.bays, setup.temperatureC)?.openV ?? 0;
    slips.push({ code: 'cells-reversed', bays: reversed, openV });
  }
  if (empty.length > 0) slips.push({ code: 'bays-empty', bays: empty });
  const right = bench.bays.length - empty.length - reversed.length;
  return { share: upwardsOfHalf(right, bench), slips };
}

const upwardsOfHalf = (count: number, { bays }: PowerBench): number =>
  bays.length === 0 ? 0 : clamp((count - bays.length / 2) / (bays.length / 2));

const baysWhere = (
  { bays }: PowerBench,
  holds: (bay: PowerBench['bays'][number]) => boolean,
): number[] => bays.flatMap((bay, i) => (holds(bay) ? [i] : []));

/** How many cells are the wrong way round. */
export const reversedIn = ({ bays }: Pick<PowerBench, 'bays'>): number =>
  bays.filter(isReversed).length;
