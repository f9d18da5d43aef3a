import { landingBeside } from '@/lib/faults/where-it-lands';
import { tilt, truthAtStart } from '@/lib/alignment/start-position';
import type { MountTruth } from '@/lib/pointing/achieved-errors';
import { alignOnTwo, goToReadings } from '@/lib/pointing/align';
import { mountDirection, readingsOf } from '@/lib/pointing/mount';
import type { AlignmentOutcome, PointingModel } from '@/lib/pointing/pointing-model';
import { turnedDirection } from '@/lib/sky/turned-frame';
import { identity, transform, transpose } from '@/lib/units/matrix';
import { azAltFromDirection, directionFromAzAlt, type Vector3 } from '@/lib/units/vector';
import type { SkyPosition } from '../sky-disc';

export const faultKinds = [
  { id: 'zero', title: 'Tube not level at the start', unit: 'degrees up', most: 6 },
  { id: 'north', title: 'Tube not set to north', unit: 'degrees right of north', most: 15 },
  { id: 'lean', title: 'Base leans, rising to the east', unit: 'degrees', most: 6 },
  { id: 'clock', title: 'Clock fast', unit: 'times 10 minutes', most: 6 },
  { id: 'latitude', title: 'Latitude entered too far north', unit: 'degrees', most: 6 },
  { id: 'bump', title: 'A leg kicked after the alignment', unit: 'degrees of lean', most: 4 },
] as const;
export type FaultKind = (typeof faultKinds)[number]['id'];

/** Where the figure stands, and its two alignment stars. */
export const latitudeDeg = 50;
export const pair: readonly [SkyPosition, SkyPosition] = [
  { azimuthDeg: 110, altitudeDeg: 40 },
  { azimuthDeg: 220, altitudeDeg: 45 },
];

const toward = ({ azimuthDeg, altitudeDeg }: SkyPosition): Vector3 =>
  directionFromAzAlt(azimuthDeg, altitudeDeg);
const noErrors = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };
const upright = truthAtStart(identity, { azimuthDeg: 0, altitudeDeg: 0 }, noErrors);

/** How the mount stands before the alignment and after it. */
function standing(kind: FaultKind, size: number): { before: MountTruth; after: MountTruth } {
  const both = (truth: MountTruth) => ({ before: truth, after: truth });
  switch (kind) {
    case 'zero':
      return both(truthAtStart(identity, { azimuthDeg: 0, altitudeDeg: size }, noErrors));
    case 'north':
      return both(truthAtStart(identity, { azimuthDeg: size, altitudeDeg: 0 }, noErrors));
    case 'lean':
      return both(
        truthAtStart(transpose(tilt(size, 90)), { azimuthDeg: 0, altitudeDeg: 0 }, noErrors),
      );
    case 'bump':
      return {
        before: upright,
        after: truthAtStart(transpose(tilt(size, 90)), { azimuthDeg: 0, altitudeDeg: 0 }, noErrors),
      };
    case 'clock':
    case 'latitude':
      return both(upright);
  }
}

/** Where the computer believes that a light stands which is seen there. */
function believed(kind: FaultKind, size: number, seen: Vector3): Vector3 {
  if (kind === 'clock') return turnedDirection(seen, latitudeDeg, 600 * size);
  // A place farther north has its pole higher: the sky tips toward the south.
  if (kind === 'latitude') return transform(transpose(tilt(size, 180)), seen);
  return seen;
}

export type PatternFacts = {
  /** Null for before the alignment. */
  outcome: AlignmentOutcome | null;
  /** Where slews to stars all round the sky end; empty when the two stars were refused. */
  slews: readonly {
    star: SkyPosition;
    lands: SkyPosition;
    rightDeg: number;
    upDeg: number;
    missDeg: number;
  }[];
  mostDeg: number;
  leastDeg: number;
};

const stars: readonly SkyPosition[] = [
  ...[0, 45, 90, 135, 180, 225, 270, 315].map((azimuthDeg) => ({ azimuthDeg, altitudeDeg: 30 })),
  ...[20, 110, 200, 290].map((azimuthDeg) => ({ azimuthDeg, altitudeDeg: 62 })),
];

const notAligned: PointingModel = { base: identity, altitudeZeroDeg: 0 };

/** Slews all over the sky with one fault, before an alignment or after it; all by the engine. */
export function patternFacts(
  kind: FaultKind,
  size: number,
  stage: 'before' | 'after',
): PatternFacts {
  const { before, after } = standing(kind, size);
  const sighting = (star: SkyPosition) => {
    const readings = readingsOf(transform(before.base, toward(star)), before.errors);
    if (readings === null) throw new Error('a mount without cone and skew reaches every star');
    return { sky: believed(kind, size, toward(star)), readings };
  };
  const outcome =
    stage === 'before' ? null : alignOnTwo('solved-zero', [sighting(pair[0]), sighting(pair[1])]);
  if (outcome !== null && outcome.kind !== 'agree')
    return { outcome, slews: [], mostDeg: 0, leastDeg: 0 };
  const model = outcome === null ? notAligned : outcome.model;
  const truth = stage === 'before' ? before : after;
  const slews = stars.map((star) => {
    const readings = goToReadings(model, believed(kind, size, toward(star)));
    if (readings === null) throw new Error('a computer without cone and skew reaches everything');
    const tube = transform(transpose(truth.base), mountDirection(readings, truth.errors));
    const { rightDeg, upDeg } = landingBeside({ hip: 0, name: '' }, toward(star), tube);
    return {
      star,
      lands: azAltFromDirection(tube),
      rightDeg,
      upDeg,
      missDeg: Math.hypot(rightDeg, upDeg),
    };
  });
  const misses = slews.map(({ missDeg }) => missDeg);
  return { outcome, slews, mostDeg: Math.max(...misses), leastDeg: Math.min(...misses) };
}
