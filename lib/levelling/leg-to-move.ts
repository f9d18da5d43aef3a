import { degreesToRadians } from '../units/angle';
import { tiltOf, type Slope } from './head-slope';
import { legIndices, type LegIndex, type TripodSite, type TripodState } from './tripod';

/** How level one leg alone can bring the head, and at what length. */
export type LegReach = { leg: LegIndex; toMm: number; tiltDeg: number };

/** What a millimetre of a leg adds to the slope: 2 cos β / 3r towards the leg, for feet 120° apart. */
function slopePerMm(site: TripodSite, leg: LegIndex): Slope {
  const size = (2 * Math.cos(degreesToRadians(site.splayDeg))) / (3 * site.footCircleRadiusMm);
  const azimuth = degreesToRadians(site.legs[leg].azimuthDeg);
  return { east: size * Math.sin(azimuth), north: size * Math.cos(azimuth) };
}

/**
 * What each leg alone could do about a slope, within its range and in whole millimetres; the most
 * helpful first. The leg nearest to the bubble's own line comes out best: the rest that it leaves is the
 * part of the slope across it.
 */
export function legReaches(site: TripodSite, state: TripodState, slope: Slope): LegReach[] {
  return legIndices
    .map((leg): LegReach => {
      const per = slopePerMm(site, leg);
      const { lengthMm } = state.legs[leg];
      const wanted =
        -(slope.east * per.east + slope.north * per.north) / (per.east ** 2 + per.north ** 2);
      const toMm = Math.round(Math.min(site.legMaxMm, Math.max(site.legMinMm, lengthMm + wanted)));
      const by = toMm - lengthMm;
      const { tiltDeg } = tiltOf({
        east: slope.east + by * per.east,
        north: slope.north + by * per.north,
      });
      return { leg, toMm, tiltDeg };
    })
    .sort((a, b) => a.tiltDeg - b.tiltDeg);
}
