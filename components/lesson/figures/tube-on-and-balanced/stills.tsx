import type { FigureStills } from '../figure-registry';
import { ClampPicture } from './clamp-picture';
import { PullPicture } from './pull-picture';
import { startingAltitudeDeg, startingOffMm, startingRaised } from './starts';
import { barOf } from './tube-facts';
import { clampWords, raisedWords } from './tube-words';

export const tubeOnAndBalancedStills: FigureStills<'tube-on-and-balanced'> = {
  'tube-in-its-clamp': ({ kits }) => {
    const kit = kits[0];
    if (kit === undefined) return null;
    const { leastMm, mostMm } = barOf(kit);
    const clampMm = (leastMm + mostMm) / 2 + startingOffMm;
    return (
      <ClampPicture
        kit={kit}
        on={[]}
        clampMm={clampMm}
        held
        label={clampWords(kit, [], clampMm, true)}
      />
    );
  },
  'pull-while-raised': () => (
    <PullPicture
      tube={startingRaised}
      altitudeDeg={startingAltitudeDeg}
      label={raisedWords(startingRaised, startingAltitudeDeg)}
    />
  ),
};
