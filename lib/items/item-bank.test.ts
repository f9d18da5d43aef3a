import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../content/item-world';
import { course } from '../course/lessons';
import { learnableTexts, problemsOfItem } from './check-item';
import { drawItem } from './draw-item';
import { familiesOf, itemBank } from './item-bank';
import { misconceptions } from './misconceptions';
import type { Item } from './item';
import type { ItemFamily } from './item-family';

const world = loadItemWorld();
const drawsOfEach = 200;

const drawsOf = (family: ItemFamily): Item[] =>
  Object.keys(family.templates).flatMap((template) =>
    Array.from({ length: drawsOfEach }, (_, n) =>
      drawItem(family, template, { seed: `draw ${String(n)}`, world }),
    ),
  );

/** The text that comes up most often, and its share of all. */
function mostCommon(texts: readonly string[]): { text: string; share: number } {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  const [text = '', count = 0] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  return { text, share: count / texts.length };
}

describe.each(itemBank.map((family) => [family.id, family] as const))('%s', (_, family) => {
  const items = drawsOf(family);

  it('has four or more templates', () => {
    expect(Object.keys(family.templates).length).toBeGreaterThanOrEqual(4);
  });

  it('gives the key full marks and no distractor ever, 200 times a template', () => {
    const broken = items.flatMap((item) =>
      problemsOfItem(item).map((problem) => `${item.template}: ${problem}`),
    );
    expect([...new Set(broken)].slice(0, 10)).toEqual([]);
  });

  it('asks no question, and has no answer, that makes up more than a tenth of its draws', () => {
    const learnable = items.map(learnableTexts);
    const question = mostCommon(learnable.map((one) => one.question));
    expect(question.share, question.text).toBeLessThanOrEqual(0.1);
    const answers = learnable.flatMap(({ answer }) => (answer === null ? [] : [answer]));
    const answer = mostCommon(answers);
    // Of all draws, not of the choices alone.
    expect((answer.share * answers.length) / items.length, answer.text).toBeLessThanOrEqual(0.1);
  });

  it('draws the same question for the same seed', () => {
    expect(drawsOf(family).slice(0, 3)).toEqual(items.slice(0, 3));
  });
});

describe('the bank', () => {
  it('has six families or more for each lesson', () => {
    const few = course.map(({ slug }) => slug).filter((slug) => familiesOf(slug).length < 6);
    expect(few).toEqual([]);
  });

  it('calls no two families by one name', () => {
    const ids = itemBank.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it('has every known misconception as a distractor somewhere', () => {
    const met = new Set(
      itemBank.flatMap((family) =>
        Object.keys(family.templates).flatMap((template) =>
          Array.from({ length: 20 }, (_, n) =>
            drawItem(family, template, { seed: `misled ${String(n)}`, world }),
          ).flatMap(misconceptionsIn),
        ),
      ),
    );
    expect(Object.keys(misconceptions).filter((id) => !met.has(id))).toEqual([]);
  });
});

function misconceptionsIn(item: Item): string[] {
  const carriers =
    item.kind === 'choice'
      ? item.options.filter(({ id }) => id !== item.key)
      : item.kind === 'several'
        ? item.options.filter(({ right }) => !right)
        : item.kind === 'point'
          ? item.spots.filter(({ id }) => id !== item.key)
          : item.kind === 'numeric'
            ? item.slips
            : [];
  return carriers.flatMap(({ misconception }) =>
    misconception === undefined ? [] : [misconception],
  );
}
