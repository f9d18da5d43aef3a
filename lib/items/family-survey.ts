import { wrongAnswers } from './answers-to-try';
import { learnableTexts, problemsOfItem } from './check-item';
import { drawItem } from './draw-item';
import type { Item } from './item';
import type { ItemFamily, ItemWorld } from './item-family';

/** No text of a family may make up more of its draws than this. */
export const largestShare = 0.1;

type Commonest = { text: string; share: number };

export type FamilySurvey = {
  draws: number;
  wrongAnswers: number;
  commonestQuestion: Commonest;
  /** Of all draws, though only choices have answers to learn by heart. */
  commonestAnswer: Commonest;
  /** In sentences to the author; each once. */
  problems: readonly string[];
};

/** Draws each template so many times and answers it with its key and everything that is wrong. */
export function familySurvey(
  family: ItemFamily,
  { world, draws, seed }: { world: ItemWorld; draws: number; seed: string },
): FamilySurvey {
  const items = Object.keys(family.templates).flatMap((template) =>
    Array.from({ length: draws }, (_, n) =>
      drawItem(family, template, { seed: `${seed} ${String(n)}`, world }),
    ),
  );
  const learnable = items.map(learnableTexts);
  const commonestQuestion = commonest(learnable.map(({ question }) => question));
  const answers = learnable.flatMap(({ answer }) => (answer === null ? [] : [answer]));
  const among = commonest(answers);
  const commonestAnswer = { ...among, share: (among.share * answers.length) / items.length };
  const tooCommon = [commonestQuestion, commonestAnswer]
    .filter(({ share }) => share > largestShare)
    .map(({ text, share }) => `“${text}” makes up ${(100 * share).toFixed(0)} % of its draws.`);
  return {
    draws: items.length,
    wrongAnswers: items.reduce((sum, item) => sum + wrongAnswers(item).length, 0),
    commonestQuestion,
    commonestAnswer,
    problems: [...new Set([...items.flatMap(problemsIn), ...tooCommon])],
  };
}

const problemsIn = (item: Item): string[] =>
  problemsOfItem(item).map((problem) => `${item.template}: ${problem}`);

function commonest(texts: readonly string[]): Commonest {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  const [first] = [...counts].sort((a, b) => b[1] - a[1]);
  return first === undefined
    ? { text: '', share: 0 }
    : { text: first[0], share: first[1] / texts.length };
}
