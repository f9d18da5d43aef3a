import { mountDefaults } from '../alignment/mount-defaults';
import type { RunSetup } from '../alignment/setup';
import { dotAtInfinity } from '../finder/dot-residual';
import type { Scenario } from '../pointing/scenario';
import { skyFrameAt } from '../sky/frame-at';
import type { SkyFrame } from '../sky/sky-frame';
import { wrap180 } from '../units/angle';
import { normal } from './normal';
import type { Random } from './random';

// Design, defaults: level 0.5°; zero, cone and skew as the telescope says; and what a careful evening
// leaves: a clock within a minute, a place to a tenth of a degree.
const levelDeg = 0.5;
const clockSeconds = 60;
const placeDeg = 0.1;

/** Our own mount, no source. */
const playArcmin = { least: 1.5, most: 6 };
/** Where the finder stands beside the tube, and how far off the thing was that it was set on. */
const finderApartMm = 80;
const finderDistanceM = { nearest: 20, farthest: 300 };

/** What an evening bends on purpose, so that a first slew lands where the task wants it. */
export type Bent = { clockSeconds: number; altitudeZeroDeg: number };

/** Hidden small errors of one evening's telescope, drawn from what its kit gets wrong. */
export function drawRunSetup({
  random,
  scenario,
  frame,
  declinationDeg,
  bent = null,
}: {
  random: Random;
  scenario: Pick<Scenario, 'place' | 'telescope'>;
  /** The true sky at the run's first instant. */
  frame: SkyFrame;
  declinationDeg: number;
  bent?: Bent | null;
}): RunSetup {
  const { telescope, place } = scenario;
  const drawn = (deviation: number): number => normal(random, deviation);
  const [leanEast, leanNorth] = [drawn(levelDeg / Math.SQRT2), drawn(levelDeg / Math.SQRT2)];
  const errors = {
    altitudeZeroDeg: drawn(telescope.altitudeZeroArcmin / 60),
    coneDeg: drawn(telescope.coneArcmin / 60),
    axisSkewDeg: drawn(telescope.axisSkewArcmin / 60),
  };
  const side = random.between(0, 2 * Math.PI);
  const distanceM =
    finderDistanceM.nearest * (finderDistanceM.farthest / finderDistanceM.nearest) ** random.next();
  const play = () => random.between(playArcmin.least, playArcmin.most);
  const clockErrorSeconds = random.between(-clockSeconds, clockSeconds);
  const believedPlace = {
    latitudeDeg: Math.min(
      90,
      Math.max(-90, place.latitudeDeg + random.between(-placeDeg, placeDeg)),
    ),
    longitudeDeg: wrap180(place.longitudeDeg + random.between(-placeDeg, placeDeg)),
    elevationM: place.elevationM,
  };
  const believedMs = Date.parse(frame.instant) + 1000 * (bent?.clockSeconds ?? clockErrorSeconds);
  return {
    base: {
      tiltDeg: Math.hypot(leanEast, leanNorth),
      risesTowardsDeg: (Math.atan2(leanEast, leanNorth) * 180) / Math.PI + 180,
    },
    errors: bent === null ? errors : { ...errors, altitudeZeroDeg: bent.altitudeZeroDeg },
    dot: dotAtInfinity({
      finderRightMm: finderApartMm * Math.cos(side),
      finderUpMm: finderApartMm * Math.sin(side),
      distanceM,
    }),
    backlashArcmin: { azimuth: play(), altitude: play() },
    ...mountDefaults,
    declinationDeg,
    believed: skyFrameAt({ instant: new Date(believedMs), place: believedPlace }),
    disturbances: [],
  };
}
