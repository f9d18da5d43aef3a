import {
  firstSlew,
  takenAsLevel,
  tiltConsequences,
  type Landing,
} from '@/lib/levelling/tilt-consequences';
import { largestBaseTiltDeg } from '@/lib/pointing/align';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import type { FigureKit } from '../figure-data';

/** How high all stars of the figure stand. */
const starAltitudeDeg = 40;

export type LeanFacts = {
  /** Radius of the field of the 25 mm eyepiece, arcminutes. */
  fieldArcmin: number;
  first: Landing;
  /** Worst over the whole sky; null where the computer believes in no such base. */
  afterTwoStarsArcmin: number | null;
  /** Set right on a star on the high side, then sent to this one. */
  believedLevel: Landing;
};

/**
 * What a lean does at a star 40° up that stands so far round from the high side, through the engine's
 * exact mechanics. The two alignment stars stand 90° apart.
 */
export function leanFacts(kit: FigureKit, tiltDeg: number, fromHighDeg: number): LeanFacts {
  const tilt = { tiltDeg, risesTowardsDeg: 0 };
  const at = (azimuthDeg: number) => ({ azimuthDeg, altitudeDeg: starAltitudeDeg });
  const eyepiece = kit.eyepieces.reduce((a, b) => (a.focalLengthMm > b.focalLengthMm ? a : b));
  return {
    fieldArcmin: fieldRadiusArcmin(kit.telescope, eyepiece),
    first: firstSlew(tilt, at(fromHighDeg)),
    afterTwoStarsArcmin:
      tiltDeg > largestBaseTiltDeg
        ? null
        : tiltConsequences(tilt, at(30), at(120)).afterTwoStarsArcmin,
    believedLevel: takenAsLevel(tilt, at(0), at(fromHighDeg)),
  };
}
