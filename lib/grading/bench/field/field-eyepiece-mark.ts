import {
  dawesLimitArcsec,
  highestUsefulMagnification,
  magnification,
} from '../../../optics/magnification';
import { driftTimeSeconds } from '../../../optics/drift-time';
import { apparentSeparationArcmin, easilyTwoArcmin, roomRound } from '../../../optics/shows';
import { trueFieldArcmin } from '../../../optics/true-field';
import { does, widthNeededArcmin } from '../../../variants/bench/field/field-eyepieces';
import type { FieldEyepiece, FieldVariant } from '../../../variants/bench/field/field-variant';
import { bandShare } from '../band-share';
import type { FieldSlip } from './field-result';

type Judged = { share: number; slip: FieldSlip | null };

/** Another eyepiece that does it too earns this much, where it magnifies much less than the best. */
const shareOfWeaker = 0.7;
/** Within so much of the best magnification nobody sees the difference. */
const asGoodAs = 0.75;

/** What the choice of eyepiece is worth, 0–1; `chosen` null says that none will do. */
export function judgeEyepiece(
  variant: FieldVariant,
  chosen: FieldEyepiece | null,
  best: FieldEyepiece | undefined,
): Judged {
  const { telescope, target, unlabelled } = variant;
  if (chosen === null)
    return best === undefined
      ? { share: 1, slip: null }
      : { share: 0, slip: { code: 'it-could-be-done', bestId: best.id } };
  if (unlabelled !== null) {
    const said = driftTimeSeconds(trueFieldArcmin(telescope, chosen), target.declinationDeg);
    const { timedSeconds, eyepieceId } = unlabelled;
    return chosen.id === eyepieceId
      ? { share: 1, slip: null }
      : { share: 0, slip: { code: 'wrong-eyepiece-in', saidSeconds: said, timedSeconds } };
  }
  if (does(variant, chosen)) return judgeWorking(variant, chosen, best);
  return target.kind === 'double'
    ? judgeDouble(variant, chosen, target.separationArcsec)
    : judgeTooSmall(variant, chosen);
}

/** It does what is asked. To see a thing whole, the larger it is seen the better; a pair is split or not. */
function judgeWorking(
  { telescope, target }: FieldVariant,
  chosen: FieldEyepiece,
  best: FieldEyepiece | undefined,
): Judged {
  if (best === undefined || target.kind === 'double') return { share: 1, slip: null };
  const power = magnification(telescope, chosen);
  const bestPower = magnification(telescope, best);
  if (power >= asGoodAs * bestPower) return { share: 1, slip: null };
  return {
    share: shareOfWeaker,
    slip: { code: 'could-be-larger', magnification: power, bestMagnification: bestPower },
  };
}

function judgeTooSmall(variant: FieldVariant, chosen: FieldEyepiece): Judged {
  const fieldArcmin = trueFieldArcmin(variant.telescope, chosen);
  const neededArcmin = widthNeededArcmin(variant);
  // Just wide enough, without the little room round it, is half of it.
  const share = 0.5 * bandShare(roomRound - fieldArcmin / neededArcmin, { full: 0.1, zero: 0.3 });
  return { share, slip: { code: 'field-too-small', fieldArcmin, neededArcmin } };
}

function judgeDouble(
  { telescope }: FieldVariant,
  chosen: FieldEyepiece,
  separationArcsec: number,
): Judged {
  const dawesArcsec = dawesLimitArcsec(telescope);
  if (separationArcsec < dawesArcsec)
    return {
      share: 0,
      slip: { code: 'closer-than-the-aperture-splits', separationArcsec, dawesArcsec },
    };
  const power = magnification(telescope, chosen);
  const usefulMagnification = highestUsefulMagnification(telescope);
  if (power > usefulMagnification)
    return {
      share: 0.5,
      slip: { code: 'magnifies-too-much', magnification: power, usefulMagnification },
    };
  const apparentArcmin = apparentSeparationArcmin(telescope, chosen, separationArcsec);
  return {
    share: 0.5 * bandShare(easilyTwoArcmin - apparentArcmin, { full: 0, zero: 2 }),
    slip: { code: 'magnifies-too-little', apparentArcmin, neededArcmin: easilyTwoArcmin },
  };
}
