import type { FigureStills } from '../figure-registry';
import { AltitudeDrawing } from './altitude-drawing';
import { altitudeFacts } from './altitude-facts';
import { altitudeWords } from './altitude-words';
import { FistsDrawing } from './fists-drawing';
import { pairFacts } from './pair-facts';
import { SeparationDrawing } from './separation-drawing';
import { startingAltitudeDeg, startingLatitudeDeg, startingPair } from './starts';

export const choosingAlignmentStarsStills: FigureStills<'choosing-alignment-stars'> = {
  'fists-up': () => <FistsDrawing label="Three fists reach from level to a star at 30°" />,
  'separation-and-hit-rate': ({ kits }) => {
    const kit = kits[0];
    if (kit === undefined) return null;
    const facts = pairFacts(kit, startingPair);
    return <SeparationDrawing stars={startingPair} facts={facts} label={facts.advice} />;
  },
  'altitude-limits': () => {
    const facts = altitudeFacts(startingAltitudeDeg, startingLatitudeDeg);
    return (
      <AltitudeDrawing
        altitudeDeg={startingAltitudeDeg}
        facts={facts}
        label={altitudeWords(startingAltitudeDeg, facts)}
      />
    );
  },
};
