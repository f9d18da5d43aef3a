import type { ChoiceItem, MatchItem, NumericItem, OrderItem, PointItem, SeveralItem } from './item';

/*
 * Builders for families: they give neutral ids in the order in which things are written, so that no id
 * tells an answer; `drawItem` shuffles and letters them anew.
 */

type Common = Pick<ChoiceItem, 'prompt' | 'drawing' | 'explanation' | 'afterwards'>;
type WithoutId<T> = T extends { id: string } ? Omit<T, 'id'> : never;
type Written = WithoutId<ChoiceItem['options'][number]>;

const letters = 'abcdefghijklmnopqrstuvwxyz';
/** "a", "b", …; a question has no more than 26 of anything. */
export const letter = (index: number): string => letters.charAt(index);

const lettered = <T extends object>(written: readonly T[]) =>
  written.map((one, index) => ({ ...one, id: letter(index) }));

/** One right answer and its distractors, each wrong for the reason given. */
export function choice(item: Common & { right: Written; wrong: readonly Written[] }): ChoiceItem {
  const { right, wrong, ...common } = item;
  return { ...common, kind: 'choice', options: lettered([right, ...wrong]), key: letter(0) };
}

export function several(
  item: Common & { right: readonly Written[]; wrong: readonly Written[] },
): SeveralItem {
  const { right, wrong, ...common } = item;
  const options = [
    ...right.map((one) => ({ ...one, right: true })),
    ...wrong.map((one) => ({ ...one, right: false })),
  ];
  return { ...common, kind: 'several', options: lettered(options) };
}

/** `rules` speak of steps by their place in the list, from 0. */
export function order(
  item: Common & {
    steps: readonly string[];
    rules: readonly { first: number; then: number; reason: string }[];
  },
): OrderItem {
  const { steps, rules, ...common } = item;
  return {
    ...common,
    kind: 'order',
    steps: steps.map((text, index) => ({ id: letter(index), text })),
    rules: rules.map(({ first, then, reason }) => ({
      first: letter(first),
      then: letter(then),
      reason,
    })),
  };
}

/** Each pair with its reason; `spare` belongs to nothing. Two pairs may share a right side. */
export function match(
  item: Common & {
    pairs: readonly { left: string; right: string; reason: string }[];
    spare?: readonly string[];
  },
): MatchItem {
  const { pairs, spare = [], ...common } = item;
  const rights = [...new Set([...pairs.map(({ right }) => right), ...spare])];
  return {
    ...common,
    kind: 'match',
    left: pairs.map(({ left }, index) => ({ id: letter(index), text: left })),
    right: rights.map((text, index) => ({ id: letter(index), text })),
    pairs: pairs.map(({ right, reason }, index) => ({
      left: letter(index),
      right: letter(rights.indexOf(right)),
      reason,
    })),
  };
}

export function numeric(
  item: Common & Omit<NumericItem, 'kind' | 'slips'> & { slips?: NumericItem['slips'] },
): NumericItem {
  return { ...item, slips: item.slips ?? [], kind: 'numeric' };
}

type Spot = WithoutId<PointItem['spots'][number]>;

export function point(
  item: Omit<Common, 'drawing'> & {
    drawing: PointItem['drawing'];
    right: Spot;
    wrong: readonly Spot[];
  },
): PointItem {
  const { right, wrong, ...common } = item;
  return { ...common, kind: 'point', spots: lettered([right, ...wrong]), key: letter(0) };
}
