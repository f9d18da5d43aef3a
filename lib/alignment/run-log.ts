import { z } from 'zod';

/** The five speeds on either side of a rocker strip's middle, degrees of axis a second; 0 stands still. */
export const rockerSpeedsDegPerSecond = [0, 0.004, 0.02, 0.1, 0.6, 3] as const;

const at = z.number().int().min(0).max(7_200_000);
const hip = z.number().int().positive();
const rocker = z.number().int().min(-5).max(5);
const moveArcmin = z.number().min(-10_800).max(10_800);
const readings = z.strictObject({
  azimuthDeg: z.number().min(0).lt(360),
  altitudeDeg: z.number().min(-90).max(180),
});

/**
 * One thing the learner did. `at` is the sky's own time in milliseconds since the run began: it
 * stands still while the sky is paused, and while the table waits for a decision. What moves between
 * two actions follows from the actions alone, so the log is small and the server can replay it.
 */
export const runActionSchema = z.discriminatedUnion('do', [
  /** By hand, with the clutches loose: where the tube faces (true azimuth) and how far it is up. */
  z.strictObject({
    at,
    do: z.literal('set-start'),
    azimuthDeg: z.number().min(0).lt(360),
    altitudeDeg: z.number().min(-20).max(90),
  }),
  /** The mount drives to where it believes the star is. Also for the third. */
  z.strictObject({ at, do: z.literal('go-to'), hip }),
  /** A rocker strip was moved: the speed of each axis from now on, by step. */
  z.strictObject({ at, do: z.literal('rockers'), azimuth: rocker, altitude: rocker }),
  /** A step button: each axis moves this far, quickly when far, and stops. */
  z.strictObject({
    at,
    do: z.literal('step'),
    azimuthArcmin: moveArcmin,
    altitudeArcmin: moveArcmin,
  }),
  z.strictObject({ at, do: z.literal('stop') }),
  /** Turns of the focuser's knob from where it is sharp for this learner's start. */
  z.strictObject({ at, do: z.literal('focus'), position: z.number().min(-10).max(10) }),
  /** "This is the star", with what the axes read to whoever pressed it. */
  z.strictObject({ at, do: z.literal('this-is-the-star'), readings }),
  /** "Another star": the proposal is turned down. */
  z.strictObject({ at, do: z.literal('another-star') }),
  /** Gives up what has been confirmed and starts again with the first star. */
  z.strictObject({ at, do: z.literal('start-again') }),
  /** The sky stood still for so long; only where that is allowed. */
  z.strictObject({
    at,
    do: z.literal('paused'),
    waitedMs: z.number().int().min(0).max(86_400_000),
  }),
  /** Whether the learner would trust this alignment. It ends the run. */
  z.strictObject({ at, do: z.literal('judge'), trust: z.boolean() }),
]);
export type RunAction = z.infer<typeof runActionSchema>;

/** Enough for any evening, though not for a hand that never rests: the record stops there, and says so. */
export const longestLog = 4000;
/** Characters of the longest action as JSON: a confirm, with each number at its longest. */
export const longestActionAsJson = 128;
/** Any log with so many actions is shorter, brackets and the word for it included. */
export const longestLogAsJson = longestLog * (longestActionAsJson + 1) + 20;
export const runLogSchema = z.array(runActionSchema).max(longestLog);
export type RunLog = readonly RunAction[];
