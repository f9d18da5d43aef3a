import type { Scenario } from '../pointing/scenario';
import type { StarCatalogue } from '../sky/catalogue';
import type { SkyFrame } from '../sky/sky-frame';
import type { RunKit, RunSetup } from './setup';

/** All that a run is computed from: a stored variant and the catalogue it was made with. */
export type RunInput = {
  scenario: Scenario;
  /** The true sky at the run's first instant. */
  frame: SkyFrame;
  kit: RunKit;
  setup: RunSetup;
  /** The first star, where it is given. */
  givenHip: number | null;
  /** In the order the mount proposes them, where it does. */
  proposals: readonly number[] | null;
  /** What to check the alignment on, best first: the page offers the first, and the perfect operator takes it. */
  thirdHips?: readonly number[];
  mayPause: boolean;
  catalogue: StarCatalogue;
};
