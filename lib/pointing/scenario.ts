import { z } from 'zod';

/** A point of the site's skyline. Straight lines in azimuth join the points, round the circle. */
export type HorizonPoint = { azimuthDeg: number; altitudeDeg: number };
/** A patch of cloud: a circle on the sky. */
export type CloudPatch = { azimuthDeg: number; altitudeDeg: number; radiusDeg: number };

const azimuthDeg = z.number().min(0).lt(360);
const arcmin = z.number().min(0).max(600);

export const telescopeSchema = z.strictObject({
  focalLengthMm: z.number().positive().max(20_000),
  apertureMm: z.number().positive().max(2_000),
  /** Whether the pointing computer takes the altitude zero as given or solves for it. */
  computer: z.enum(['fixed-zero', 'solved-zero']),
  /** Standard deviations of what the kit gets wrong. */
  centringArcmin: arcmin.positive(),
  altitudeZeroArcmin: arcmin,
  coneArcmin: arcmin,
  axisSkewArcmin: arcmin,
});

/** The eyepiece the targets will be looked at with, not the one used for centring. */
export const eyepieceSchema = z.strictObject({
  focalLengthMm: z.number().positive().max(200),
  apparentFieldDeg: z.number().positive().max(130),
});

/** The scenario as people and files write it: a public format, names are kept. */
export const scenarioSchema = z.strictObject({
  place: z.strictObject({
    latitudeDeg: z.number().min(-90).max(90),
    longitudeDeg: z.number().min(-180).max(180),
    elevationM: z.number().min(-500).max(9000).default(0),
  }),
  horizon: z
    .array(z.strictObject({ azimuthDeg, altitudeDeg: z.number().min(0).max(90) }))
    .max(72)
    .default([]),
  /** Wall clock at the place: "2026-12-05T19:30", with an offset only where the hour comes twice. */
  localTime: z.string(),
  /** IANA name. */
  timeZone: z.string(),
  telescope: telescopeSchema,
  eyepiece: eyepieceSchema,
  sky: z
    .strictObject({
      darkestLimitMagnitude: z.number().min(2).max(7).default(5),
      extinction: z.number().min(0).max(2).default(0.25),
    })
    .prefault({}),
  clouds: z
    .array(
      z.strictObject({
        azimuthDeg,
        altitudeDeg: z.number().min(0).max(90),
        radiusDeg: z.number().positive().max(90),
      }),
    )
    .max(40)
    .default([]),
  settings: z
    .strictObject({
      faintestMagnitude: z.number().min(-1).max(5).default(2.5),
      lowestAltitudeDeg: z.number().min(0).max(85).default(20),
      highestAltitudeDeg: z.number().min(5).max(90).default(70),
      horizonMarginDeg: z.number().min(0).max(20).default(2),
      moonDistanceDeg: z.number().min(0).max(90).default(5),
    })
    .prefault({}),
});

export type Telescope = z.infer<typeof telescopeSchema>;
export type Eyepiece = z.infer<typeof eyepieceSchema>;
export type ScenarioSettings = Scenario['settings'];
/** A scenario with every default filled in. */
export type Scenario = z.output<typeof scenarioSchema>;
