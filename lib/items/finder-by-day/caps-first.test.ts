import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { drawItem } from '../draw-item';
import { itemBank } from '../item-bank';

const world = loadItemWorld();

const safetyChoices = itemBank
  .filter(({ lesson, skill }) => lesson === 'finder-by-day' && skill === 'safety')
  .flatMap((family) =>
    Object.keys(family.templates).flatMap((template) =>
      Array.from({ length: 60 }, (_, n) =>
        drawItem(family, template, { seed: `caps ${String(n)}`, world }),
      ),
    ),
  )
  .flatMap((item) => (item.kind === 'choice' ? [item] : []));

// The lesson: "So the order is always: cap, turn, open." Capping first is never wrong.
describe('a question on safety by day', () => {
  it('marks no answer wrong that begins with the caps', () => {
    const capping = /^(cap\b|caps on|(put|leave|keep) (both |the |all )*caps)/i;
    expect(safetyChoices.length).toBeGreaterThan(100);
    for (const { options, key } of safetyChoices)
      for (const { id, text } of options) if (id !== key) expect(text).not.toMatch(capping);
  });

  it('has no key that turns an open tube', () => {
    for (const { options, key } of safetyChoices) {
      const right = options.find(({ id }) => id === key)?.text ?? '';
      expect(right).not.toMatch(/turn(ed)?( it| the tube)?( \w+)? open|open tube may be turned/i);
    }
  });
});
