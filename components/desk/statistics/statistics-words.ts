import { markText } from '@/components/grading/mark-text';
import type { AssignmentStatistics, PartStatistics } from '@/lib/data/class-statistics';
import type { QuestionStatistics } from '@/lib/data/class-statistics-questions';
import type { Reliability } from '@/lib/data/class-statistics-parts';
import { fewestToTrust, footingOf, type ItemNote } from '@/lib/measurement/small-class';

/** "1 student", "3 students". */
export const countText = (count: number, one: string, many = `${one}s`): string =>
  `${String(count)} ${count === 1 ? one : many}`;

/** "64 %": whole, for a share of people or of marks. */
export function percentText(share: number): string {
  const whole = Math.round(100 * Math.abs(share));
  return `${share < 0 && whole > 0 ? '−' : ''}${String(whole)} %`;
}

/** A coefficient with the true minus sign: "−.12", ".71". */
export function coefficientText(r: number): string {
  const digits = Math.abs(r).toFixed(2);
  if (Number(digits) === 0) return '.00';
  return `${r < 0 ? '−' : ''}${digits.replace(/^0/, '')}`;
}

/** A figure of shares made of so few people needs these words beside it. */
export const tooFewText = `too few to trust: fewer than ${String(fewestToTrust)}`;

/** Value at a share of the way through a sorted list, between neighbours in a straight line. */
function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const below = sorted[Math.floor(place)] ?? Number.NaN;
  const above = sorted[Math.ceil(place)] ?? below;
  return below + (above - below) * (place - Math.floor(place));
}

/** How an assignment went, in two or three sentences. */
export function marksSentence(assignment: AssignmentStatistics): string {
  const { marks, reached, gateFailed, excused, withoutMark, passMark } = assignment;
  const all = marks.length + withoutMark;
  const apart = excused === 0 ? '' : ` ${countText(excused, 'student')} excused.`;
  if (marks.length === 0) return `None of ${String(all)} has a mark yet.${apart}`;
  const passed = `Of ${String(all)}, ${String(marks.length)} ${marks.length === 1 ? 'has' : 'have'} a mark; ${String(reached)} of them ${reached === 1 ? 'has' : 'have'} reached the pass mark of ${markText(passMark)}.`;
  const spread =
    footingOf(marks.length) === 'counts-only'
      ? ''
      : ` The middle mark is ${markText(quantile(marks, 0.5))}; the middle half lies between ${markText(quantile(marks, 0.25))} and ${markText(quantile(marks, 0.75))}.`;
  const gate =
    gateFailed === 0
      ? ''
      : ` For ${countText(gateFailed, 'student')} a failed safety gate stands: not yet, whatever the mark.`;
  return passed + spread + gate + apart;
}

/** "Of 20 who answered, 13 were right and 3 right in part." */
export function answeredSentence({ people, right, partly }: QuestionStatistics): string {
  const part = partly === 0 ? '' : ` and ${String(partly)} right in part`;
  return `Of ${String(people)} who answered, ${String(right)} ${right === 1 ? 'was' : 'were'} right${part}.`;
}

export const noteWords: Readonly<Record<ItemNote, { short: string; long: string }>> = {
  'against-the-rest': {
    short: 'look at it',
    long: 'Students who do well elsewhere got this wrong more often than the others. Read its questions: something in them may mislead.',
  },
  hard: {
    short: 'hard here',
    long: 'Fewer than two in five of the marks were earned. Worth a look together in class.',
  },
  'nearly-all-right': {
    short: 'nearly all right',
    long: 'As it should be at the end of a lesson. Such a question tells nobody apart, and need not.',
  },
};

/** How an item goes with the rest, in words; the bounds are our judgement. */
export function withTheRest(itemRest: number | null): string {
  if (itemRest === null) return 'cannot be told';
  if (itemRest < 0) return 'against the rest';
  if (itemRest < 0.1) return 'hardly';
  return itemRest < 0.3 ? 'somewhat' : 'well';
}

/** Nearly everything right: such marks do not tell students apart. */
const nearlyFull = 90;

/** What the standard error and the reliability mean for somebody who gives marks. */
export function reliabilitySentences(part: PartStatistics): string[] {
  const { people, reliability: found } = part;
  if (footingOf(people) === 'counts-only')
    return [
      `${countText(people, 'student')} handed it in: too few to say how far its marks would be the same again.`,
    ];
  if (found === null)
    return ['All totals are alike, or there is only one thing marked: nothing can be said.'];
  return [errorSentence(found), worthSentence(found)];
}

const errorSentence = ({ from, error }: Reliability): string =>
  `If the same students did another ${from === 'own-questions' ? 'set of such questions' : 'task of this kind'}, about two in three would come out within ${String(Math.round(error))} marks of the mark they have now.`;

function worthSentence({ mean, reliability }: Reliability): string {
  if (mean >= nearlyFull)
    return 'Nearly everything was right: such marks cannot tell students apart, and need not.';
  if (reliability >= 0.8) return 'That is firm enough to compare two students by.';
  if (reliability >= 0.6)
    return 'Fair for a look at the class; for one student, use other evidence too.';
  return 'Weak: a mark here may be luck. Use it with other evidence.';
}
