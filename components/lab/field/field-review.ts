import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { AnswerLine } from '../bench/bench-parts';
import { nameOf, placeInWords, wayInWords } from './field-words';

const done = (way: FieldDraft['way']) =>
  way === null || way.along === null || way.up === null ? null : { along: way.along, up: way.up };

/** An answer at "Field" in words: for its student before it is sent, and for the teacher's answer key. */
export function fieldReview(draft: FieldDraft, variant: FieldVariant): readonly AnswerLine[] {
  const { asks, target, unlabelled } = variant;
  const way = done(draft.way);
  const view = done(draft.view);
  const lines: (AnswerLine | null)[] = [
    {
      asked: unlabelled === null ? `For ${target.name}` : 'The one that is in',
      answer: nameOf(variant, draft.eyepieceId),
    },
    draft.eyepieceId === 'none'
      ? null
      : { asked: 'Focuser at', answer: `${draft.focusMm.toFixed(1)} mm` },
    asks.includes('field') && draft.fieldArcmin !== null
      ? { asked: 'Sky from edge to edge', answer: `${String(draft.fieldArcmin)} arcminutes` }
      : null,
    asks.includes('drift') && draft.driftSeconds !== null
      ? { asked: 'A star takes across', answer: `${String(draft.driftSeconds)} seconds` }
      : null,
    asks.includes('limit') && draft.limitArcsec !== null
      ? { asked: 'It parts stars down to', answer: `${String(draft.limitArcsec)} arcseconds` }
      : null,
    way === null ? null : { asked: 'The tube goes', answer: wayInWords(way) },
    view === null ? null : { asked: 'The star appears', answer: placeInWords(view) },
  ];
  return lines.filter((line) => line !== null);
}
