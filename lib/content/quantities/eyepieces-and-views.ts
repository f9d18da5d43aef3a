import { driftTimeSeconds } from '../../optics/drift-time';
import { exitPupilMm, highestUsefulMagnification, magnification } from '../../optics/magnification';
import { trueFieldArcmin } from '../../optics/true-field';
import type { Quantity, ReckoningSources } from '../reckoning';

/** A kit and the focal length of one of its kind of eyepiece, 50° of apparent field. */
function opticsOf(words: readonly string[], { kit, figure }: ReckoningSources) {
  const { telescope } = kit(words[0] ?? '');
  const eyepiece = { focalLengthMm: figure(words[1] ?? ''), apparentFieldDeg: 50 };
  return { telescope, eyepiece };
}

/** What the lesson "eyepieces-and-views" asks of the engine beyond what all lessons may. */
export const eyepiecesAndViewsQuantities: Readonly<Record<string, Quantity>> = {
  magnified: {
    takes: 'kit eyepiece-mm',
    digits: 0,
    value: (words, sources) => {
      const { telescope, eyepiece } = opticsOf(words, sources);
      return magnification(telescope, eyepiece);
    },
  },
  /** Arcminutes from edge to edge. */
  'field-arcmin': {
    takes: 'kit eyepiece-mm',
    digits: 0,
    value: (words, sources) => {
      const { telescope, eyepiece } = opticsOf(words, sources);
      return trueFieldArcmin(telescope, eyepiece);
    },
  },
  /** Width of the beam that enters the eye, millimetres. */
  'beam-mm': {
    takes: 'kit eyepiece-mm',
    digits: 1,
    value: (words, sources) => {
      const { telescope, eyepiece } = opticsOf(words, sources);
      return exitPupilMm(telescope, eyepiece);
    },
  },
  /** Minutes of time from edge to edge, motors off, at a declination in degrees. */
  'drift-minutes': {
    takes: 'kit eyepiece-mm declination',
    digits: 1,
    value: (words, sources) => {
      const { telescope, eyepiece } = opticsOf(words, sources);
      const field = trueFieldArcmin(telescope, eyepiece);
      return driftTimeSeconds(field, sources.figure(words[2] ?? '')) / 60;
    },
  },
  'most-useful-times': {
    takes: 'kit',
    digits: 0,
    value: (words, { kit }) => highestUsefulMagnification(kit(words[0] ?? '').telescope),
  },
};
