import type { FigureStills } from '../figure-registry';
import { headWords } from './bubble-words';
import { HalfTurnDrawing } from './half-turn-drawing';
import { halfTurnWords, vials } from './half-turn-facts';
import { grounds, headFacts } from './head-facts';
import { LeanDrawing } from './lean-drawing';
import { leanFacts } from './lean-facts';
import { leanWords } from './lean-words';
import { LegsDrawing } from './legs-drawing';
import { startingFromHighDeg, startingLeanDeg } from './starts';

export const levelEnoughStills: FigureStills<'level-enough'> = {
  'three-legs-one-bubble': ({ kits }) => {
    const [kit, ground] = [kits[0], grounds[0]];
    if (kit === undefined || ground === undefined) return null;
    const facts = headFacts(ground, kit.bench.tripod, [0, 0, 0]);
    return (
      <LegsDrawing
        facts={facts}
        changes={[0, 0, 0]}
        hinted={null}
        label={`From above, leg A at 12 o’clock, B at 4, C at 8. ${headWords(facts)}`}
      />
    );
  },
  'vial-half-turn': () => {
    const one = vials[0];
    if (one === undefined) return null;
    // On paper nothing turns: both places at once.
    return <HalfTurnDrawing one={one} turned seenBoth label={halfTurnWords(one, true, true)} />;
  },
  'cost-of-a-lean': ({ kits }) => {
    const kit = kits[0];
    if (kit === undefined) return null;
    const facts = leanFacts(kit, startingLeanDeg, startingFromHighDeg);
    return <LeanDrawing facts={facts} label={leanWords(kit.name, startingLeanDeg, facts)} />;
  },
};
