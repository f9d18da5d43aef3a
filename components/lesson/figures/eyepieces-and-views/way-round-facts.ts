import { asSeen, orientationOf, type FieldOffset } from '@/lib/optics/image-orientation';
import type { FigureKit } from '../figure-data';

/** Width of what is drawn, from the middle to the edge: Wren's 25 mm eyepiece. Arcminutes. */
export const drawnRadiusArcmin = 75;
export const stepArcmin = 15;
/** Where the star stands at first, beside the tube's axis. */
export const starAtFirst: FieldOffset = { rightArcmin: 45, upArcmin: 30 };

export const orientationSaid = {
  true: 'shows the sky as the eye sees it',
  mirrored: 'shows the sky upright, with right and left exchanged',
  turned: 'shows the sky turned upside down',
} as const;

/** The star on the sky after the tube has moved, and the same in the eyepiece. */
export function wayRoundFacts({ tubeType }: Pick<FigureKit, 'tubeType'>, tube: FieldOffset) {
  const onSky: FieldOffset = {
    rightArcmin: starAtFirst.rightArcmin - tube.rightArcmin,
    upArcmin: starAtFirst.upArcmin - tube.upArcmin,
  };
  const orientation = orientationOf(tubeType);
  const centred = Math.hypot(onSky.rightArcmin, onSky.upArcmin) < 1;
  return { onSky, orientation, inView: asSeen(onSky, orientation), centred };
}

/** "45′ to the right and 30′ up" */
export function offsetInWords({ rightArcmin, upArcmin }: FieldOffset): string {
  const parts = [
    ...(rightArcmin === 0
      ? []
      : [`${String(Math.abs(rightArcmin))}′ to the ${rightArcmin > 0 ? 'right' : 'left'}`]),
    ...(upArcmin === 0 ? [] : [`${String(Math.abs(upArcmin))}′ ${upArcmin > 0 ? 'up' : 'down'}`]),
  ];
  return parts.length === 0 ? 'in the middle' : parts.join(' and ');
}

export function wayRoundWords(
  kit: Pick<FigureKit, 'tubeType' | 'name'>,
  tube: FieldOffset,
): string {
  const { onSky, inView, orientation, centred } = wayRoundFacts(kit, tube);
  return centred
    ? `${kit.name} ${orientationSaid[orientation]}. The star is in the middle: there every view agrees.`
    : `${kit.name} ${orientationSaid[orientation]}. On the sky the star stands ${offsetInWords(onSky)} from the middle; in the eyepiece, ${offsetInWords(inView)}.`;
}
