import { gradeItem } from './grade-item';
import { bandOf, inFigures } from './judge-numeric';
import { readyOrder } from './judge-arranged';
import type { Item } from './item';
import type { ItemAnswer } from './item-answer';

/** The answer that earns full marks. */
export function rightAnswer(item: Item): ItemAnswer {
  switch (item.kind) {
    case 'choice':
    case 'point':
      return { kind: item.kind, option: item.key };
    case 'several':
      return {
        kind: 'several',
        options: item.options.filter(({ right }) => right).map(({ id }) => id),
      };
    case 'order':
      return { kind: 'order', steps: readyOrder(item) };
    case 'match':
      return {
        kind: 'match',
        pairs: Object.fromEntries(item.pairs.map(({ left, right }) => [left, right])),
      };
    case 'numeric':
      // As many figures as a learner would write for full marks, so the band must be worth its unit.
      return { kind: 'numeric', text: inFigures(item.key, bandOf(item).full) };
  }
}

/** Answers that may never earn full marks: each distractor, each slip, each single thing put wrong. */
export function wrongAnswers(item: Item): ItemAnswer[] {
  const right = rightAnswer(item);
  switch (item.kind) {
    case 'choice':
      return item.options
        .filter(({ id }) => id !== item.key)
        .map(({ id }) => ({ kind: 'choice', option: id }));
    case 'point':
      return item.spots
        .filter(({ id }) => id !== item.key)
        .map(({ id }) => ({ kind: 'point', option: id }));
    case 'several': {
      if (right.kind !== 'several') return [];
      return item.options.map(({ id }) => ({
        kind: 'several',
        options: right.options.includes(id)
          ? right.options.filter((one) => one !== id)
          : [...right.options, id],
      }));
    }
    case 'order': {
      if (right.kind !== 'order') return [];
      return item.rules.map(({ first, then }) => ({
        kind: 'order',
        // The later step is pulled before the one that it needs.
        steps: right.steps
          .filter((id) => id !== then)
          .flatMap((id) => (id === first ? [then, first] : [id])),
      }));
    }
    case 'match': {
      if (right.kind !== 'match') return [];
      return item.pairs.flatMap(({ left, right: belongs }) =>
        item.right
          .filter(({ id }) => id !== belongs)
          .map(({ id }) => ({ kind: 'match' as const, pairs: { ...right.pairs, [left]: id } })),
      );
    }
    case 'numeric':
      return item.slips.map(({ gives }) => ({ kind: 'numeric', text: String(gives) }));
  }
}

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
    else if (outcome.feedback.mark === 1)
      problems.push(`${JSON.stringify(answer)} gets full marks.`);
  }
  return [...problems, ...problemsOfKind(item)];
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
