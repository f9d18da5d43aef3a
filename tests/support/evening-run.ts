import type { RunInput } from '@/lib/alignment/run-input';
import type { RunSetup } from '@/lib/alignment/setup';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { eveningScenario, frameOf } from './evening';

/** A faultless telescope that believes in the right sky. */
export const faultless = {
  base: { tiltDeg: 0, risesTowardsDeg: 0 },
  errors: { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 },
  dot: { rightArcmin: 0, upArcmin: 0 },
  backlashArcmin: { azimuth: 0, altitude: 0 },
  finalApproach: { azimuth: 1, altitude: 1 },
  encoderStepArcsec: 20,
  slewDegPerSecond: 3,
  declinationDeg: 0,
  disturbances: [],
} as const satisfies Omit<RunSetup, 'believed'>;

/** A telescope as it comes out of a box: a little wrong everywhere. */
export const honest = {
  ...faultless,
  base: { tiltDeg: 0.5, risesTowardsDeg: 130 },
  errors: { altitudeZeroDeg: 0.4, coneDeg: 0.12, axisSkewDeg: -0.06 },
  dot: { rightArcmin: 9, upArcmin: -6 },
  backlashArcmin: { azimuth: 6, altitude: 4 },
} as const satisfies Omit<RunSetup, 'believed'>;

/** A run over Ottawa's December evening with the kit Wren; all else by default. */
export function eveningRun({
  scenario: changes = {},
  setup = honest,
  ...task
}: {
  scenario?: object;
  setup?: Omit<RunSetup, 'believed'> & Partial<Pick<RunSetup, 'believed'>>;
} & Partial<Pick<RunInput, 'givenHip' | 'proposals' | 'mayPause' | 'thirdHips'>> = {}): RunInput {
  const scenario = eveningScenario(changes);
  const frame = frameOf(scenario);
  return {
    scenario,
    frame,
    kit: {
      name: 'Wren',
      tubeType: 'refractor',
      orientation: 'true',
      centringEyepiece: { focalLengthMm: 25, apparentFieldDeg: 50 },
    },
    setup: { believed: frame, ...setup },
    givenHip: null,
    proposals: null,
    mayPause: false,
    catalogue: loadCatalogue(),
    ...task,
  };
}
