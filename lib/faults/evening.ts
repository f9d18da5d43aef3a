import { disturbed, type Standing } from '../alignment/disturbances';
import { lightSeenAt, type SkyLight } from '../alignment/lights';
import type { AxesAt } from '../alignment/motion';
import { readOff } from '../alignment/read-off';
import type { TurningSky } from '../alignment/run-sky';
import { standOf, truthAtStart } from '../alignment/start-position';
import { alignOnTwo, goToReadings } from '../pointing/align';
import type { Sighting } from '../pointing/fit-on-two';
import { mountDirection } from '../pointing/mount';
import type { AlignmentOutcome, PointingModel } from '../pointing/pointing-model';
import type { SkyFrame } from '../sky/sky-frame';
import { latitudeOfFrameDeg } from '../sky/turned-frame';
import { identity, transform, transpose } from '../units/matrix';
import type { Vector3 } from '../units/vector';
import { axesOnLight } from './centring';
import type { Evidence, Landing } from './evidence';
import type { Evening, Target } from './faulty-evening';
import { observationsOf } from './observations';
import { settingsCard } from './settings-card';
import { landingBeside } from './where-it-lands';

/** When things are done, seconds of sky time from the start position. */
export type Timetable = {
  /** When each go-to before the alignment has ended. */
  goTo: readonly [number, number];
  confirm: readonly [number, number];
  /** The first go-to afterwards, and how long after one another they follow. */
  later: number;
  betweenLater: number;
  test: number;
};

/** What a practised pair of hands needs. */
export const timetable: Timetable = {
  goTo: [60, 240],
  confirm: [180, 360],
  later: 480,
  betweenLater: 120,
  test: 900,
};

/** What an evening shows, and where the test slew would land for each star it could be sent to. */
export type EveningShown = { evidence: Evidence; testSlews: readonly Landing[] };

/** How far an evening has come: the telescope, what its computer believes, what it has been told. */
type Course = { standing: Standing; model: PointingModel; sightings: readonly Sighting[] };
type Skies = { seen: TurningSky; believed: TurningSky };

/** Level, facing north and not tracking: what a computer supposes before an alignment. */
const notAligned: PointingModel = { base: identity, altitudeZeroDeg: 0 };
const axesAtStart: AxesAt = {
  azimuthDeg: 0,
  altitudeDeg: 0,
  lag: { azimuthDeg: 0, altitudeDeg: 0 },
};

/**
 * Runs an evening through the exact mechanics, by default at the times of {@link timetable}: two go-tos by the
 * believed sky, each with a centring, the alignment, then go-tos by whatever model there is. A go-to
 * ends in the final approach direction, so that only centring can carry play.
 *
 * @throws {Error} for a star that is not in the catalogue, or one the tube cannot be turned to.
 */
export function runEvening(evening: Evening, times = timetable): EveningShown {
  const { goTo, confirm, later, betweenLater, test } = times;
  const skies = skiesOf(evening);
  const ready = disturbedAfter(0, evening, {
    standing: atStart(evening),
    model: notAligned,
    sightings: [],
  });
  const first = landing(skies, ready, evening.first, goTo[0]);
  const halfway = disturbedAfter(1, evening, confirmed(evening, skies, ready, 0, confirm[0]));
  const second = landing(skies, halfway, evening.second, goTo[1]);
  const both = confirmed(evening, skies, halfway, 1, confirm[1]);
  const outcome = aligned(evening, both.sightings);
  const model = outcome.kind === 'agree' ? outcome.model : notAligned;
  const done = disturbedAfter(2, evening, { ...both, model });

  const goneTo = outcome.kind === 'agree' ? evening.later : [];
  return {
    evidence: {
      first,
      second,
      outcome,
      later: goneTo.map((target, i) => landing(skies, done, target, later + i * betweenLater)),
      card: settingsCard(evening.entered),
      observations: observationsOf(evening),
    },
    testSlews: evening.test
      .filter((target) => believedUp(skies, target, test))
      .map((target) => landing(skies, done, target, test)),
  };
}

/** No computer drives to where it believes the ground to be. */
const believedUp = ({ believed }: Skies, target: Target, seconds: number): boolean =>
  lightAt(believed, target, seconds)[2] > 0;

/** Whether the computer would go to both stars at all: else the evening would not have come about. */
export function canBeBegun(evening: Evening): boolean {
  const skies = skiesOf(evening);
  return (
    believedUp(skies, evening.first, timetable.goTo[0]) &&
    believedUp(skies, evening.second, timetable.goTo[1])
  );
}

/**
 * Both latitudes are read off the frames: the believed one may have been entered wrongly, and the 10″
 * that this is good to then drop out between the two.
 */
function skiesOf({ catalogue, frame, setup: { believed } }: Evening): Skies {
  const sky = (of: SkyFrame): TurningSky => ({
    catalogue,
    frame: of,
    latitudeDeg: latitudeOfFrameDeg(of),
  });
  return { seen: sky(frame), believed: sky(believed) };
}

function atStart({ setup, habits }: Evening): Standing {
  const stand = standOf(setup);
  return { stand, truth: truthAtStart(stand, habits.start, setup.errors), axes: axesAtStart };
}

/** Where a go-to ends, sent by the believed sky and judged by the true one. */
function landing(
  { seen, believed }: Skies,
  { standing: { truth }, model }: Course,
  target: Target,
  seconds: number,
): Landing {
  const readings = goToReadings(model, lightAt(believed, target, seconds));
  if (readings === null) throw new Error('a computer without cone and skew reaches everything');
  const tube = transform(transpose(truth.base), mountDirection(readings, truth.errors));
  return landingBeside(target, lightAt(seen, target, seconds), tube);
}

/** The computer takes the light in the middle for the star it asked for. */
function confirmed(
  evening: Evening,
  { seen, believed }: Skies,
  { standing, model, sightings }: Course,
  index: 0 | 1,
  seconds: number,
): Course {
  const asked = index === 0 ? evening.first : evening.second;
  const light = lightAt(seen, evening.habits.centres[index], seconds);
  const axes = axesOnLight(evening, index, standing.truth, light);
  const sighting = {
    sky: lightAt(believed, asked, seconds),
    readings: readOff(axes, evening.setup.encoderStepArcsec),
  };
  return { standing: { ...standing, axes }, model, sightings: [...sightings, sighting] };
}

/** A computer that has forgotten the first star is left with one, which decides nothing. */
function aligned({ computer }: Evening, [one, two]: readonly Sighting[]): AlignmentOutcome {
  if (one === undefined || two === undefined) return { kind: 'undetermined' };
  return alignOnTwo(computer, [one, two]);
}

/** Whatever happens to the telescope once so many stars have been confirmed. */
function disturbedAfter(confirms: number, { setup }: Evening, course: Course): Course {
  return setup.disturbances
    .filter(({ afterConfirm }) => afterConfirm === confirms)
    .reduce<Course>((before, disturbance) => {
      const standing = disturbed(before.standing, disturbance);
      return disturbance.kind === 'computer-resets'
        ? { standing, model: notAligned, sightings: [] }
        : { ...before, standing };
    }, course);
}

/** @throws {Error} for a star that the catalogue or a planet that the frame does not have. */
function lightAt(sky: TurningSky, light: SkyLight, seconds: number): Vector3 {
  const direction = lightSeenAt(sky, light, seconds * 1000);
  if (direction === null) throw new Error(`${JSON.stringify(light)} is not in this sky`);
  return direction;
}
