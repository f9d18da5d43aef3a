import type { ItemDrawing } from '@/lib/drawings/drawing';
import { starRays } from '@/lib/optics/light-rays';
import { drawTube, type DrawnTube } from '@/lib/drawings/tube-drawing';
import { kindName, partName } from '@/lib/drawings/tube-words';
import { lightPast } from '@/lib/optics/light-gathered';
import { lightRay, lightTrain } from '@/lib/optics/light-path';
import { degreesToRadians } from '@/lib/units/angle';
import type { FigureKit } from '../figure-data';

export type LightSetting = {
  /** How much of the front a card covers, from above, per cent of its width. */
  coveredPercent: number;
  /** How far the star stands above the middle of the picture, arcminutes. */
  aboveArcmin: number;
};
export const startingLight: LightSetting = { coveredPercent: 0, aboveArcmin: 0 };

export const tubeOfKit = ({ name, tubeType, telescope, bench }: FigureKit): DrawnTube => ({
  name,
  tubeType,
  focalLengthMm: telescope.focalLengthMm,
  apertureMm: telescope.apertureMm,
  lengthMm: bench.tube.lengthMm,
  diameterMm: bench.tube.diameterMm,
});

export type LightFacts = {
  drawing: ItemDrawing;
  /** Of the light that comes in without a card. */
  percentLeft: number;
  /** How far from the focus of the middle the star's light meets. */
  besideMm: number;
  words: string;
};

/** One star's light through a tube, with a card before its front. */
export function lightFacts(
  tube: DrawnTube,
  { coveredPercent, aboveArcmin }: LightSetting,
): LightFacts {
  const train = lightTrain(tube);
  const cardDownToMm = tube.apertureMm * (0.5 - coveredPercent / 100);
  const tilt = -Math.tan(degreesToRadians(aboveArcmin / 60));
  const rays = starRays(tube, { count: 11, tilt, cardDownToMm });
  const share = lightPast({
    apertureMm: tube.apertureMm,
    shadowRadiusMm: train.shadowRadiusMm,
    cardDownToMm,
  });
  const { width, height, shapes } = drawTube(tube, {
    facing: 'left',
    rays,
    cardDownToMm,
    // A slim tube needs less room; a closed one, short and wide, is scaled by its height.
    height: tube.tubeType === 'refractor' ? 110 : 160,
  });
  const way = lightRay(train, { heightMm: 0.4 * tube.apertureMm })
    .met.map((part) => partName[part])
    .join(', then ');
  const besideMm = tube.focalLengthMm * Math.abs(tilt);
  const percentLeft = 100 * share;
  const star =
    aboveArcmin === 0
      ? 'The star stands in the middle, and all its light meets in one point.'
      : `The star stands ${String(Math.abs(aboveArcmin))}′ ${aboveArcmin > 0 ? 'above' : 'below'} the middle. All its light meets in one point again, ${besideMm.toFixed(1)} mm from the middle of the picture.`;
  const card =
    percentLeft < 0.5
      ? 'The card covers all of the front: no light is left.'
      : coveredPercent === 0
        ? 'Nothing covers the front.'
        : `The card leaves ${String(Math.round(percentLeft))}% of the light. What passes meets where it met before: the picture is whole, only dimmer.`;
  const words = `${tube.name}, the ${kindName[tube.tubeType]}: the light meets ${way}. ${percentLeft < 0.5 ? '' : star} ${card}`;
  return { drawing: { width, height, shapes, alternative: words }, percentLeft, besideMm, words };
}
