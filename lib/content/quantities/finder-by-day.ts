import { dotResidualArcmin } from '../../finder/dot-residual';
import { trueFieldArcmin } from '../../optics/true-field';
import type { Quantity } from '../reckoning';

/** What the lesson "finder-by-day" asks of the engine beyond what all lessons may. */
export const finderByDayQuantities: Readonly<Record<string, Quantity>> = {
  /** Arcminutes by which a finder so many millimetres beside the tube is off at the stars. */
  'dot-off': {
    takes: 'apart-mm distance-m',
    digits: 1,
    value: (words, { figure }) =>
      dotResidualArcmin({ apartMm: figure(words[0] ?? ''), distanceM: figure(words[1] ?? '') }),
  },
  /** Arcminutes from the middle to the edge, with an eyepiece of 50° of apparent field. */
  'field-edge': {
    takes: 'kit eyepiece-mm',
    digits: 0,
    value: (words, { kit, figure }) =>
      trueFieldArcmin(kit(words[0] ?? '').telescope, {
        focalLengthMm: figure(words[1] ?? ''),
        apparentFieldDeg: 50,
      }) / 2,
  },
};
