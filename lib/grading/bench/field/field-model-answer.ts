import { driftTimeSeconds } from '../../../optics/drift-time';
import { dawesLimitArcsec } from '../../../optics/magnification';
import { trueFieldArcmin } from '../../../optics/true-field';
import { bestEyepiece } from '../../../variants/bench/field/field-eyepieces';
import type { FieldVariant } from '../../../variants/bench/field/field-variant';
import type { FieldSubmission } from './field-submission';
import { rightView, rightWay } from './grade-field';

/** What an observer who makes no mistake hands in. */
export function fieldModelAnswer(variant: FieldVariant): FieldSubmission {
  const { asks, telescope, target } = variant;
  const best = bestEyepiece(variant);
  const fieldArcmin = best === undefined ? null : trueFieldArcmin(telescope, best);
  const rounded = (value: number): number => Math.round(value * 10) / 10;
  return {
    eyepieceId: best?.id ?? 'none',
    focusMm: best?.focusAtMm ?? 0,
    fieldArcmin: asks.includes('field') && fieldArcmin !== null ? rounded(fieldArcmin) : null,
    driftSeconds:
      asks.includes('drift') && fieldArcmin !== null
        ? Math.round(driftTimeSeconds(fieldArcmin, target.declinationDeg))
        : null,
    limitArcsec: asks.includes('limit') ? rounded(dawesLimitArcsec(telescope)) : null,
    way: asks.includes('way') ? rightWay(variant) : null,
    view: asks.includes('view') ? rightView(variant) : null,
  };
}
