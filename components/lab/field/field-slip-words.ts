import type { SlipWords } from '@/components/grading/bench-result-view';
import type {
  FieldCriterion,
  FieldMistake,
  FieldSlip,
} from '@/lib/grading/bench/field/field-result';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import { nameOf, orientationInWords, placeInWords, wayInWords } from './field-words';

export const fieldCriterionName: Readonly<Record<FieldCriterion, string>> = {
  eyepiece: 'The eyepiece',
  focus: 'Focus',
  field: 'How much sky it shows',
  drift: 'How long a star takes across',
  limit: 'How close a pair it parts',
  way: 'Which way the tube goes',
  view: 'Where the star appears',
};

const arcmin = (value: number): string =>
  value < 10 ? `${value.toFixed(1)} arcminutes` : `${value.toFixed(0)} arcminutes`;
const times = (value: number): string => `${value.toFixed(0)} times`;
const arcsec = (value: number): string => `${value.toFixed(value < 10 ? 1 : 0)} arcseconds`;

const because: Readonly<Record<FieldMistake, string>> = {
  'half-of-it': 'That is half of it: the field was asked from edge to edge, not from the middle.',
  'apparent-field':
    'That is the apparent field, how wide the circle seems to the eye. Divided by the magnification it is sky.',
  'degrees-for-arcminutes':
    'That is right in degrees; it was asked in arcminutes, sixty to a degree.',
};

export function fieldSlipWords(slip: FieldSlip, variant: FieldVariant): SlipWords {
  switch (slip.code) {
    case 'field-too-small':
      return {
        what: `The field is too small: ${arcmin(slip.fieldArcmin)} of sky.`,
        why: `What is to be seen needs ${arcmin(slip.neededArcmin)} and a little room round it.`,
        next: 'Start with the longest eyepiece, which shows most sky, and go to a shorter one only when everything still fits.',
      };
    case 'could-be-larger':
      return {
        what: `It fits, but small: ${times(slip.magnification)}.`,
        why: `Another eyepiece here shows it whole at ${times(slip.bestMagnification)}.`,
        next: 'Of those that show all of it, take the one that magnifies most.',
      };
    case 'magnifies-too-little':
      return {
        what: `The two stars seem only ${arcmin(slip.apparentArcmin)} apart.`,
        why: `An eye needs about ${arcmin(slip.neededArcmin)} to see two with ease (common practice).`,
        next: 'Take a shorter eyepiece.',
      };
    case 'magnifies-too-much':
      return {
        what: `${times(slip.magnification)} is more than this aperture bears.`,
        why: `Beyond about ${times(slip.usefulMagnification)}, twice its millimetres, the image only grows dimmer and softer (common practice).`,
        next: 'Take the shortest eyepiece that stays below that.',
      };
    case 'closer-than-the-aperture-splits':
      return {
        what: 'No eyepiece can part this pair with this telescope.',
        why: `The stars stand ${arcsec(slip.separationArcsec)} apart; an aperture of ${String(variant.telescope.apertureMm)} mm parts nothing closer than ${arcsec(slip.dawesArcsec)} (Dawes).`,
        next: 'Reckon 116 over the aperture in millimetres first: it saves looking for what cannot be seen.',
      };
    case 'it-could-be-done':
      return {
        what: 'It can be done with what is on the bench.',
        why: `With ${nameOf(variant, slip.bestId)} the two are far enough apart, and the aperture parts them.`,
        next: 'Reckon both: 116 over the aperture, and the separation times the magnification.',
      };
    case 'wrong-eyepiece-in':
      return {
        what: 'It is not that one.',
        why: `A star would take ${slip.saidSeconds.toFixed(0)} seconds across its field, and ${String(slip.timedSeconds)} were timed.`,
        next: 'Turn the seconds into sky first (15 arcseconds a second, times the cosine of the declination), then look for the eyepiece with that field.',
      };
    case 'out-of-focus':
      return {
        what: `A star was left as a disc that seems ${arcmin(slip.discArcmin)} wide.`,
        why: 'Each eyepiece has its own place of best focus, and a prism or diagonal moves it.',
        next: 'After each change of eyepiece turn the focuser until stars are as small as they get.',
      };
    case 'field-off':
      return {
        what: `You reckoned ${arcmin(slip.saidArcmin)} of sky; it shows ${arcmin(slip.fieldArcmin)}.`,
        why:
          slip.slip === null
            ? 'It is the apparent field over the magnification.'
            : because[slip.slip],
        next: 'Magnification first: the telescope’s focal length over the eyepiece’s.',
      };
    case 'drift-off':
      return {
        what: `You reckoned ${slip.saidSeconds.toFixed(0)} seconds; it takes ${slip.driftSeconds.toFixed(0)}.`,
        why: slip.forgotDeclination
          ? 'That holds at the celestial equator. Nearer the pole stars go round a smaller circle, so they are slower.'
          : 'The sky turns by 15 arcseconds a second at the equator.',
        next: 'Divide the field in arcseconds by 15, and by the cosine of the declination.',
      };
    case 'limit-off':
      return {
        what: `You reckoned ${arcsec(slip.saidArcsec)}; this aperture parts stars down to ${arcsec(slip.dawesArcsec)}.`,
        why: 'How fine a telescope can see is set by how wide it is, not by the eyepiece (Dawes).',
        next: 'Divide 116 by the aperture in millimetres.',
      };
    case 'way-wrong':
      return {
        what: `The tube must go ${wayInWords(slip.right)}, not ${wayInWords(slip.said)}.`,
        why: `${slip.asInTrueView ? 'You went by what you saw as if the view were true. ' : ''}The view of ${variant.kitName} is ${orientationInWords[variant.orientation]}.`,
        next: 'Move the tube a little one way and watch which way the star goes; then you know the view.',
      };
    case 'view-wrong':
      return {
        what: `The star appears in the ${placeInWords(slip.right)}, not the ${placeInWords(slip.said)}.`,
        why: `${slip.asInTrueView ? 'That is where it stands on the sky. ' : ''}The view of ${variant.kitName} is ${orientationInWords[variant.orientation]}.`,
        next: 'Past the dot you see the sky as it is; in the eyepiece as the tube turns it.',
      };
  }
}
