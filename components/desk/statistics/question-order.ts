import type { QuestionStatistics } from '@/lib/data/class-statistics-questions';

export const questionOrders = ['trouble', 'hard', 'course'] as const;
export type QuestionOrder = (typeof questionOrders)[number];

export const orderWords: Readonly<Record<QuestionOrder, string>> = {
  trouble: 'Most students in trouble first',
  hard: 'Hardest first',
  course: 'In the order of the course',
};

/** Marks that were lost, in students: ten who earned half are as much trouble as five who earned nothing. */
const trouble = ({ people, difficulty }: QuestionStatistics): number => people * (1 - difficulty);

/** They come in the order of the course; what ties stays in it. */
export function inOrder(
  questions: readonly QuestionStatistics[],
  order: QuestionOrder,
): readonly QuestionStatistics[] {
  switch (order) {
    case 'course':
      return questions;
    case 'hard':
      return questions.toSorted((one, other) => one.difficulty - other.difficulty);
    case 'trouble':
      return questions.toSorted((one, other) => trouble(other) - trouble(one));
  }
}
