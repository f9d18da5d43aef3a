import { showsWhole, splits, strongest } from '../../../optics/shows';
import type { FieldEyepiece, FieldVariant } from './field-variant';

/** Across, arcminutes; the mean, within a tenth of it. Any almanac. */
export const moonArcmin = 31;

/** How wide the eyepiece's field must at least be: what is to be seen whole, or a star beside the dot. */
export function widthNeededArcmin({ target, template, starOnSky }: FieldVariant): number {
  if (template === 'lost-star') return 2 * Math.hypot(starOnSky.rightArcmin, starOnSky.upArcmin);
  switch (target.kind) {
    case 'cluster':
      return target.sizeArcmin;
    case 'moon':
      return moonArcmin;
    default:
      return 0;
  }
}

/** Whether the eyepiece does what the task asks of it. */
export function does(variant: FieldVariant, eyepiece: FieldEyepiece): boolean {
  const { telescope, target, unlabelled } = variant;
  if (unlabelled !== null) return eyepiece.id === unlabelled.eyepieceId;
  return target.kind === 'double'
    ? splits(telescope, eyepiece, target.separationArcsec)
    : showsWhole(telescope, eyepiece, widthNeededArcmin(variant));
}

/** The one that does it best: of those that do, the strongest. Undefined where none does. */
export const bestEyepiece = (variant: FieldVariant): FieldEyepiece | undefined =>
  strongest(variant.eyepieces.filter((eyepiece) => does(variant, eyepiece)));
