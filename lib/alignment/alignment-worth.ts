import { achievedErrors, type AchievedErrors, type MountTruth } from '../pointing/achieved-errors';
import { alignOnTwo } from '../pointing/align';
import type { Sighting } from '../pointing/fit-on-two';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { readingsOf } from '../pointing/mount';
import type { AlignmentOutcome } from '../pointing/pointing-model';
import type { SkyFrame } from '../sky/sky-frame';
import { multiply, transform, transpose, type Matrix3 } from '../units/matrix';
import type { RunInput } from './run-input';
import { believedSky, starSeenAt, trueSky } from './run-sky';
import { readOff } from './read-off';

/** Apart from each other so far, the map's cells are few enough to be stored with a result. */
const mapStepDeg = 10;

/**
 * What an alignment is really worth in the observing eyepiece. The computer points by the sky it
 * believes in, so the mount is taken as it stands to that sky: a wrong clock that the alignment has
 * absorbed costs nothing. (Refraction is that of the believed altitude; some arcseconds.) Null unless
 * the two stars agreed.
 */
export function worthOfAlignment(
  input: RunInput,
  outcome: AlignmentOutcome,
  truth: MountTruth,
): AchievedErrors | null {
  if (outcome.kind !== 'agree') return null;
  const { telescope, eyepiece } = input.scenario;
  const asBelieved: MountTruth = {
    ...truth,
    base: multiply(truth.base, turnFrom(input.setup.believed, input.frame)),
  };
  return achievedErrors(
    outcome.model,
    asBelieved,
    fieldRadiusArcmin(telescope, eyepiece),
    mapStepDeg,
  );
}

/** What comes of confirming two stars dead in the middle, as the encoders count; null for a star out of reach. */
export function perfectOutcome(
  input: RunInput,
  stars: readonly [{ hip: number; atMs: number }, { hip: number; atMs: number }],
  truth: MountTruth,
): AlignmentOutcome | null {
  const [first, second] = stars.map(({ hip, atMs }): Sighting | null => {
    const seen = starSeenAt(trueSky(input), hip, atMs);
    const sky = starSeenAt(believedSky(input), hip, atMs);
    const readings = seen && readingsOf(transform(truth.base, seen), truth.errors);
    if (sky === null || readings === null) return null;
    return { sky, readings: readOff(readings, input.setup.encoderStepArcsec) };
  });
  if (!first || !second) return null;
  return alignOnTwo(input.scenario.telescope.computer, [first, second]);
}

/** Turns a direction of one frame's sky to where the same star stands in the other's. */
const turnFrom = (from: SkyFrame, to: SkyFrame): Matrix3 =>
  multiply(asMatrix(to.icrsToLocal), transpose(asMatrix(from.icrsToLocal)));

function asMatrix(rows: readonly number[]): Matrix3 {
  const [a = NaN, b = NaN, c = NaN, d = NaN, e = NaN, f = NaN, g = NaN, h = NaN, i = NaN] = rows;
  return [a, b, c, d, e, f, g, h, i];
}
