import type { FigureStills } from '../figure-registry';
import { ScrewDrawing } from './screw-drawing';
import { dotAtFirst, screwWords } from './screw-facts';
import { SightDrawing } from './sight-drawing';
import { sightFacts, sightWords, startingDistanceM } from './sight-facts';

export const finderByDayStills: FigureStills<'finder-by-day'> = {
  'two-lines-of-sight': ({ kits }) => {
    const kit = kits[0];
    const eyepiece = kit?.eyepieces.at(-1);
    if (kit === undefined || eyepiece === undefined) return null;
    return (
      <SightDrawing
        distanceM={startingDistanceM}
        {...sightFacts(kit, eyepiece, startingDistanceM)}
        label={sightWords(kit, eyepiece, startingDistanceM)}
      />
    );
  },
  'dot-and-screws': () => <ScrewDrawing dot={dotAtFirst} label={screwWords([0, 0])} />,
};
