import { asSeen, type ImageOrientation } from '../../optics/image-orientation';

/** To which side of the middle and how: 1 is right or up, −1 left or down. */
export type Way = { right: 1 | -1; up: 1 | -1 };

export const allWays: readonly Way[] = [
  { right: 1, up: 1 },
  { right: -1, up: 1 },
  { right: 1, up: -1 },
  { right: -1, up: -1 },
];

export const sameWay = (one: Way, other: Way): boolean =>
  one.right === other.right && one.up === other.up;

const sign = (value: number): 1 | -1 => (value > 0 ? 1 : -1);

/** Where a way on the sky points in a view. Each view undoes itself: the same leads from view to sky. */
export function throughView({ right, up }: Way, orientation: ImageOrientation): Way {
  const seen = asSeen({ rightArcmin: right, upArcmin: up }, orientation);
  return { right: sign(seen.rightArcmin), up: sign(seen.upArcmin) };
}

/** "upper right" */
export const corner = ({ right, up }: Way): string =>
  `${up > 0 ? 'upper' : 'lower'} ${right > 0 ? 'right' : 'left'}`;
/** "to the right and up" */
export const toThe = ({ right, up }: Way): string =>
  `to the ${right > 0 ? 'right' : 'left'} and ${up > 0 ? 'up' : 'down'}`;

export const viewInWords: Readonly<Record<ImageOrientation, string>> = {
  true: 'shows the sky as the eye does',
  mirrored: 'shows the sky upright, with right and left exchanged',
  turned: 'shows the sky turned upside down, right and left exchanged too',
};

const orientations: readonly ImageOrientation[] = ['true', 'mirrored', 'turned'];

/** Why a corner is not the right one: which view it would be right for. */
export function wrongWay(
  { from, said, orientation }: { from: Way; said: Way; orientation: ImageOrientation },
  kitName: string,
): { reason: string; misconception?: 'view-always-upside-down' } {
  const fits = orientations.find((one) => sameWay(throughView(from, one), said));
  const own = `${kitName} ${viewInWords[orientation]}.`;
  switch (fits) {
    case 'true':
      return { reason: `That takes the view for the sky as the eye sees it. ${own}` };
    case 'mirrored':
      return { reason: `That exchanges right and left only, as a star diagonal does. ${own}` };
    case 'turned':
      return {
        reason: `That turns the view upside down, as a reflector does. ${own}`,
        misconception: 'view-always-upside-down',
      };
    default:
      return { reason: `That exchanges up and down only. No telescope here does that. ${own}` };
  }
}
