import { BenchResultView } from '@/components/grading/bench-result-view';
import { magnification } from '@/lib/optics/magnification';
import { trueFieldArcmin } from '@/lib/optics/true-field';
import type { FieldResult } from '@/lib/grading/bench/field/field-result';
import { rightView } from '@/lib/grading/bench/field/grade-field';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import { EyepieceCircle } from './eyepiece-circle';
import { fieldCriterionName, fieldSlipWords } from './field-slip-words';
import { eyepieceView } from './field-view';
import { eyepieceName, nameOf } from './field-words';

type FieldResultViewProps = {
  variant: FieldVariant;
  result: FieldResult;
  markShownAbove?: boolean;
};

/** What came of "Field": for student and teacher alike. */
export function FieldResultView({ variant, result, markShownAbove = false }: FieldResultViewProps) {
  return (
    <BenchResultView
      verdict={verdictOf(variant, result)}
      result={result}
      criterionName={(id) => fieldCriterionName[id]}
      gateWords={noGates}
      slipWords={(slip) => fieldSlipWords(slip, variant)}
      picture={<Views variant={variant} result={result} />}
      markShownAbove={markShownAbove}
    />
  );
}

/** Nothing in this lab can hurt anybody. */
const noGates = () => ({ title: '', text: '' });

function verdictOf(variant: FieldVariant, { chosen, bestEyepieceId, slips }: FieldResult): string {
  const best = nameOf(variant, bestEyepieceId);
  if (slips.length === 0) return `All of it is right: ${best}.`;
  return chosen.eyepieceId === bestEyepieceId
    ? `The choice is right: ${best}. Not all of the rest is.`
    : `You chose ${nameOf(variant, chosen.eyepieceId)}; ${best} would have been best.`;
}

/** What was seen, and what the best eyepiece shows, each in focus. */
function Views({ variant, result }: { variant: FieldVariant; result: FieldResult }) {
  const { chosen, bestEyepieceId } = result;
  const ids = [...new Set([chosen.eyepieceId, bestEyepieceId])].filter((id) => id !== 'none');
  return (
    <div className="grid gap-6 sm:grid-cols-2 lg:max-w-[48rem]">
      {ids.map((id) => {
        const eyepiece = variant.eyepieces.find((one) => one.id === id);
        if (eyepiece === undefined) return null;
        const seen = { ...chosen, eyepieceId: id, focusMm: eyepiece.focusAtMm };
        const name = eyepieceName(eyepiece);
        const fieldArcmin = trueFieldArcmin(variant.telescope, eyepiece);
        return (
          <figure key={id} className="keep-together space-y-2">
            <div className="aspect-square">
              <EyepieceCircle
                view={eyepieceView({ ...variant, unlabelled: null }, seen)}
                label={`Through the ${name}`}
                marks={marksIn(variant, result, fieldArcmin)}
              />
            </div>
            <figcaption className="text-sm">
              <span className="font-semibold">
                {id === bestEyepieceId ? 'Best: ' : 'Yours: '}
                {name}
              </span>
              , {magnification(variant.telescope, eyepiece).toFixed(0)} times,{' '}
              {fieldArcmin.toFixed(0)} arcminutes of sky
              {variant.asks.includes('view')
                ? '. Ring: where the star appears; cross: where you said.'
                : '.'}
            </figcaption>
          </figure>
        );
      })}
    </div>
  );
}

function marksIn(variant: FieldVariant, { chosen }: FieldResult, fieldArcmin: number) {
  if (!variant.asks.includes('view') || chosen.view === null) return [];
  const right = Math.abs((2 * variant.starOnSky.rightArcmin) / fieldArcmin);
  const up = Math.abs((2 * variant.starOnSky.upArcmin) / fieldArcmin);
  const at = (way: { along: string; up: string }) => ({
    right: way.along === 'right' ? right : -right,
    up: way.up === 'up' ? up : -up,
  });
  return [
    { ...at(chosen.view), kind: 'said' as const },
    { ...at(rightView(variant)), kind: 'right' as const },
  ];
}
