import { widthNeededArcmin } from '@/lib/variants/bench/field/field-eyepieces';
import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import { eyepieceIn, eyepieceView } from './field-view';
import { orientationInWords } from './field-words';

/** How fine an eye judges what it sees: tenths of the field's width. */
const inTenths = (share: number): string => {
  const tenths = Math.round(share * 10);
  if (tenths < 1) return 'less than a tenth of the field';
  return tenths > 20 ? 'more than twice the field' : `about ${String(tenths)} tenths of the field`;
};

/** What is in view, as an eye would judge it. */
export function viewInWords(variant: FieldVariant, draft: FieldDraft): string[] {
  const view = eyepieceView(variant, draft);
  const eyepiece = eyepieceIn(variant, draft);
  if (view === null || eyepiece === null) return ['No eyepiece is in.'];
  const { target, asks, starInView, orientation } = variant;
  const said = [`The view is ${orientationInWords[orientation]}.`];
  const { fieldArcmin, blurShare } = view;
  if (target.kind === 'double') {
    const share = target.separationArcsec / 60 / fieldArcmin;
    said.push(
      blurShare > share
        ? 'The two stars run together in one disc.'
        : `The two stars stand apart by ${share < 0.002 ? 'hardly anything' : share < 0.01 ? 'very little, a hair’s breadth of the field' : inTenths(share)}.`,
    );
  } else if (target.kind !== 'star') {
    const width = widthNeededArcmin(variant) / fieldArcmin;
    said.push(
      width > 1
        ? `It hangs over the edge: ${inTenths(width)} wide.`
        : `It is whole in view and fills ${inTenths(width)}.`,
    );
  }
  if (asks.includes('way')) {
    const { right, up } = starInView;
    said.push(
      `A ringed star stands in the ${up > 0 ? 'upper' : 'lower'} ${right > 0 ? 'right' : 'left'} of the view.`,
    );
  }
  said.push(focusInWords(blurShare));
  return said;
}

/** The disc that a star makes, in hundredths of the field: what one turns the focuser by. */
function focusInWords(blurShare: number): string {
  const hundredths = Math.round(blurShare * 100);
  if (blurShare < 0.002) return 'Stars are points.';
  return hundredths < 1
    ? 'Stars are very small discs, less than a hundredth of the field wide.'
    : `Stars are discs, ${String(hundredths)} hundredths of the field wide.`;
}
