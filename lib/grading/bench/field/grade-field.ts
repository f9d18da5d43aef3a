import { driftTimeSeconds } from '../../../optics/drift-time';
import { blurArcmin } from '../../../optics/focus';
import { asSeen } from '../../../optics/image-orientation';
import { dawesLimitArcsec, magnification } from '../../../optics/magnification';
import { trueFieldArcmin } from '../../../optics/true-field';
import { bestEyepiece } from '../../../variants/bench/field/field-eyepieces';
import type {
  FieldAsk,
  FieldEyepiece,
  FieldVariant,
} from '../../../variants/bench/field/field-variant';
import type { BenchGrading } from '../bench-result';
import { judgeEyepiece } from './field-eyepiece-mark';
import type { FieldCriterion, FieldMistake, FieldResult, FieldSlip } from './field-result';
import type { FieldSubmission, FieldWay } from './field-submission';
import { bandShare } from '../band-share';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const fieldGraderVersion = 1;

const eyepieceMark = 40;
const focusMark = 10;
/** For all that is asked beside them, in equal parts. */
const asksMark = 50;

/** How wide a star may look, magnified, in arcminutes: full marks up to the one, none from the other. */
const sharpArcmin = 6;
const blurredArcmin = 60;

/** Shares of the right number: full marks within the one, none beyond the other. */
const fieldBand = { full: 0.05, zero: 0.3 };
const driftBand = { full: 0.1, zero: 0.5 };

type Part = { id: FieldCriterion; possible: number; share: number; slip: FieldSlip | null };

/** Marks one answer to "Field" from the stored variant alone, so that a regrade is a replay. */
export function gradeField({
  variant,
  submission,
}: {
  variant: FieldVariant;
  submission: FieldSubmission;
}): BenchGrading<FieldResult> {
  const chosen = variant.eyepieces.find(({ id }) => id === submission.eyepieceId) ?? null;
  const missing = variant.asks.some((ask) => answerTo(ask, submission) === null);
  if ((chosen === null && submission.eyepieceId !== 'none') || missing)
    return {
      ok: false,
      refusal: {
        code: 'not-on-the-bench',
        message: 'Choose an eyepiece and answer all questions.',
      },
    };

  const best = bestEyepiece(variant);
  const { telescope, target, unlabelled } = variant;
  const asked =
    variant.eyepieces.find(({ id }) => id === unlabelled?.eyepieceId) ??
    chosen ??
    best ??
    variant.eyepieces[0];
  if (asked === undefined) throw new Error('there is no eyepiece on the bench');
  const fieldArcmin = trueFieldArcmin(telescope, asked);
  const driftSeconds = driftTimeSeconds(fieldArcmin, target.declinationDeg);

  const { share, slip } = judgeEyepiece(variant, chosen, best);
  const parts: Part[] = [
    { id: 'eyepiece', possible: eyepieceMark, share, slip },
    focusPart(variant, unlabelled === null ? chosen : asked, submission, best === undefined),
    ...variant.asks.map((ask): Part => {
      const possible = asksMark / variant.asks.length;
      const judged = judgeAsk(ask, { variant, submission, asked, fieldArcmin, driftSeconds });
      return { id: ask, possible, ...judged };
    }),
  ];
  const criteria = parts.map(({ id, possible, share: of }) => ({
    id,
    possible,
    earned: possible * of,
  }));
  const lost = (part: Part): number => part.possible * (1 - part.share);
  return {
    ok: true,
    result: {
      lab: 'field',
      graderVersion: fieldGraderVersion,
      template: variant.template,
      total: totalOf(criteria),
      criteria,
      gates: [],
      slips: [...parts]
        .sort((a, b) => lost(b) - lost(a))
        .flatMap(({ slip: one }) => (one === null ? [] : [one])),
      chosen: submission,
      bestEyepieceId: best?.id ?? 'none',
      fieldArcmin,
      driftSeconds,
      dawesArcsec: dawesLimitArcsec(telescope),
    },
  };
}

const answerTo = (ask: FieldAsk, submission: FieldSubmission): number | FieldWay | null => {
  switch (ask) {
    case 'field':
      return submission.fieldArcmin;
    case 'drift':
      return submission.driftSeconds;
    case 'limit':
      return submission.limitArcsec;
    case 'way':
      return submission.way;
    case 'view':
      return submission.view;
  }
};

