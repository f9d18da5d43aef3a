import { disturbed, type Standing } from '../alignment/disturbances';
import { lightSeenAt, type SkyLight } from '../alignment/lights';
import type { AxesAt } from '../alignment/motion';
import { readOff } from '../alignment/read-off';
import type { TurningSky } from '../alignment/run-sky';
import type { RunSetup } from '../alignment/setup';
import { standOf, truthAtStart } from '../alignment/start-position';
import { directionBeside, landingBeside } from '../faults/where-it-lands';
import type { FieldOffset } from '../optics/image-orientation';
import { alignOnTwo, goToReadings } from '../pointing/align';
import { fitOnTwo, type Sighting } from '../pointing/fit-on-two';
import { mountDirection, readingsOf } from '../pointing/mount';
import type { AlignmentOutcome, PointingModel } from '../pointing/pointing-model';
import type { SkyFrame } from '../sky/sky-frame';
import { latitudeOfFrameDeg } from '../sky/turned-frame';
import { identity, transform, transpose } from '../units/matrix';
import type { Vector3 } from '../units/vector';
import { eveningSetup } from './evening-setup';
import type { GoTo, HandAtStar, RehearsedEvening } from './rehearsed-evening';

export type NoLanding =
  /** A star or planet that the sky or the catalogue does not have. */
  | 'not-in-this-sky'
  /** Within a cone error or so of the mount's pole no tube can be turned. */
  | 'out-of-reach'
  /** The two sightings lie on one line. */
  | 'undetermined';

/** Where a go-to came to rest beside its star, or why it came to none. */
export type GoToLanding =
  | {
      ok: true;
      /** The tube beside the star: right along the horizon on the sky, and up; a great circle. */
      miss: FieldOffset;
      /** What the computer says of its two sightings; null when it has not got two. */
      outcome: AlignmentOutcome['kind'] | null;
    }
  | { ok: false; reason: NoLanding };

/** How far an evening has come: the telescope, and what its computer has been told. */
type Course = { standing: Standing; sightings: readonly Sighting[] };
/** Readings as the encoders count them, or as a ruler without end would. */
type Counting = 'in-steps' | 'smoothly';

/** Level, facing north and reading zero: what a computer supposes before an alignment. */
const notAligned: PointingModel = { base: identity, altitudeZeroDeg: 0 };
const axesAtStart: AxesAt = {
  azimuthDeg: 0,
  altitudeDeg: 0,
  lag: { azimuthDeg: 0, altitudeDeg: 0 },
};

/**
 * Runs an evening up to a go-to through the exact mechanics and the exact fit. The computer goes by the
 * two sightings when it has two, whether or not it would call them sensible: a fit changes smoothly with
 * each slip, its verdict does not; before that by what it supposes. A go-to ends in the final approach
 * direction, so that only the hand carries play.
 */
export function landingOf(
  evening: RehearsedEvening,
  goTo: GoTo,
  counting: Counting = 'in-steps',
): GoToLanding {
  const { frame, latitudeDeg, slips, telescope } = evening;
  const setup = eveningSetup(slips, telescope, { frame, latitudeDeg });
  const skies = { seen: skyOf(evening, frame), believed: skyOf(evening, setup.believed) };
  const course = courseTo(evening, setup, skies, goTo, counting);
  if (course === 'not-in-this-sky' || course === 'out-of-reach') {
    return { ok: false, reason: course };
  }
  const sightings = pairOf(course);
  const model = sightings === null ? notAligned : fitOnTwo(evening.computer, sightings)?.model;
  if (model === undefined) return { ok: false, reason: 'undetermined' };

  const sent = lightSeenAt(skies.believed, goTo, goTo.atMs);
  const star = lightSeenAt(skies.seen, goTo, goTo.atMs);
  const readings = sent && goToReadings(model, sent);
  if (star === null || readings === null) return { ok: false, reason: 'not-in-this-sky' };
  const { base, errors } = course.standing.truth;
  const tube = transform(transpose(base), mountDirection(readings, errors));
  const { rightDeg, upDeg } = landingBeside({ hip: goTo.hip, name: '' }, star, tube);
  return {
    ok: true,
    miss: { rightArcmin: rightDeg * 60, upArcmin: upDeg * 60 },
    outcome: sightings && alignOnTwo(evening.computer, sightings).kind,
  };
}

