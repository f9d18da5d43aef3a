import { magnification } from '@/lib/optics/magnification';
import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import { eyepieceIn } from './field-view';
import { eyepieceName } from './field-words';

/** Three hints, each telling more. */
export function fieldHints(variant: FieldVariant, draft: FieldDraft): readonly string[] {
  const { telescope, template } = variant;
  const eyepiece = eyepieceIn(variant, draft) ?? variant.eyepieces[0];
  const first =
    'Magnification is the telescope’s focal length over the eyepiece’s. More of it shows less sky.';
  const power =
    eyepiece === undefined || variant.unlabelled !== null
      ? 'The sky it shows is the apparent field over the magnification.'
      : `With the ${eyepieceName(eyepiece)}: ${String(telescope.focalLengthMm)} over ${String(eyepiece.focalLengthMm)} is ${magnification(telescope, eyepiece).toFixed(0)} times. The sky it shows is ${String(eyepiece.apparentFieldDeg)}° over that.`;
  return [first, power, last[template]];
}

const last: Readonly<Record<FieldVariant['template'], string>> = {
  'whole-cluster':
    'The sky turns by 15 arcseconds a second at the equator, by less towards the pole: divide by the cosine of the declination. In a turned view push the tube against what you see, in both directions.',
  'split-the-double':
    'Two stars are parted if they stand further apart than 116 over the aperture in millimetres, in arcseconds, and seem at least 4 arcminutes apart once magnified. Beyond twice the aperture in millimetres nothing more is gained.',
  'whole-moon':
    'Leave a little room: a field a tenth wider than the Moon. In a mirrored view only left and right are exchanged.',
  'by-the-drift':
    'Seconds times 15, times the cosine of the declination, are the field in arcseconds; a sixtieth of that is arcminutes. Which eyepiece has that field?',
  'lost-star':
    'The star must lie within half the field of the middle. On the sky it is where the dot shows it; the eyepiece of this telescope may turn that round.',
};
