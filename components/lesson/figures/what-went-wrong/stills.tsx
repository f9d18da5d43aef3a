import type { FigureStills } from '../figure-registry';
import { PatternDrawing } from './pattern-drawing';
import { patternFacts } from './pattern-facts';
import { patternWords } from './pattern-words';
import { TwoSuspectsDrawing } from './two-suspects-drawing';
import { startingTest, testLandings } from './two-suspects-facts';
import { suspectsWords } from './two-suspects-words';

export const whatWentWrongStills: FigureStills<'what-went-wrong'> = {
  'fault-patterns': () => {
    const facts = patternFacts('lean', 3, 'before');
    return <PatternDrawing facts={facts} label={patternWords('lean', 'before', facts)} />;
  },
  'two-suspects': () => {
    const landings = testLandings(startingTest);
    return (
      <TwoSuspectsDrawing test={startingTest} landings={landings} label={suspectsWords(landings)} />
    );
  },
};