const pairOf = ({ sightings: [one, two] }: Course): readonly [Sighting, Sighting] | null =>
  one === undefined || two === undefined ? null : [one, two];

/** Both latitudes are read off the frames, so that the 10″ this is good to drop out between the two. */
const skyOf = ({ catalogue }: RehearsedEvening, frame: SkyFrame): TurningSky => ({
  catalogue,
  frame,
  latitudeDeg: latitudeOfFrameDeg(frame),
});

/** How the telescope stands when the go-to begins, and what its computer has been told. */
function courseTo(
  evening: RehearsedEvening,
  setup: RunSetup,
  skies: { seen: TurningSky; believed: TurningSky },
  goTo: GoTo,
  counting: Counting,
): Course | 'not-in-this-sky' | 'out-of-reach' {
  let course: Course = { standing: started(evening, setup, standOf(setup)), sightings: [] };
  course = disturbedAfter(0, setup, course);
  for (let confirms = 1; confirms <= goTo.confirmsBefore; confirms += 1) {
    const hand = evening.hands.find(({ confirmsBefore }) => confirmsBefore === confirms - 1);
    if (hand !== undefined) {
      const light = lightSeenAt(skies.seen, hand.light, hand.atMs);
      const sky = lightSeenAt(skies.believed, asked(hand), hand.atMs);
      if (light === null || sky === null) return 'not-in-this-sky';
      const axes = axesOn(light, hand, setup, course.standing);
      if (axes === null) return 'out-of-reach';
      const readings =
        counting === 'smoothly'
          ? { azimuthDeg: axes.azimuthDeg, altitudeDeg: axes.altitudeDeg }
          : readOff(axes, setup.encoderStepArcsec);
      course = {
        standing: { ...course.standing, axes },
        sightings: [...course.sightings, { sky, readings }],
      };
    }
    course = disturbedAfter(confirms, setup, course);
    if (confirms === evening.startedAfterConfirms) {
      course = { ...course, standing: started(evening, setup, course.standing.stand) };
    }
  }
  return course;
}

const asked = ({ hip }: HandAtStar): SkyLight => ({ hip });

const started = (
  { slips }: RehearsedEvening,
  { errors }: RunSetup,
  stand: Standing['stand'],
): Standing => ({
  stand,
  truth: truthAtStart(stand, slips.start, errors),
  axes: axesAtStart,
});

const disturbedAfter = (confirms: number, { disturbances }: RunSetup, course: Course): Course =>
  disturbances
    .filter(({ afterConfirm }) => afterConfirm === confirms)
    .reduce<Course>(
      ({ standing, sightings }, disturbance) => ({
        standing: disturbed(standing, disturbance),
        sightings: disturbance.kind === 'computer-resets' ? [] : sightings,
      }),
      course,
    );

/** Where the axes stand, unrounded, when a light is confirmed; null for one out of reach. */
function axesOn(
  light: Vector3,
  { by, left, lagArcmin }: HandAtStar,
  { dot }: RunSetup,
  { truth: { base, errors } }: Standing,
): AxesAt | null {
  const aside = by === 'dot' ? dot : { rightArcmin: 0, upArcmin: 0 };
  // What stands to the right of the tube has the tube to its left.
  const tube = directionBeside(light, {
    rightArcmin: -left.rightArcmin - aside.rightArcmin,
    upArcmin: -left.upArcmin - aside.upArcmin,
  });
  const load = readingsOf(transform(base, tube), errors);
  if (load === null) return null;
  const lag = { azimuthDeg: lagArcmin.azimuth / 60, altitudeDeg: lagArcmin.altitude / 60 };
  return {
    azimuthDeg: load.azimuthDeg - lag.azimuthDeg,
    altitudeDeg: load.altitudeDeg - lag.altitudeDeg,
    lag,
  };
}
