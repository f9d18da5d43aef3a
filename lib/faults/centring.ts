import type { AxesAt } from '../alignment/motion';
import type { MountTruth } from '../pointing/achieved-errors';
import { readingsOf } from '../pointing/mount';
import { transform } from '../units/matrix';
import type { Vector3 } from '../units/vector';
import type { Evening } from './faulty-evening';
import { directionBeside } from './where-it-lands';

/**
 * Where the axes stand when the light that is taken for a star is confirmed: it was left a little
 * beside the middle, perhaps put under the dot only, and perhaps approached from the side on which
 * the play is not taken up, so that the tube hangs behind the reading.
 *
 * @throws {Error} where the tube cannot be turned to: within a cone error or so of the mount's pole.
 */
export function axesOnLight(
  { habits, setup }: Pick<Evening, 'habits' | 'setup'>,
  index: 0 | 1,
  { base, errors }: MountTruth,
  light: Vector3,
): AxesAt {
  const left = habits.centring[index];
  const aside = habits.centresBy === 'dot' ? setup.dot : { rightArcmin: 0, upArcmin: 0 };
  // What stands to the right of the tube has the tube to its left. (Between the two, at most a degree
  // apart, the vertical turns by less than any centring.)
  const tube = directionBeside(light, {
    rightArcmin: -left.rightArcmin - aside.rightArcmin,
    upArcmin: -left.upArcmin - aside.upArcmin,
  });
  const load = readingsOf(transform(base, tube), errors);
  if (load === null) throw new Error('the star stands where the tube cannot be turned to');

  const move = habits.lastMoves[index];
  const { backlashArcmin: play, finalApproach } = setup;
  const lagDeg = (axis: 'azimuth' | 'altitude'): number =>
    move[axis] === finalApproach[axis] ? 0 : (finalApproach[axis] * play[axis]) / 60;
  const lag = { azimuthDeg: lagDeg('azimuth'), altitudeDeg: lagDeg('altitude') };
  return {
    azimuthDeg: load.azimuthDeg - lag.azimuthDeg,
    altitudeDeg: load.altitudeDeg - lag.altitudeDeg,
    lag,
  };
}
