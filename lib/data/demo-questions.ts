import 'server-only';
import { course } from '../course/lessons';
import { rightAnswer, wrongAnswers } from '../items/answers-to-try';
import { gradeItem } from '../items/grade-item';
import type { Item } from '../items/item';
import type { ItemAnswer } from '../items/item-answer';
import { bandOf } from '../items/judge-numeric';
import { practicePassMark } from '../mastery/evidence';
import { neededInARow, reviewDays } from '../mastery/mastery';
import { fixedAt } from './demo-work';
import { lessonDaysAgo, type DemoLearner } from './demo-learners';
import { keepAnswer, openOrAsk } from './question-keeping';
import { storedItemSchema } from './stored-item';

const minuteMs = 60_000;
const dayMs = 24 * 60 * minuteMs;

/** The answers of an invented student over the last weeks, through what marks every student's. */
export async function answerAsLearner(
  studentId: string,
  { finished, underWay, reviews, lapsed = [], stumbles }: DemoLearner,
  now: Date,
): Promise<void> {
  for (const [index, lesson] of course.entries()) {
    if (index > finished) return;
    const begun = now.getTime() - lessonDaysAgo(index) * dayMs;
    const rowAt = begun + 4 * minuteMs;
    const write = { studentId, lesson };
    if (index === finished) {
      for (const [place, sign] of Array.from(underWay).entries()) {
        await answerOne(write, sign === '+', begun + 2 * place * minuteMs);
      }
      return;
    }
    if (stumbles.includes(index)) await answerOne(write, false, begun);
    await passInARow(write, neededInARow, rowAt);
    for (const days of reviewDays.slice(0, lapsed.includes(index) ? 1 : reviews)) {
      // A quarter of an hour after it fell due; what lies ahead is still to come.
      const at = rowAt + days * dayMs + 15 * minuteMs;
      if (at < now.getTime()) await passInARow(write, 1, at);
    }
  }
}

type Write = { studentId: string; lesson: (typeof course)[number] };

/** A lesson asks about safety as well; such questions come in between. */
const mostInBetween = 8;

/** So many passed of the lesson's own skill, two minutes each. */
async function passInARow(write: Write, count: number, from: number): Promise<void> {
  let left = count;
  for (let place = 0; place < count + mostInBetween && left > 0; place += 1) {
    const skill = await answerOne(write, true, from + 2 * place * minuteMs);
    if (skill === null) return;
    if (skill === write.lesson.skill) left -= 1;
  }
}

/** The skill that was asked about; null for a lesson without questions: a poorer demonstration, not a broken one. */
export async function answerOne(
  { studentId, lesson }: Write,
  right: boolean,
  at: number,
): Promise<string | null> {
  const asked = await openOrAsk(studentId, { lesson: lesson.slug }, fixedAt(at - minuteMs));
  if (asked === null) return null;
  const item = storedItemSchema.parse(asked.item);
  const answer = right ? rightAnswer(item) : poorAnswer(item);
  const refused = await keepAnswer({ questionId: asked.id, item, answer }, fixedAt(at));
  if (refused !== null) throw new Error(`the demonstration could not answer: ${refused}`);
  return asked.skill;
}

/** One that does not pass. */
function poorAnswer(item: Item): ItemAnswer {
  const marked = wrongAnswers(item).map((answer) => ({ answer, mark: markOf(item, answer) }));
  const worst = marked.toSorted((a, b) => a.mark - b.mark)[0];
  if (worst !== undefined && worst.mark < practicePassMark) return worst.answer;
  if (item.kind !== 'numeric') return rightAnswer(item);
  return { kind: 'numeric', text: String(Math.ceil(item.key + 2 * bandOf(item).zero + 1)) };
}

function markOf(item: Item, answer: ItemAnswer): number {
  const grading = gradeItem(item, answer);
  return grading.ok ? 100 * grading.feedback.mark : 100;
}
