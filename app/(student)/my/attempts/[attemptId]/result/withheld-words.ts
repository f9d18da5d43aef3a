import { momentInWords } from '../../../due-words';

/** When a withheld result will be seen. `visibleFrom`: a UTC instant or 'when-released'. */
export function withheldInWords(visibleFrom: string, timeZone: string, now: Date): string {
  if (visibleFrom === 'when-released') {
    return 'Your teacher shows marks and explanations to everybody at the same time, and has not done so yet. Look here again after your next lesson.';
  }
  const { away, date, zone } = momentInWords(visibleFrom, timeZone, now);
  return `You will see your mark and the explanation after the due time: ${away}, ${date} (${zone}).`;
}
