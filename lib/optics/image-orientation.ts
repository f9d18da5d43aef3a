/** How the tube shows the sky in its eyepiece, seen by a person standing behind or beside it. */
export type ImageOrientation = 'true' | 'mirrored' | 'turned';
export type TubeType = 'refractor' | 'reflector' | 'maksutov-cassegrain';

/**
 * Beside the middle of a field: to the right along the horizon and upward. On the sky, or in a view
 * of it; which of them, the name says.
 */
export type FieldOffset = { rightArcmin: number; upArcmin: number };

const orientations: Record<TubeType, ImageOrientation> = {
  // With the erecting prism that a refractor of ours carries; straight through it would be turned.
  refractor: 'true',
  reflector: 'turned',
  // With a star diagonal: upright, right and left exchanged.
  'maksutov-cassegrain': 'mirrored',
};

/** How a tube shows the sky with the prism or diagonal that belongs to it. Design, "Field". */
export const orientationOf = (tubeType: TubeType): ImageOrientation => orientations[tubeType];

/** Where something that stands beside the tube's axis on the sky appears in the eyepiece. */
export function asSeen(onSky: FieldOffset, orientation: ImageOrientation): FieldOffset {
  switch (orientation) {
    case 'true':
      return { ...onSky };
    case 'mirrored':
      return { rightArcmin: -onSky.rightArcmin, upArcmin: onSky.upArcmin };
    case 'turned':
      return { rightArcmin: -onSky.rightArcmin, upArcmin: -onSky.upArcmin };
  }
}
