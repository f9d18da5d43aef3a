import { wrap180 } from '../units/angle';
import { geometryFullMark, starMark, starMarkWithoutCaution } from '../pointing/pair-mark';
import { isClearCaution } from '../pointing/cautions';
import type { Telescope } from '../pointing/scenario';
import { cautionMissed } from './judge-pick';
import type { PairAdvice, PairFigures, PairStarResult } from './pair-result';

// Where one sentence explains a poor hit rate best. Our own choice, no source: the marks themselves
// come from the hit rate alone.
const closeDeg = 30;
const sameAzimuthDeg = 20;
const oppositeDeg = 150;
/** Less than this lost is not worth a sentence. */
const smallLoss = 1;

/** The one thing that cost most, for a choice on a night that had a pair. */
export function pairAdvice(input: {
  picks: readonly [PairStarResult, PairStarResult];
  /** The star that the task gave, whose choice was not the student's. */
  givenHip: number | null;
  chosen: PairFigures;
  bestHitRate: number;
  geometryEarned: number;
  telescope: Telescope;
}): PairAdvice {
  const { picks, givenHip, chosen, bestHitRate, geometryEarned, telescope } = input;
  const own = picks.filter((pick) => pick.hip !== givenHip);
  for (const { hip, reasons } of [...own, ...picks]) {
    const [reason] = reasons;
    if (reason !== undefined) return { code: 'star-unusable', hip, reason };
  }
  const geometryLost = geometryFullMark - geometryEarned;
  const missed = own.find(cautionMissed);
  const caution = missed?.cautions.find(isClearCaution);
  const cautionLost = starMark - starMarkWithoutCaution;
  if (missed !== undefined && caution !== undefined && geometryLost <= cautionLost) {
    return { code: 'look-alike-missed', hip: missed.hip, caution };
  }
  if (geometryLost < smallLoss) return { code: 'well-chosen' };

  const { separationDeg, hitRate, positions } = chosen;
  if (separationDeg < closeDeg) return { code: 'too-close', separationDeg };
  const azimuthGapDeg = Math.abs(wrap180(positions[0].azimuthDeg - positions[1].azimuthDeg));
  if (telescope.computer === 'solved-zero' && azimuthGapDeg < sameAzimuthDeg) {
    return { code: 'same-azimuth', azimuthGapDeg };
  }
  if (separationDeg > oppositeDeg) return { code: 'nearly-opposite', separationDeg };
  return { code: 'better-pair', hitRate, bestHitRate };
}
