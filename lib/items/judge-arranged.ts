import { refused, type Judged } from './judgement';
import type { MatchItem, OrderItem } from './item';

/**
 * Full marks for every order that keeps all rules. Half of the rules are kept by any shuffle, so the mark
 * falls twice as fast as rules break.
 */
export function judgeOrder(item: OrderItem, steps: readonly string[]): Judged {
  if (steps.length === 0) return refused('no-answer');
  if (steps.some((id) => item.steps.every((one) => one.id !== id))) {
    return refused('other-question');
  }
  if (new Set(steps).size < item.steps.length) return refused('unfinished');
  const place = (id: string) => steps.indexOf(id);
  const textOf = (id: string) => item.steps.find((one) => one.id === id)?.text ?? '';
  const broken = item.rules.filter(({ first, then }) => place(first) > place(then));
  return {
    ok: true,
    judgement: {
      mark: Math.max(0, 1 - (2 * broken.length) / item.rules.length),
      said:
        broken.length === 0
          ? ['Every step stands on what it needs.']
          : broken.map(
              ({ first, then, reason }) =>
                `“${textOf(first)}” comes before “${textOf(then)}”: ${reason}`,
            ),
      misconceptions: [],
      right: `${readyOrder(item).map(textOf).join(' → ')}.`,
    },
  };
}

/** One order that keeps all rules (Kahn); @throws when they run in a circle. */
export function readyOrder({ steps, rules }: Pick<OrderItem, 'steps' | 'rules'>): string[] {
  const done: string[] = [];
  while (done.length < steps.length) {
    const next = steps.find(
      ({ id }) =>
        !done.includes(id) && rules.every(({ first, then }) => then !== id || done.includes(first)),
    );
    if (next === undefined) throw new RangeError('the rules of an order run in a circle');
    done.push(next.id);
  }
  return done;
}

/**
 * Each wrong pair is told why. The mark falls twice as fast as pairs are wrong: two that were confused
 * are one mistake seen from both sides, and one wrong of five must not pass for mastery.
 */
export function judgeMatch(item: MatchItem, answered: Readonly<Record<string, string>>): Judged {
  const given = Object.entries(answered);
  if (given.length === 0) return refused('no-answer');
  const known = given.every(
    ([left, right]) =>
      item.left.some(({ id }) => id === left) && item.right.some(({ id }) => id === right),
  );
  if (!known) return refused('other-question');
  if (given.length < item.left.length) return refused('unfinished');
  const leftText = (id: string) => item.left.find((one) => one.id === id)?.text ?? '';
  const rightText = (id: string) => item.right.find((one) => one.id === id)?.text ?? '';
  const wrong = item.pairs.filter(({ left, right }) => answered[left] !== right);
  const told = ({ left, right, reason }: MatchItem['pairs'][number]) =>
    `${leftText(left)} – ${rightText(right)}: ${reason}`;
  return {
    ok: true,
    judgement: {
      mark: Math.max(0, 1 - (2 * wrong.length) / item.pairs.length),
      said: wrong.length === 0 ? ['Each has found its own.'] : wrong.map(told),
      misconceptions: [],
      right: `${item.pairs
        .map(({ left, right }) => `${leftText(left)} – ${rightText(right)}`)
        .join('; ')}.`,
    },
  };
}
