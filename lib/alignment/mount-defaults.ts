import type { RunSetup } from './setup';

/** What is the same for every mount of ours unless a scenario says otherwise. Our own, no source. */
export const mountDefaults = {
  finalApproach: { azimuth: 1, altitude: 1 },
  encoderStepArcsec: 15,
  slewDegPerSecond: 3,
} as const satisfies Partial<RunSetup>;
