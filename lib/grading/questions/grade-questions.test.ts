import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choice, match, numeric, several } from '../../items/build-item';
import { itemGraderVersion } from '../../items/grade-item';
import { rightAnswer, wrongAnswers } from '../../items/answers-to-try';
import type { Item, ItemBody } from '../../items/item';
import { gradeQuestions, questionsGraderVersion } from './grade-questions';

const item = (body: ItemBody): { skill: 'level'; item: Item } => ({
  skill: 'level',
  item: { family: 'a-family', template: body.kind, generatorVersion: 1, ...body },
});
const common = { prompt: 'Which?', explanation: 'Because.' };
const reason = 'A reason.';
const items = [
  item(
    choice({
      ...common,
      right: { text: 'a', reason },
      wrong: [
        { text: 'b', reason },
        { text: 'c', reason },
      ],
    }),
  ),
  item(
    several({
      ...common,
      right: [
        { text: 'a', reason },
        { text: 'b', reason },
      ],
      wrong: [
        { text: 'c', reason },
        { text: 'd', reason },
      ],
    }),
  ),
  item(
    match({
      ...common,
      pairs: ['1', '2', '3', '4'].map((n) => ({ left: `l${n}`, right: `r${n}`, reason })),
    }),
  ),
  item(
    numeric({
      ...common,
      unit: 'degrees',
      key: 30,
      tolerance: { mode: 'absolute', full: 2, zero: 10 },
    }),
  ),
];
const work = {
  variant: { template: 'level-enough' as const },
  answerKey: { lab: 'lesson-questions' as const, items },
};
const graded = (answers: Parameters<typeof gradeQuestions>[0]['submission']['answers']) => {
  const grading = gradeQuestions({ ...work, submission: { answers } });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
};
const right = items.map((one) => rightAnswer(one.item));

describe('the mark of a set of questions', () => {
  it('is full when each is right', () => {
    expect(graded(right).total).toBe(100);
  });

  it('is the mean of the questions’ own, those without an answer included', () => {
    // 100, half of the several, one pair of four wrong (twice a quarter less), and 34 instead of 30:
    // (10 − 4) / (10 − 2).
    const answers = [
      right[0] ?? null,
      { kind: 'several' as const, options: ['a'] },
      { kind: 'match' as const, pairs: { a: 'a', b: 'b', c: 'c', d: 'a' } },
      { kind: 'numeric' as const, text: '34' },
    ];
    expect(graded(answers).items.map(({ mark }) => mark)).toEqual([100, 50, 50, 75]);
    expect(graded(answers).total).toBe(275 / 4);
    expect(graded(answers.slice(0, 1)).total).toBe(25);
  });

  it('is nothing for a set left empty, and each question says so', () => {
    const { total, items: outcomes } = graded([]);
    expect(total).toBe(0);
    expect(outcomes.map(({ notMarked }) => notMarked)).toEqual(items.map(() => 'no-answer'));
  });

  it('takes what cannot be marked as no answer, and still tells what is right', () => {
    const [, , unfinished, noNumber] = graded([
      null,
      null,
      { kind: 'match', pairs: { a: 'a' } },
      { kind: 'numeric', text: 'much' },
    ]).items;
    expect(unfinished).toMatchObject({ mark: 0, notMarked: 'unfinished' });
    expect(noNumber).toMatchObject({ mark: 0, notMarked: 'not-a-number' });
    expect(noNumber?.feedback).toMatchObject({ right: '30 degrees.', explanation: 'Because.' });
  });

  it('never rises by putting a right answer wrong', () => {
    const tries = items.flatMap((one, at) =>
      wrongAnswers(one.item).map((wrong) => ({ at, wrong })),
    );
    fc.assert(
      fc.property(fc.constantFrom(...tries), ({ at, wrong }) => {
        const answers = right.map((answer, index) => (index === at ? wrong : answer));
        expect(graded(answers).total).toBeLessThan(100);
      }),
    );
  });

  it('is refused to more answers than there are questions', () => {
    const submission = { answers: [...right, null] };
    expect(gradeQuestions({ ...work, submission })).toEqual({
      ok: false,
      refusal: { code: 'other-questions' },
    });
  });

  it('goes by a version of its own, which moves with the questions’ grader', () => {
    expect({ set: questionsGraderVersion, item: itemGraderVersion }).toEqual({ set: 1, item: 1 });
  });
});
