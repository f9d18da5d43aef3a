import { drawStand } from '@/lib/drawings/draw-stand';
import type { FigureStills } from '../figure-registry';
import { Drawn } from '../power-without-smoke/drawn';
import { dewFacts, dewShapes, dewWords, startingDew } from './dew-facts';
import { duskFacts, duskShapes, duskWords, startingDusk } from './dusk-facts';
import { eyesShapes, eyesWords, startingEyes } from './eyes-facts';
import { leadsOf, packingAtStart, packWords, standOf } from './pack-facts';

export const theNightStills: FigureStills<'the-night'> = {
  'from-sunset-to-dark': () => {
    const facts = duskFacts(startingDusk);
    return (
      <Drawn
        width={320}
        height={152}
        shapes={duskShapes(facts)}
        label={duskWords(startingDusk, facts)}
      />
    );
  },
  'eyes-in-the-dark': () => (
    <Drawn
      width={320}
      height={198}
      shapes={eyesShapes(startingEyes)}
      label={eyesWords(startingEyes)}
    />
  ),
  'dew-on-glass': () => {
    const facts = dewFacts(startingDew);
    return (
      <Drawn
        width={320}
        height={192}
        shapes={dewShapes(startingDew, facts)}
        label={dewWords(startingDew, facts)}
      />
    );
  },
  'packing-up': () => (
    <Drawn {...drawStand(standOf([]), leadsOf([]))} label={packWords(packingAtStart)} />
  ),
};
