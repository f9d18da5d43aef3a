import type { ImageOrientation, TubeType } from '../../../optics/image-orientation';
import type { ShownTarget } from '../../../optics/sky-targets';
import type { Eyepiece } from '../../../pointing/scenario';
import type { BenchVariant } from '../bench-variant';

export const fieldTemplates = [
  /** A cluster is to be seen whole, as large as that allows. */
  'whole-cluster',
  /** A double star is to be seen as two; or no eyepiece here can do it. */
  'split-the-double',
  /** The Moon is to be seen whole, as large as that allows. */
  'whole-moon',
  /** An eyepiece without a label is in; how long a star took across its field tells which. */
  'by-the-drift',
  /** The dot stands beside the star by so much: the star must still be in the field, and where? */
  'lost-star',
] as const;
export type FieldTemplate = (typeof fieldTemplates)[number];

export type FieldEyepiece = Eyepiece & {
  id: string;
  /** Where the focuser must stand for it, millimetres from the middle of its travel. */
  focusAtMm: number;
};

/** What is asked beside eyepiece and focus. */
export const fieldAsks = ['field', 'drift', 'limit', 'way', 'view'] as const;
export type FieldAsk = (typeof fieldAsks)[number];

/** Right or left and up or down of the middle, in arcminutes; never on an axis. */
export type Aside = { rightArcmin: number; upArcmin: number };

/** One student's "Field". */
export type FieldVariant = BenchVariant<'field', FieldTemplate> & {
  tubeType: TubeType;
  orientation: ImageOrientation;
  telescope: { focalLengthMm: number; apertureMm: number };
  eyepieces: readonly FieldEyepiece[];
  target: ShownTarget | { kind: 'moon' | 'star'; id: string; name: string; declinationDeg: number };
  asks: readonly FieldAsk[];
  /** In 'by-the-drift': the eyepiece that is in, and the seconds that were timed. */
  unlabelled: { eyepieceId: string; timedSeconds: number } | null;
  /** For 'way': where a star stands in the view, in tenths of the field's radius. */
  starInView: { right: number; up: number };
  /** For 'view' and 'lost-star': where the star stands beside the dot, on the sky. */
  starOnSky: Aside;
  /** Makes the drawn stars of a cluster: the same for all who look at this task. */
  starsSeed: string;
};
