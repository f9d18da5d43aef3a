import type { FieldTemplate } from '../../../variants/bench/field/field-variant';
import type { BenchResult } from '../bench-result';
import type { FieldSubmission, FieldWay } from './field-submission';

export type FieldCriterion = 'eyepiece' | 'focus' | 'field' | 'drift' | 'limit' | 'way' | 'view';
/** Nothing in this lab can hurt anybody. */
type FieldGate = { id: never };

export type FieldSlip =
  /** Does not show all of it: so much field for so large a thing. */
  | { code: 'field-too-small'; fieldArcmin: number; neededArcmin: number }
  /** Shows it, but another one here shows it larger. */
  | { code: 'could-be-larger'; magnification: number; bestMagnification: number }
  /** The two stars stay one to the eye. */
  | { code: 'magnifies-too-little'; apparentArcmin: number; neededArcmin: number }
  /** More than the aperture can use. */
  | { code: 'magnifies-too-much'; magnification: number; usefulMagnification: number }
  | { code: 'closer-than-the-aperture-splits'; separationArcsec: number; dawesArcsec: number }
  | { code: 'it-could-be-done'; bestId: string }
  | { code: 'wrong-eyepiece-in'; saidSeconds: number; timedSeconds: number }
  | { code: 'out-of-focus'; discArcmin: number }
  | { code: 'field-off'; saidArcmin: number; fieldArcmin: number; slip: FieldMistake | null }
  | { code: 'drift-off'; saidSeconds: number; driftSeconds: number; forgotDeclination: boolean }
  | { code: 'limit-off'; saidArcsec: number; dawesArcsec: number }
  | { code: 'way-wrong'; said: FieldWay; right: FieldWay; asInTrueView: boolean }
  | { code: 'view-wrong'; said: FieldWay; right: FieldWay; asInTrueView: boolean };

/** A way of reckoning that gives just the number that was said. */
export type FieldMistake = 'half-of-it' | 'apparent-field' | 'degrees-for-arcminutes';

export type FieldResult = BenchResult<
  'field',
  FieldTemplate,
  FieldCriterion,
  FieldGate,
  FieldSlip
> & {
  /** For the picture. */
  chosen: FieldSubmission;
  /** What would have been best; 'none' where nothing here does it. */
  bestEyepieceId: string;
  /** Of the eyepiece that is asked about: the one that is in, else the chosen, else the best. */
  fieldArcmin: number;
  driftSeconds: number;
  dawesArcsec: number;
};
