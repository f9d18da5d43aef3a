import { bestClampMm, canHold, edgeMm } from '../../../balance/answers';
import { balanceShiftMm } from '../../../balance/centre-of-mass';
import { creepFrom } from '../../../balance/creep';
import { tubeInClamp, wholeTube } from '../../../balance/tube-in-clamp';
import type { Moves } from '../../../balance/tube-bench';
import type { BalanceVariant } from '../../../variants/bench/balance/balance-variant';

/** What the tube does in the case that is asked about before anything is touched. */
export function movesAskedAbout(variant: BalanceVariant): Moves {
  const { template, needed, start, range, holdingTorqueNm } = variant;
  // Where the bar is too short, the question is about the tube slid as far as helps.
  const clampMm = template === 'short-bar' ? bestClampMm(variant, needed) : start.clampMm;
  const altitudeDeg = template === 'raised' ? range.highDeg : 0;
  return creepFrom(tubeInClamp(variant, { on: needed, clampMm }), altitudeDeg, holdingTorqueNm)
    .moves;
}

/** The balance point that is asked for, and the figures that known mistakes give. */
export function readingAskedFor(variant: BalanceVariant): {
  trueMm: number;
  edgesMm: readonly number[];
  wrongWayMm: number | null;
  massLeftOutMm: number | null;
  edgeMm: number;
} {
  const { needed, start, parts, holdingTorqueNm } = variant;
  const tube = wholeTube(variant, needed);
  const trueMm = tube.alongMm;
  const edge = edgeMm(tube, holdingTorqueNm);
  const joins = parts.find(({ id }) => needed.includes(id) && !start.on.includes(id));
  if (joins === undefined)
    return {
      trueMm,
      edgeMm: edge,
      wrongWayMm: null,
      massLeftOutMm: null,
      edgesMm: [trueMm - edge, trueMm + edge],
    };
  const before = wholeTube(variant, start.on);
  return {
    trueMm,
    edgeMm: edge,
    edgesMm: [],
    wrongWayMm: before.alongMm - balanceShiftMm(before, joins),
    // Divided by the tube's mass alone, as if what is put on weighed nothing itself.
    massLeftOutMm:
      before.alongMm + (joins.massKg * (joins.alongMm - before.alongMm)) / before.massKg,
  };
}

/** The parts that somebody who makes no mistake has on the tube in the end. */
export function partsThatHold(variant: BalanceVariant): readonly string[] {
  const { needed, parts } = variant;
  const choices = [
    needed,
    ...parts.filter(({ slot }) => slot === 'weight').map(({ id }) => [...needed, id]),
  ];
  return choices.find((on) => canHold(variant, on)) ?? needed;
}
