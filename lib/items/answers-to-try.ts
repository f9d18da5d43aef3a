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
      return (
        item.options
          .map(({ id }) => ({
            kind: 'several' as const,
            options: right.options.includes(id)
              ? right.options.filter((one) => one !== id)
              : [...right.options, id],
          }))
          // Nothing ticked is no answer.
          .filter(({ options }) => options.length > 0)
      );
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
