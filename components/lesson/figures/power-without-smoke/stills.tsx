import type { FigureStills } from '../figure-registry';
import { coldNight, coldShapes, coldWords, startingCold } from './cold-facts';
import { Drawn } from './drawn';
import { labelDrawing, labelWords, startingLabel } from './label-facts';
import { rowFacts, rowWords, startingRow } from './row-facts';

export const powerWithoutSmokeStills: FigureStills<'power-without-smoke'> = {
  'plate-and-label': () => {
    const drawing = labelDrawing(startingLabel);
    return <Drawn {...drawing} label={`${drawing.alternative} ${labelWords(startingLabel)}`} />;
  },
  'row-of-cells': () => {
    const facts = rowFacts(startingRow);
    return <Drawn width={320} height={216} shapes={facts.shapes} label={rowWords(facts)} />;
  },
  'cells-in-the-cold': () => {
    const ahead = coldNight(startingCold);
    return (
      <Drawn
        width={320}
        height={160}
        shapes={coldShapes(ahead)}
        label={coldWords(startingCold, ahead)}
      />
    );
  },
};
