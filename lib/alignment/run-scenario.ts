import { z } from 'zod';
import { eyepieceSchema, type Scenario } from '../pointing/scenario';
import { orientationOf } from '../optics/image-orientation';
import { skyFrameAt } from '../sky/frame-at';
import type { SkyFrame } from '../sky/sky-frame';
import { mountDefaults } from './mount-defaults';
import type { RunKit, RunSetup } from './setup';

/** Up to `most` to either side. */
const within = (most: number) => z.number().min(-most).max(most).default(0);
const way = z.literal([1, -1]);

/**
 * What is hidden from whoever aligns, as people and files write it: a public format, names are kept.
 * What is left out is not wrong: the base level, the tube on its axes, no play, clock and place right.
 * Widest values: what a mount may have that can still be aligned on stars up to 70° high.
 */
const hiddenErrorsSchema = z.strictObject({
  /** How far the base is off level, and towards which azimuth it rises. */
  base: z
    .strictObject({
      tiltDeg: z.number().min(0).max(10).default(0),
      risesTowardsDeg: z.number().min(0).lt(360).default(0),
    })
    .prefault({}),
  altitudeZeroArcmin: within(600),
  coneArcmin: within(120),
  axisSkewArcmin: within(120),
  /** Where the finder's dot points beside the tube, seen from behind it. */
  dot: z.strictObject({ rightArcmin: within(300), upArcmin: within(300) }).prefault({}),
  /** Play that is taken up when an axis turns the other way; through more than this no slow step leads. */
  backlashArcmin: z
    .strictObject({
      azimuth: z.number().min(0).max(20).default(0),
      altitude: z.number().min(0).max(20).default(0),
    })
    .prefault({}),
  /** Which way the last move must go: 1 is right, or up. */
  finalApproach: z
    .strictObject({
      azimuth: way.default(mountDefaults.finalApproach.azimuth),
      altitude: way.default(mountDefaults.finalApproach.altitude),
    })
    .prefault({}),
  encoderStepArcsec: z.number().min(0.1).max(600).default(mountDefaults.encoderStepArcsec),
  slewDegPerSecond: z.number().min(0.5).max(20).default(mountDefaults.slewDegPerSecond),
  /** By how much the entered clock is fast. */
  clockErrorSeconds: within(86_400),
  /** What was entered as the place; by default the scenario's own. */
  believedPlace: z
    .strictObject({
      latitudeDeg: z.number().min(-90).max(90),
      longitudeDeg: z.number().min(-180).max(180),
    })
    .optional(),
});

const kitSchema = z.strictObject({
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']).default('reflector'),
  /** By default the one the targets are looked at with. */
  centringEyepiece: eyepieceSchema.optional(),
});

/** The groups that a run adds to a scenario; both may be left out. */
export const runGroupsSchema = z.strictObject({
  setup: hiddenErrorsSchema.prefault({}),
  kit: kitSchema.prefault({}),
});

/** With every default filled in. */
export type RunGroups = z.output<typeof runGroupsSchema>;

/** The telescope as it really is tonight. `frame` is the true sky at the run's first instant. */
export function setupFrom(
  { setup }: RunGroups,
  { place }: Pick<Scenario, 'place'>,
  frame: SkyFrame,
): RunSetup {
  const { clockErrorSeconds, believedPlace } = setup;
  const believedAt = new Date(Date.parse(frame.instant) + 1000 * clockErrorSeconds);
  return {
    base: setup.base,
    errors: {
      altitudeZeroDeg: setup.altitudeZeroArcmin / 60,
      coneDeg: setup.coneArcmin / 60,
      axisSkewDeg: setup.axisSkewArcmin / 60,
    },
    dot: setup.dot,
    backlashArcmin: setup.backlashArcmin,
    finalApproach: setup.finalApproach,
    encoderStepArcsec: setup.encoderStepArcsec,
    slewDegPerSecond: setup.slewDegPerSecond,
    // Whoever runs such a scenario faces the tube to true north, with no needle.
    declinationDeg: 0,
    believed:
      clockErrorSeconds === 0 && believedPlace === undefined
        ? frame
        : skyFrameAt({ instant: believedAt, place: { ...place, ...believedPlace } }),
    disturbances: [],
  };
}

export const kitFrom = ({ kit }: RunGroups, { eyepiece }: Pick<Scenario, 'eyepiece'>): RunKit => ({
  name: 'Own telescope',
  tubeType: kit.tubeType,
  orientation: orientationOf(kit.tubeType),
  centringEyepiece: kit.centringEyepiece ?? eyepiece,
});
