import { startErrorDeg, trueBearingDeg } from '@/lib/clock/needle';
import type { NeedlePlace } from './needle-places';

const side = (deg: number): string => (deg < 0 ? 'west' : 'east');

/** Where needle and tube point, for the figure's status line and its label. */
export function needleWords(place: NeedlePlace, bearingDeg: number): string {
  const { name, declinationDeg } = place;
  const azimuth = Math.round(trueBearingDeg(bearingDeg, declinationDeg)) % 360;
  const off = startErrorDeg(bearingDeg, declinationDeg);
  const tube =
    Math.abs(off) < 0.75
      ? 'that is true north'
      : `${String(Math.round(Math.abs(off)))}° ${side(off)} of true north`;
  return `In ${name} the needle points ${String(Math.round(Math.abs(declinationDeg)))}° ${side(declinationDeg)} of true north. The tube lies at ${String(bearingDeg)}° by the compass: its azimuth is ${String(azimuth)}°, ${tube}.`;
}
