import { tilt, truthAtStart } from '../../alignment/start-position';
import { landingBeside } from '../../faults/where-it-lands';
import type { MountTruth } from '../../pointing/achieved-errors';
import { mountDirection } from '../../pointing/mount';
import { turnedDirection } from '../../sky/turned-frame';
import { transform, transpose } from '../../units/matrix';
import { azAltFromDirection } from '../../units/vector';
import { toward } from '../align-on-two-stars/aligning';
import type { ChartPlace } from '../align-on-two-stars/sky-chart';
import { deg } from '../align-on-two-stars/words';
import { windOf } from '../../wording/compass-points';

/** What can make a first slew miss, on an otherwise perfect mount. Degrees and hours. */
export type Suspect =
  | { kind: 'lean'; tiltDeg: number; risesTowardsDeg: number }
  | { kind: 'zero'; highDeg: number }
  | { kind: 'north'; rightDeg: number }
  /** The clock is so many hours fast, at this latitude. */
  | { kind: 'clock'; fastHours: number; latitudeDeg: number };

const noErrors = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };
const level = { azimuthDeg: 0, altitudeDeg: 0 };
const upright = tilt(0, 0);

function standing(suspect: Suspect): MountTruth {
  switch (suspect.kind) {
    case 'lean':
      return truthAtStart(
        transpose(tilt(suspect.tiltDeg, suspect.risesTowardsDeg)),
        level,
        noErrors,
      );
    case 'zero':
      return truthAtStart(upright, { azimuthDeg: 0, altitudeDeg: suspect.highDeg }, noErrors);
    case 'north':
      return truthAtStart(upright, { azimuthDeg: suspect.rightDeg, altitudeDeg: 0 }, noErrors);
    case 'clock':
      return truthAtStart(upright, level, noErrors);
  }
}

/** Where a first slew ends beside its star: right along the horizon and up, on the sky, degrees. */
export function firstSlew(
  suspect: Suspect,
  star: ChartPlace,
): { rightDeg: number; upDeg: number; lands: ChartPlace } {
  const seen = toward(star);
  // A fast clock looks for the star where it will be; sidereal and solar hours differ by 10 s.
  const believed =
    suspect.kind === 'clock'
      ? turnedDirection(seen, suspect.latitudeDeg, 3600 * suspect.fastHours)
      : seen;
  const { azimuthDeg, altitudeDeg } = azAltFromDirection(believed);
  const truth = standing(suspect);
  const tube = transform(
    transpose(truth.base),
    mountDirection({ azimuthDeg, altitudeDeg }, truth.errors),
  );
  const { rightDeg, upDeg } = landingBeside({ hip: 0, name: '' }, seen, tube);
  return { rightDeg, upDeg, lands: azAltFromDirection(tube) };
}

/** "3.1° high, 0.5° to the right" */
export function landingText({ rightDeg, upDeg }: { rightDeg: number; upDeg: number }): string {
  const parts = [
    Math.abs(upDeg) < 0.05 ? '' : `${deg(Math.abs(upDeg))} ${upDeg > 0 ? 'high' : 'low'}`,
    Math.abs(rightDeg) < 0.05
      ? ''
      : `${deg(Math.abs(rightDeg))} to the ${rightDeg > 0 ? 'right' : 'left'}`,
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'on the star' : parts.join(', ');
}

export function suspectText(suspect: Suspect): string {
  switch (suspect.kind) {
    case 'lean':
      return `The base rises ${deg(suspect.tiltDeg)} toward the ${windOf(suspect.risesTowardsDeg)}`;
    case 'zero':
      return `The tube pointed ${deg(Math.abs(suspect.highDeg))} ${suspect.highDeg > 0 ? 'up' : 'down'} at the start`;
    case 'north':
      return `The tube stood ${deg(Math.abs(suspect.rightDeg))} ${suspect.rightDeg > 0 ? 'right' : 'left'} of north at the start`;
    case 'clock':
      return `The clock is an hour ${suspect.fastHours > 0 ? 'fast' : 'slow'}`;
  }
}

export const apartOf = (
  a: { rightDeg: number; upDeg: number },
  b: { rightDeg: number; upDeg: number },
): number => Math.hypot(a.rightDeg - b.rightDeg, a.upDeg - b.upDeg);
