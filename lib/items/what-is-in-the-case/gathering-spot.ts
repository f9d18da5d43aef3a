import { lightTrain, type Spot } from '../../optics/light-path';
import type { DrawnTube } from '../../drawings/tube-drawing';

type GatheringSpot = {
  spot: Spot;
  where: (facing: 'left' | 'right') => string;
  reason: string;
  /** Where the eye goes. */
  lookIn: Spot;
};

/** The lens or the mirror that gathers a tube's light, as a place to point at. */
export function gatheringSpot(tube: DrawnTube): GatheringSpot {
  const { elements } = lightTrain(tube);
  const eyepiece = elements.find(({ part }) => part === 'eyepiece');
  const lookIn = eyepiece?.at ?? { xMm: 0, yMm: 0 };
  const mirror = elements.find(({ part }) => part === 'main-mirror');
  if (mirror === undefined) {
    const at = elements[0]?.at ?? { xMm: 0, yMm: 0 };
    return {
      spot: at,
      lookIn,
      where: (facing) => `inside the tube, near its ${facing}-hand end`,
      reason: 'That is the front lens: it gathers the light.',
    };
  }
  return {
    lookIn,
    // Below the hole that a closed tube's mirror has in its middle.
    spot: { xMm: mirror.at.xMm, yMm: -0.65 * mirror.halfMm },
    where: (facing) => `inside the tube, at its ${facing === 'left' ? 'right' : 'left'}-hand end`,
    reason: 'That is the main mirror: it gathers the light.',
  };
}