function focusPart(
  { telescope }: FieldVariant,
  eyepiece: FieldEyepiece | null,
  { focusMm }: FieldSubmission,
  noneWillDo: boolean,
): Part {
  const part = { id: 'focus' as const, possible: focusMark };
  // With no eyepiece in there is nothing to focus; whoever says so wrongly has not focused either.
  if (eyepiece === null) return { ...part, share: noneWillDo ? 1 : 0, slip: null };
  const disc = blurArcmin(telescope, focusMm - eyepiece.focusAtMm);
  const discArcmin = disc * magnification(telescope, eyepiece);
  const share = bandShare(discArcmin, { full: sharpArcmin, zero: blurredArcmin });
  return { ...part, share, slip: share === 1 ? null : { code: 'out-of-focus', discArcmin } };
}

type Asked = {
  variant: FieldVariant;
  submission: FieldSubmission;
  asked: FieldEyepiece;
  fieldArcmin: number;
  driftSeconds: number;
};

function judgeAsk(ask: FieldAsk, asked: Asked): Pick<Part, 'share' | 'slip'> {
  const { variant, submission, fieldArcmin, driftSeconds } = asked;
  switch (ask) {
    case 'field': {
      const said = submission.fieldArcmin ?? 0;
      const share = bandShare(Math.abs(said / fieldArcmin - 1), fieldBand);
      const slip = mistakeIn(said, asked);
      return share === 1
        ? { share, slip: null }
        : { share, slip: { code: 'field-off', saidArcmin: said, fieldArcmin, slip } };
    }
    case 'drift': {
      const said = submission.driftSeconds ?? 0;
      const share = bandShare(Math.abs(said / driftSeconds - 1), driftBand);
      const atEquator = driftTimeSeconds(fieldArcmin, 0);
      const forgotDeclination = Math.abs(said / atEquator - 1) <= driftBand.full;
      return share === 1
        ? { share, slip: null }
        : {
            share,
            slip: { code: 'drift-off', saidSeconds: said, driftSeconds, forgotDeclination },
          };
    }
    case 'limit': {
      const saidArcsec = submission.limitArcsec ?? 0;
      const dawesArcsec = dawesLimitArcsec(variant.telescope);
      const share = bandShare(Math.abs(saidArcsec / dawesArcsec - 1), fieldBand);
      return { share, slip: share === 1 ? null : { code: 'limit-off', saidArcsec, dawesArcsec } };
    }
    case 'way':
      return judgeWay('way-wrong', submission.way, rightWay(variant), trueWay(variant));
    case 'view':
      return judgeWay('view-wrong', submission.view, rightView(variant), onSky(variant));
  }
}

function mistakeIn(said: number, { asked, fieldArcmin }: Asked): FieldMistake | null {
  const is = (value: number): boolean => Math.abs(said / value - 1) <= fieldBand.full;
  if (is(fieldArcmin / 2)) return 'half-of-it';
  if (is(asked.apparentFieldDeg * 60) || is(asked.apparentFieldDeg)) return 'apparent-field';
  return is(fieldArcmin / 60) ? 'degrees-for-arcminutes' : null;
}

/** Half the marks for each of the two directions. */
function judgeWay(
  code: 'way-wrong' | 'view-wrong',
  said: FieldWay | null,
  right: FieldWay,
  inTrueView: FieldWay,
): Pick<Part, 'share' | 'slip'> {
  if (said === null) return { share: 0, slip: null };
  const share = (said.along === right.along ? 0.5 : 0) + (said.up === right.up ? 0.5 : 0);
  const asInTrueView = said.along === inTrueView.along && said.up === inTrueView.up;
  return { share, slip: share === 1 ? null : { code, said, right, asInTrueView } };
}

const wayTo = ({ right, up }: { right: number; up: number }): FieldWay => ({
  along: right > 0 ? 'right' : 'left',
  up: up > 0 ? 'up' : 'down',
});

/** The tube goes to where the star stands on the sky. A view undoes itself, so it leads back to it. */
export function rightWay({ starInView: { right, up }, orientation }: FieldVariant): FieldWay {
  const sky = asSeen({ rightArcmin: right, upArcmin: up }, orientation);
  return wayTo({ right: sky.rightArcmin, up: sky.upArcmin });
}
const trueWay = ({ starInView }: FieldVariant): FieldWay => wayTo(starInView);

/** Where in the view a star appears that stands there on the sky. */
export function rightView({ starOnSky, orientation }: FieldVariant): FieldWay {
  const seen = asSeen(starOnSky, orientation);
  return wayTo({ right: seen.rightArcmin, up: seen.upArcmin });
}
const onSky = ({ starOnSky }: FieldVariant): FieldWay =>
  wayTo({ right: starOnSky.rightArcmin, up: starOnSky.upArcmin });
