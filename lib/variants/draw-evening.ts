import { mountDefaults } from '../alignment/mount-defaults';
import type { RunKit, RunSetup } from '../alignment/setup';
import { declinationAt } from '../clock/declination';
import { rightSettings } from '../clock/entered-settings';
import { topics, type Evening, type FaultSizes, type Habits } from '../faults/faulty-evening';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import type { StarCatalogue } from '../sky/catalogue';
import { drawTargets, type EveningTargets } from './evening-targets';
import type { Night } from './night';
import { normal } from './normal';
import type { Random } from './random';

/*
 * How well a careful beginner sets a telescope up, and how well such a telescope is made; standard
 * deviations, cut off at twice. Common practice, no source.
 */
const northDeg = 0.9;
const levelTubeDeg = 0.4;
/** Where the altitude is set by an index mark, the tube is laid to it and no further off. */
const tubeAtIndexDeg = 0.05;
const baseTiltUpToDeg = 0.4;
/** Play between motor and tube, in centring errors: enough to be worth a habit. */
const playInCentrings = { least: 3.3, most: 4.2 };

/** An evening on which nothing went wrong, and how large a fault of it would be. */
export type DrawnEvening = { evening: Evening; sizes: FaultSizes };

/** Draws stars, hands and telescope for a night; null where too few stars are up for that. */
export function drawEvening({
  random,
  night,
  catalogue,
  kit,
}: {
  random: Random;
  night: Night;
  catalogue: StarCatalogue;
  kit: Pick<RunKit, 'centringEyepiece'>;
}): DrawnEvening | null {
  const { scenario, frame } = night;
  const { telescope, place } = scenario;
  const targets = drawTargets(random, night);
  if (targets === null) return null;
  const evening: Evening = {
    frame,
    place,
    catalogue,
    computer: telescope.computer,
    centringArcmin: telescope.centringArcmin,
    centringFieldRadiusArcmin: fieldRadiusArcmin(telescope, kit.centringEyepiece),
    setup: drawSetup(random, night),
    entered: rightSettings(frame.instant, place, scenario.timeZone),
    habits: drawHabits(random, night, targets),
    surroundings: { clutches: 'firm', tripod: 'untouched', lamp: 'steady', cable: 'free' },
    ...targets,
    noticed: inTheirOrder(random.shuffle(topics).slice(0, random.integer(3, 5))),
  };
  return { evening, sizes: drawSizes(random) };
}

/** As somebody would tell it, whatever the order in which it was drawn. */
export const inTheirOrder = (noticed: Evening['noticed']): Evening['noticed'] =>
  topics.filter((topic) => noticed.includes(topic));

function drawSetup(random: Random, { scenario, frame }: Night): RunSetup {
  const { telescope, place } = scenario;
  const declination = declinationAt(place, frame.instant);
  const play =
    telescope.centringArcmin * random.between(playInCentrings.least, playInCentrings.most);
  const zeroArcmin = telescope.computer === 'fixed-zero' ? telescope.altitudeZeroArcmin : 0;
  return {
    base: {
      tiltDeg: random.between(0, baseTiltUpToDeg),
      risesTowardsDeg: random.between(0, 360),
    },
    errors: {
      altitudeZeroDeg: normal(random, zeroArcmin / 60),
      coneDeg: normal(random, telescope.coneArcmin / 60),
      axisSkewDeg: normal(random, telescope.axisSkewArcmin / 60),
    },
    dot: { rightArcmin: 0, upArcmin: 0 },
    backlashArcmin: { azimuth: play, altitude: play },
    ...mountDefaults,
    // Beyond the years of the field's models nobody is asked about the needle.
    declinationDeg: declination.ok ? declination.declinationDeg : 0,
    believed: frame,
    disturbances: [],
  };
}

function drawHabits(random: Random, { scenario }: Night, targets: EveningTargets): Habits {
  const { computer, centringArcmin } = scenario.telescope;
  const offset = () => ({
    // A beginner who takes care does better than the kit's standard deviation.
    rightArcmin: normal(random, centringArcmin / 2),
    upArcmin: normal(random, centringArcmin / 2),
  });
  return {
    start: {
      azimuthDeg: normal(random, northDeg),
      altitudeDeg: normal(random, computer === 'fixed-zero' ? tubeAtIndexDeg : levelTubeDeg),
      northBy: 'pole',
    },
    centres: [{ hip: targets.first.hip }, { hip: targets.second.hip }],
    centresBy: 'eyepiece',
    centring: [offset(), offset()],
    lastMoves: [
      { azimuth: 1, altitude: 1 },
      { azimuth: 1, altitude: 1 },
    ],
  };
}

function drawSizes(random: Random): FaultSizes {
  const sign = (): 1 | -1 => (random.integer(0, 1) === 0 ? 1 : -1);
  return {
    tiltDeg: random.between(2.2, 4.4),
    tiltTowardsDeg: random.between(0, 360),
    startAltitudeDeg: sign() * random.between(2, 7),
    push: {
      azimuthDeg: sign() * random.between(1.5, 4),
      altitudeDeg: sign() * random.between(1, 3),
    },
    leanDeg: random.between(1, 3),
    // 80 mm beside the tube: 30′ to 60′ on the sky.
    finderDistanceM: random.between(4.6, 9),
    finderSide: sign(),
  };
}
