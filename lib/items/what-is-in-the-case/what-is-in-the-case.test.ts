import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import type { ItemFamily } from '../item-family';
import { capsAndGlass } from './caps-and-glass';
import { cardOverTheFront } from './card-over-the-front';
import { lightGathered } from './light-gathered';
import { partAndJob } from './part-and-job';
import { threeTubes } from './three-tubes';
import { tubeOf } from './item-tube';
import { wayOfLight } from './way-of-light';
import { traits } from '../../drawings/tube-words';

const world = loadItemWorld();
const draws = (family: ItemFamily, template: string): Item[] =>
  Array.from({ length: 150 }, (_, n) =>
    drawItem(family, template, { seed: `t${String(n)}`, world }),
  );
const numbersIn = (text: string): number[] =>
  [...text.matchAll(/\d+(\.\d+)?/g)].map(([found]) => Number(found));
const keyText = (item: Item): string =>
  item.kind === 'choice' ? (item.options.find(({ id }) => id === item.key)?.text ?? '') : '';

/** What every first book says of the three kinds, by name: where light comes in and out. */
const book = {
  Wren: { front: 'lens', out: 'back', mirrors: 0 },
  Heron: { front: 'open', out: 'side', mirrors: 2 },
  // With its star diagonal.
  Owl: { front: 'window', out: 'back', mirrors: 3 },
} as const;

describe('the three tubes', () => {
  it('have the traits that any first book gives them', () => {
    const of = (name: string) =>
      traits
        .filter(({ holds }) =>
          world.kits
            .filter((kit) => kit.name === name)
            .map(tubeOf)
            .every(holds),
        )
        .map(({ text }) => text);
    expect(of('Heron')).toContain('has an open front, with no glass in it');
    expect(of('Heron')).toContain('has its eyepiece at the side, near the front');
    expect(of('Wren')).toContain('gathers its light with a lens');
    expect(of('Wren')).toContain('needs no mirror inside its tube');
    expect(of('Owl')).toContain('is less than half as long as its focal length');
    expect(of('Owl')).toContain('has a hole in the middle of its main mirror');
    for (const name of ['Wren', 'Owl'])
      expect(of(name)).toContain('is looked into from behind its back end');
  });

  it('are told apart by something that is so of one of them only', () => {
    for (const item of draws(threeTubes, 'from-words')) {
      const said = traits.find(({ text }) => item.prompt.includes(` that ${text}. `));
      const fits = world.kits.map(tubeOf).filter((tube) => said?.holds(tube) === true);
      expect(fits).toHaveLength(1);
      expect(keyText(item)).toContain(fits[0]?.name);
    }
  });

  it('count as many mirrors as the book', () => {
    for (const item of draws(wayOfLight, 'count-mirrors')) {
      const name = (['Wren', 'Heron', 'Owl'] as const).find((one) => item.prompt.includes(one));
      if (name === undefined || item.kind !== 'numeric') throw new Error(item.prompt);
      expect(item.key).toBe(book[name].mirrors - (item.prompt.includes('taken out') ? 1 : 0));
    }
  });

  it('let light in where the pointed spot is: outside the end that faces the way that is said', () => {
    for (const item of draws(threeTubes, 'point-at')) {
      if (item.kind !== 'point' || !item.prompt.includes('comes in')) continue;
      const key = item.spots.find(({ id }) => id === item.key);
      const left = /front to the left/.test(item.drawing.alternative);
      expect((key?.x ?? NaN) < 160).toBe(left);
    }
  });

  it('have rings that lie apart, so that each can be pressed', () => {
    for (const [family, template] of [
      [threeTubes, 'point-at'],
      [wayOfLight, 'point-on-the-way'],
      [partAndJob, 'point-at-part'],
    ] as const)
      for (const item of draws(family, template)) {
        if (item.kind !== 'point') throw new Error(template);
        const { spots } = item;
        for (const one of spots)
          for (const other of spots)
            if (one !== other)
              expect(Math.hypot(one.x - other.x, one.y - other.y), item.prompt).toBeGreaterThan(24);
      }
  });
});

