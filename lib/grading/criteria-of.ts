/** One criterion of a mark by its id, as comments and differences of marks name it. */
export type CriterionMark = { id: string; earned: number; possible: number };

type ResultByCriteria = { criteria: readonly CriterionMark[] };
type ResultByQuestions = { items: readonly { mark: number }[] };

/** The criteria of any lab's result; of a set of questions each question is one. */
export const criteriaOf = (result: ResultByCriteria | ResultByQuestions): CriterionMark[] =>
  'criteria' in result
    ? result.criteria.map(({ id, earned, possible }) => ({ id, earned, possible }))
    : result.items.map(({ mark }, index) => ({
        id: `question-${String(index + 1)}`,
        earned: mark,
        possible: 100,
      }));

/** A failed gate means "not yet", whatever the mark. Some labs can hurt nobody and know no gates. */
export const gateFailedIn = (result: object): boolean =>
  'gates' in result && Array.isArray(result.gates) && result.gates.length > 0;
