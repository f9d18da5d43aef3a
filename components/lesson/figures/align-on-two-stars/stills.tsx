import { orientationOf } from '@/lib/optics/image-orientation';
import type { FigureStills } from '../figure-registry';
import { CentringDrawing } from './centring-drawing';
import { centringFacts, centringStart } from './centring-facts';
import { centringFieldRadius } from './centring-field';
import { centringWords } from './centring-words';
import { SpoiltDrawing } from './spoilt-drawing';
import { spoiltFacts, startingThird } from './spoilt-facts';
import { saidByMount } from './spoilt-words';

export const alignOnTwoStarsStills: FigureStills<'align-on-two-stars'> = {
  'centring-and-play': ({ kits }) => {
    const kit = kits[0];
    if (kit === undefined) return null;
    const fieldRadiusArcmin = centringFieldRadius(kit);
    const orientation = orientationOf(kit.tubeType);
    const facts = centringFacts(centringStart, { orientation, fieldRadiusArcmin });
    return (
      <CentringDrawing
        facts={facts}
        fieldRadiusArcmin={fieldRadiusArcmin}
        label={centringWords(facts)}
      />
    );
  },
  'agree-and-third': ({ kits }) => {
    const fieldRadiusArcmin = kits[0]?.fieldRadiusArcmin ?? 27;
    const facts = spoiltFacts(
      { computer: 'solved-zero', fieldRadiusArcmin },
      'middle',
      startingThird,
    );
    return (
      <SpoiltDrawing
        facts={facts}
        third={startingThird}
        fieldRadiusArcmin={fieldRadiusArcmin}
        label={saidByMount(facts.outcome)}
      />
    );
  },
};
