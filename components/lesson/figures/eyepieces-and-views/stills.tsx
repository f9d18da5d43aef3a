import type { FigureStills } from '../figure-registry';
import { ViewDrawing } from './view-drawing';
import { viewFacts, viewInWords, viewTargets } from './view-facts';
import { WayRoundDrawing } from './way-round-drawing';
import { wayRoundFacts, wayRoundWords } from './way-round-facts';

export const eyepiecesAndViewsStills: FigureStills<'eyepieces-and-views'> = {
  'sky-in-the-eyepiece': ({ kits }) => {
    const kit = kits[0];
    const [eyepiece, target] = [kit?.eyepieces[0], viewTargets[0]];
    if (kit === undefined || eyepiece === undefined || target === undefined) return null;
    const facts = viewFacts(kit, eyepiece, target);
    return (
      <ViewDrawing
        target={target}
        fieldArcmin={facts.fieldArcmin}
        label={`${facts.verdict} ${viewInWords(kit, eyepiece, target, facts)}`}
      />
    );
  },
  'which-way-round': ({ kits }) => {
    const kit = kits[0];
    if (kit === undefined) return null;
    const tube = { rightArcmin: 0, upArcmin: 0 };
    const { onSky, orientation } = wayRoundFacts(kit, tube);
    return (
      <WayRoundDrawing onSky={onSky} orientation={orientation} label={wayRoundWords(kit, tube)} />
    );
  },
};
