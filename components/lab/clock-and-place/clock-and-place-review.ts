import { formEntries } from '@/lib/clock/mount-form';
import type { ClockAndPlaceDraft } from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import {
  emptyRows,
  formAsItStands,
} from '@/lib/grading/bench/clock-and-place/clock-and-place-work';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import type { AnswerLine } from '../bench/bench-parts';
import { cardInWords } from './card-words';
import { dayOfYear, readingText, rowNames, rowsInWords, rowText } from './clock-words';
import { verdictWords } from './verdict-words';

/** What is still to be done, in words; empty when nothing is. */
export function clockMissing(draft: ClockAndPlaceDraft, variant: ClockAndPlaceVariant): string {
  const { template, change, declinationDeg } = variant;
  if (template === 'dew-on-the-card' && draft.named === null) {
    return 'say which row sent the tube there.';
  }
  if (change !== null) {
    if (draft.verdict === null) return 'say how often clocks showed the time on the card.';
    if (draft.verdict !== 'plain' && draft.readings.length !== 2) {
      return 'tick the two moments that it can mean.';
    }
    if (draft.verdict !== 'plain' && !draft.asked) return 'ask who wrote the card which it was.';
  }
  if (template === 'check-the-form' && draft.flagged.length === 0) {
    return 'cross out what is wrong in the form.';
  }
  const empty = emptyRows(formAsItStands(variant, draft));
  if (empty.length > 0) return `fill in ${rowsInWords(empty)}.`;
  if (declinationDeg !== null && draft.compassDeg === null) {
    return 'turn the tube to its start direction.';
  }
  return '';
}

/** An answer in words: the card it was made from, what was said, then the form row by row. */
export function clockAndPlaceReview(
  draft: ClockAndPlaceDraft,
  variant: ClockAndPlaceVariant,
): readonly AnswerLine[] {
  const { change } = variant;
  const form = formAsItStands(variant, draft);
  const lines: AnswerLine[] = [
    { asked: `The card: ${variant.card.placeName}`, answer: cardInWords(variant) },
  ];
  if (draft.named !== null) {
    lines.push({ asked: 'The row that sent the tube there', answer: rowNames[draft.named] });
  }
  if (change !== null && draft.verdict !== null) {
    lines.push({ asked: 'Clocks showed this time', answer: verdictWords[draft.verdict] });
    const readings = draft.readings.flatMap((index) => change.readings[index] ?? []);
    if (readings.length > 0) {
      lines.push({
        asked: 'It can mean',
        answer: readings.map((one) => `${dayOfYear(one)}, ${readingText(one)}`).join('; or '),
      });
    }
  }
  if (variant.template === 'check-the-form') {
    lines.push({ asked: 'Crossed out', answer: rowsInWords(draft.flagged) });
  }
  for (const row of formEntries) lines.push({ asked: rowNames[row], answer: rowText(row, form) });
  if (draft.compassDeg !== null) {
    lines.push({
      asked: 'Start direction of the tube, on the compass',
      answer: `${String(Math.round(draft.compassDeg * 10) / 10)}°`,
    });
  }
  return lines;
}
