import { standSteps } from '@/lib/drawings/step-words';
import type { FigureStills } from '../figure-registry';
import { ShapePicture } from '../what-is-in-the-case/shape-picture';
import { closingFacts, startingClosing } from './closing-facts';
import { stepsDrawing, stepsInWords } from './steps-facts';
import { startingTriangle, triangleFacts } from './triangle-facts';

export const standingItUpStills: FigureStills<'standing-it-up'> = {
  'what-rests-on-what': () => {
    const words = stepsInWords(standSteps);
    return <ShapePicture drawing={stepsDrawing(standSteps, words)} label={words} />;
  },
  'foot-triangle': () => {
    const { drawing, words } = triangleFacts(startingTriangle);
    return <ShapePicture drawing={drawing} label={words} />;
  },
  'closing-legs': () => {
    const { drawing, words } = closingFacts(startingClosing);
    return <ShapePicture drawing={drawing} label={words} />;
  },
};
