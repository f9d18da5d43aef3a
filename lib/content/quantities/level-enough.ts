import { fewestMoves } from '../../levelling/fewest-moves';
import { headSlope, tiltOf } from '../../levelling/head-slope';
import { firstSlew, tiltConsequences } from '../../levelling/tilt-consequences';
import { startOf, type LegIndex, type TripodSite } from '../../levelling/tripod';
import { vialMm } from '../../levelling/vial';
import { largestBaseTiltDeg } from '../../pointing/align';
import { fieldRadiusArcmin } from '../../pointing/field-radius';
import { degreesToRadians, radiansToDegrees } from '../../units/angle';
import type { Quantity, ReckoningSources } from '../reckoning';

const word = (words: readonly string[], index: number): string => words[index] ?? '';

const tripodOf = (kit: string, sources: ReckoningSources) => sources.kit(kit).bench.tripod;

/** How far the head leans when one foot stands so much higher than the others. */
function leanOf(heightMm: number, footCircleRadiusMm: number): number {
  const feet = [0, 120, 240].map((azimuthDeg, index) => ({
    azimuthDeg,
    heightMm: index === 0 ? heightMm : 0,
  }));
  return tiltOf(headSlope(footCircleRadiusMm, feet)).tiltDeg;
}

/** Two stars far apart, as a good alignment has; which of them hardly matters here. */
const pair = [
  { azimuthDeg: 100, altitudeDeg: 45 },
  { azimuthDeg: 190, altitudeDeg: 35 },
] as const;

const costs = (tiltDeg: number) => tiltConsequences({ tiltDeg, risesTowardsDeg: 70 }, ...pair);

/** A kit's tripod with leg A at 0° and its head leaning, for the worked example. */
function leaningSite(words: readonly string[], sources: ReckoningSources): TripodSite {
  const tripod = tripodOf(word(words, 0), sources);
  const slope = Math.tan(degreesToRadians(sources.figure(word(words, 1))));
  const towardsDeg = sources.figure(word(words, 2));
  const leg = (azimuthDeg: number) => ({
    azimuthDeg,
    groundMm:
      tripod.footCircleRadiusMm * slope * Math.cos(degreesToRadians(azimuthDeg - towardsDeg)),
    sinksMm: 0,
    startMm: Math.round((tripod.legMinMm + tripod.legMaxMm) / 2),
  });
  return {
    ...tripod,
    legs: [leg(0), leg(120), leg(240)],
    vial: { markAzimuthDeg: 0, zeroRightMm: 0, zeroUpMm: 0 },
    armTurns: false,
  };
}

const letters = 'ABC';

/** What the lesson "level-enough" asks of the engine beyond what all lessons may. */
export const levelEnoughQuantities: Readonly<Record<string, Quantity>> = {
  /** Millimetres that the bubble moves for a tilt in degrees. */
  'bubble-runs': {
    takes: 'degrees',
    digits: 0,
    value: (words, { figure }) =>
      vialMm.curvatureRadius * Math.sin(degreesToRadians(figure(word(words, 0)))),
  },
  /** The tilt at which a bubble just touches its ring from within, degrees. */
  'ring-touched-at': {
    takes: '',
    digits: 1,
    value: () =>
      radiansToDegrees(
        Math.asin((vialMm.ringRadius - vialMm.bubbleRadius) / vialMm.curvatureRadius),
      ),
  },
  /** Millimetres of one leg's length that tip a kit's head by so many degrees. */
  'leg-for-tilt': {
    takes: 'kit degrees',
    digits: 0,
    value: (words, sources) => {
      const { footCircleRadiusMm, splayDeg } = tripodOf(word(words, 0), sources);
      const slope = Math.tan(degreesToRadians(sources.figure(word(words, 1))));
      return (1.5 * footCircleRadiusMm * slope) / Math.cos(degreesToRadians(splayDeg));
    },
  },
  /** From one foot to the line through the two others, millimetres. */
  'foot-to-line': {
    takes: 'kit',
    digits: 0,
    value: (words, sources) => 1.5 * tripodOf(word(words, 0), sources).footCircleRadiusMm,
  },
  /** Degrees that a kit's head leans when one foot sinks by so many millimetres. */
  'sunk-foot-lean': {
    takes: 'kit mm',
    digits: 1,
    value: (words, sources) =>
      leanOf(sources.figure(word(words, 1)), tripodOf(word(words, 0), sources).footCircleRadiusMm),
  },
  /** The same in arcminutes. */
  'sunk-foot-arcmin': {
    takes: 'kit mm',
    digits: 0,
    value: (words, sources) =>
      60 *
      leanOf(sources.figure(word(words, 1)), tripodOf(word(words, 0), sources).footCircleRadiusMm),
  },
  /**
   * What one leg has to do in the levelling of two moves by the two legs named: kit, tilt, direction
   * of the high side clockwise from leg A, legs ("AB"), leg. Positive: let out, millimetres.
   */
  'leg-moves': {
    takes: 'kit degrees degrees legs leg',
    digits: 0,
    value: (words, sources) => {
      const site = leaningSite(words, sources);
      const legs = Array.from(word(words, 3)).map((name) => letters.indexOf(name));
      const found = fewestMoves(site, startOf(site)).find((one) =>
        legs.every((leg) => one.legs.some((moved) => moved === leg)),
      );
      const leg = letters.indexOf(word(words, 4));
      if (found === undefined || (leg !== 0 && leg !== 1 && leg !== 2)) return Number.NaN;
      const moved: LegIndex = leg;
      return found.lengthsMm[moved] - site.legs[moved].startMm;
    },
    words: (mm) => `${String(Math.abs(Math.round(mm)))} mm`,
  },
  /** How high a first slew lands: tilt, star from the high side, altitude; arcminutes. */
  'first-slew-up': {
    takes: 'degrees degrees altitude',
    digits: 0,
    value: (words, { figure }) =>
      firstSlew(
        { tiltDeg: figure(word(words, 0)), risesTowardsDeg: 0 },
        { azimuthDeg: figure(word(words, 1)), altitudeDeg: figure(word(words, 2)) },
      ).upArcmin,
  },
  /** The worst that a tilt leaves anywhere after an alignment on two stars, arcminutes. */
  'lean-left-over': {
    takes: 'degrees',
    digits: 3,
    value: (words, { figure }) => costs(figure(word(words, 0))).afterTwoStarsArcmin ?? Infinity,
  },
  /** The worst of a computer that takes its base as level and was set on one star, arcminutes. */
  'lean-taken-as-level': {
    takes: 'degrees',
    digits: 0,
    value: (words, { figure }) => costs(figure(word(words, 0))).takenAsLevelArcmin,
  },
  /** The most that a base may lean and still be believed, degrees. */
  'lean-believed': { takes: '', digits: 0, value: () => largestBaseTiltDeg },
  /** What the eyepiece that one centres with shows to each side, arcminutes. */
  'centring-field-reaches': {
    takes: 'kit',
    digits: 0,
    value: (words, sources) => {
      const { telescope, eyepieces, centringEyepieceId } = sources.kit(word(words, 0));
      const eyepiece = eyepieces.find(({ id }) => id === centringEyepieceId);
      return eyepiece === undefined ? Number.NaN : fieldRadiusArcmin(telescope, eyepiece);
    },
  },
};
