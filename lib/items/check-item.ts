import { rightAnswer, wrongAnswers } from './answers-to-try';
import { problemsOfDrawings } from './check-drawing';
import { gradeItem } from './grade-item';
import { bandOf } from './judge-numeric';
import type { Item } from './item';

/** Every text of a question, for what must hold for all of them. */
export function textsOf(item: Item): string[] {
  const { prompt, explanation, drawing, afterwards } = item;
  const own = (): string[] => {
    switch (item.kind) {
      case 'choice':
      case 'several':
        return item.options.flatMap(({ text, reason }) => [text, reason]);
      case 'point':
        return item.spots.flatMap(({ where, reason }) => [where, reason]);
      case 'order':
        return [...item.steps.map(({ text }) => text), ...item.rules.map(({ reason }) => reason)];
      case 'match':
        return [
          ...[...item.left, ...item.right].map(({ text }) => text),
          ...item.pairs.map(({ reason }) => reason),
        ];
      case 'numeric':
        return [item.unit, ...item.slips.map(({ reason }) => reason)];
    }
  };
  const drawn = [drawing, afterwards].flatMap((one) =>
    one === undefined
      ? []
      : [
          one.alternative,
          ...one.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : [])),
        ],
  );
  return [prompt, explanation, ...own(), ...drawn];
}

/**
 * What a wrong answer may not earn. Practice is passed with 0.8, so what is plainly wrong has to stay
 * well below it; of many boxes ticked or steps in order a single slip may be a small thing.
 */
const leastTooMuch = (item: Item): number =>
  item.kind === 'several' || item.kind === 'order' ? 1 : 0.7;

/** Everything that is wrong with one drawn question, in sentences to its author; empty when nothing is. */
export function problemsOfItem(item: Item): string[] {
  const problems: string[] = [];
  for (const text of textsOf(item)) {
    if (text.trim() === '') problems.push('A text is empty.');
    if (/NaN|Infinity|undefined|null|\[object|-0(?![\d.])/.test(text))
      problems.push(`“${text}” is broken.`);
    if (/\d\.\d{5,}/.test(text)) problems.push(`“${text}” has too many decimals.`);
  }
  const graded = gradeItem(item, rightAnswer(item));
  if (!graded.ok || graded.feedback.mark !== 1) problems.push('The key does not get full marks.');
  for (const answer of wrongAnswers(item)) {
    const outcome = gradeItem(item, answer);
    if (!outcome.ok) problems.push(`${JSON.stringify(answer)} is refused.`);
    else if (outcome.feedback.mark >= leastTooMuch(item))
      problems.push(`${JSON.stringify(answer)} gets ${outcome.feedback.mark.toFixed(2)}.`);
  }
  return [...problems, ...problemsOfKind(item), ...problemsOfDrawings(item)];
}

function problemsOfKind(item: Item): string[] {
  const twice = (texts: readonly string[]) =>
    new Set(texts).size < texts.length ? ['Two of its answers read the same.'] : [];
  switch (item.kind) {
    case 'choice':
      return [
        ...twice(item.options.map(({ text }) => text)),
        ...(item.options.length < 3 ? ['It has fewer than three options.'] : []),
      ];
    case 'several': {
      const right = item.options.filter((one) => one.right).length;
      return [
        ...twice(item.options.map(({ text }) => text)),
        ...(right === 0 || right === item.options.length ? ['All of it or nothing is right.'] : []),
        ...(item.options.length < 4 ? ['It has fewer than four options.'] : []),
      ];
    }
    case 'order':
      return [
        ...twice(item.steps.map(({ text }) => text)),
        ...(item.steps.length < 3 ? ['It has fewer than three steps.'] : []),
        ...(item.rules.length === 0 ? ['It has no rule.'] : []),
      ];
    case 'match':
      return [
        ...twice(item.left.map(({ text }) => text)),
        ...twice(item.right.map(({ text }) => text)),
        ...(item.left.length < 3 ? ['It has fewer than three pairs.'] : []),
      ];
    case 'point':
      return [
        ...twice(item.spots.map(({ where }) => where)),
        ...(item.spots.length < 3 ? ['It has fewer than three spots.'] : []),
        ...item.spots
          .filter(({ x, y }) => x < 0 || y < 0 || x > item.drawing.width || y > item.drawing.height)
          .map(({ where }) => `The spot “${where}” lies outside the drawing.`),
      ];
    case 'numeric': {
      const { full, zero } = bandOf(item);
      return [
        ...(Number.isFinite(item.key) ? [] : ['Its key is no number.']),
        ...(zero > full && full >= 0 ? [] : ['Its band is upside down.']),
        ...(item.unit.length > 0 ? [] : ['It has no unit.']),
      ];
    }
  }
}

/** What a learner could learn by heart: the question as it reads, and its right answer. */
export function learnableTexts(item: Item): { question: string; answer: string | null } {
  const { prompt, drawing } = item;
  const shown = drawing === undefined ? '' : drawing.alternative;
  const graded = gradeItem(item, rightAnswer(item));
  const byHeart = item.kind === 'choice' || item.kind === 'several';
  return {
    question: `${prompt}\n${shown}`,
    answer: byHeart && graded.ok ? graded.feedback.right : null,
  };
}