describe('light', () => {
  it('through a hole goes as hole² over lens², and the slip as their widths', () => {
    for (const item of draws(cardOverTheFront, 'hole-in-the-cap')) {
      if (item.kind !== 'numeric') throw new Error(item.kind);
      const [lens = NaN, hole = NaN] = numbersIn(item.prompt);
      expect(item.key).toBeCloseTo(100 * (hole / lens) ** 2, 9);
      expect(item.slips[0]?.gives).toBeCloseTo((100 * hole) / lens, 0);
    }
  });

  it('in the wider front is more, by the areas of two circles', () => {
    for (const item of draws(lightGathered, 'which-gathers')) {
      const [small = NaN, , large = NaN] = numbersIn(item.prompt);
      const area = (mm: number) => Math.PI * (mm / 2) ** 2;
      const [width = NaN, times = NaN] = numbersIn(keyText(item));
      expect(width).toBe(Math.max(small, large));
      expect(Math.abs(times - area(large) / area(small))).toBeLessThan(0.06);
    }
  });

  it('is put in order by the square of the width, whatever the focal lengths are', () => {
    for (const item of draws(lightGathered, 'least-to-most')) {
      if (item.kind !== 'order') throw new Error(item.kind);
      const widthOf = (id: string) =>
        numbersIn(item.steps.find((step) => step.id === id)?.text ?? '')[0] ?? NaN;
      for (const { first, then } of item.rules) expect(widthOf(first)).toBeLessThan(widthOf(then));
    }
  });

  it('under half a card is half, by a count of points of a grid', () => {
    // Heron and Wren alike: a straight cut through the middle halves a ring.
    for (const item of draws(cardOverTheFront, 'what-you-see'))
      if (item.prompt.includes('the upper half')) expect(keyText(item)).toContain('about 50%');
  });

  it('is read off a label as F over D', () => {
    for (const item of draws(lightGathered, 'read-the-label')) {
      if (item.kind !== 'numeric' || item.drawing === undefined) throw new Error(item.kind);
      const [d = NaN, f = NaN] = numbersIn(item.drawing.alternative);
      expect(item.key).toBeCloseTo(f / d, 9);
      expect(item.drawing.alternative).not.toContain(item.key.toFixed(1));
    }
  });
});

describe('the Sun', () => {
  it('keeps the caps on in every scene but those after sunset', () => {
    for (const item of draws(capsAndGlass, 'may-the-cap-come-off')) {
      const after = /after sunset|winter evening|the Sun has set/.test(item.prompt);
      expect(keyText(item).includes('may come off now')).toBe(after);
    }
  });

  it('never lets a cap come off before sunset in any order', () => {
    for (const item of draws(capsAndGlass, 'caps-in-order')) {
      if (item.kind !== 'order') throw new Error(item.kind);
      const idOf = (words: string) => item.steps.find(({ text }) => text.includes(words))?.id;
      const off = idOf('caps off');
      if (off === undefined) continue;
      expect(item.rules).toContainEqual(
        expect.objectContaining({ first: idOf('Sun has set'), then: off }),
      );
    }
  });
});

describe('the parts', () => {
  // Design, "The product": prism for Wren, diagonal for Owl, neither for Heron.
  it('that belong to a tube are those of the design', () => {
    for (const item of draws(partAndJob, 'what-goes-on')) {
      if (item.kind !== 'several') throw new Error(item.kind);
      const right = item.options.filter((one) => one.right).map(({ text }) => text);
      const wrong = item.options.filter((one) => !one.right).map(({ text }) => text);
      const wren = item.prompt.includes('Wren');
      const owl = item.prompt.includes('Owl');
      if (!wren) expect(right).not.toContain('The erecting prism');
      else expect(wrong).not.toContain('The erecting prism');
      if (!owl) expect(right).not.toContain('The star diagonal');
      else expect(wrong).not.toContain('The star diagonal');
    }
  });
});
