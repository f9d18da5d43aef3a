import type { FigureStills } from '../figure-registry';
import { lightFacts, startingLight, tubeOfKit } from './light-facts';
import { ShapePicture } from './shape-picture';
import { startingWidthMm, widthFacts } from './width-facts';

export const whatIsInTheCaseStills: FigureStills<'what-is-in-the-case'> = {
  'light-through-the-tube': ({ kits }) => (
    <div className="grid gap-3">
      {kits.map((kit) => {
        const { drawing, words } = lightFacts(tubeOfKit(kit), startingLight);
        return <ShapePicture key={kit.id} drawing={drawing} label={words} />;
      })}
    </div>
  ),
  'width-and-light': ({ kits }) => {
    const { drawing, words } = widthFacts(startingWidthMm, kits);
    return <ShapePicture drawing={drawing} label={words} />;
  },
};
