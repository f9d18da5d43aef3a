import type { SkyFrame } from '../sky/sky-frame';
import { siderealDegPerSecond, turnedFrame } from '../sky/turned-frame';
import { aboutX, multiply, type Matrix3 } from '../units/matrix';

/** What was told wrongly to the computer: what it believes less what is true. */
export type ClockAndPlaceSlip = {
  /** Seconds by which the instant it makes of clock, date, zone and summer time is late. */
  clockSeconds: number;
  latitudeDeg: number;
  /** East is positive. */
  longitudeDeg: number;
};

/**
 * The sky that a computer believes in which was told clock and place wrongly, from the true one and
 * without an ephemeris: a later clock and a more easterly place turn the stars about the pole alike
 * (15.041° an hour), a more northerly place tips them about the line from east to west. For the stars,
 * which are all that it is sent to: within 1″ for a clock that is hours wrong, within 25″ for a date
 * that is months wrong (what aberration and precession change meanwhile). Where Sun, Moon and planets
 * stand in it is not worked out anew but for the turn of the clock. `latitudeDeg` is the true one.
 */
export function believedFrame(
  frame: SkyFrame,
  latitudeDeg: number,
  slip: ClockAndPlaceSlip,
): SkyFrame {
  const later = turnedFrame(frame, latitudeDeg, slip.clockSeconds);
  const turned = turnedFrame(later, latitudeDeg, slip.longitudeDeg / siderealDegPerSecond);
  if (turned === frame && slip.latitudeDeg === 0) return frame;
  return {
    ...later,
    // By the right-hand rule north goes up: the pole stands higher farther north.
    icrsToLocal: multiply(aboutX(slip.latitudeDeg), rows(turned.icrsToLocal)),
  };
}

function rows(matrix: readonly number[]): Matrix3 {
  const [a = NaN, b = NaN, c = NaN, d = NaN, e = NaN, f = NaN, g = NaN, h = NaN, i = NaN] = matrix;
  return [a, b, c, d, e, f, g, h, i];
}
