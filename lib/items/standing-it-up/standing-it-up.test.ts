import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import type { ItemFamily } from '../item-family';
import { readyOrder } from '../judge-arranged';
import { fingersClear } from './fingers-clear';
import { groundAndHands } from './ground-and-hands';
import { leftOut } from './left-out';
import { overTheFeet } from './over-the-feet';
import { standStepName } from '../../drawings/step-words';
import { whatRestsOnWhat } from './what-rests-on-what';
import { wideAndLow } from './wide-and-low';

const world = loadItemWorld();
const draws = (family: ItemFamily, template: string): Item[] =>
  Array.from({ length: 150 }, (_, n) =>
    drawItem(family, template, { seed: `t${String(n)}`, world }),
  );
const numbersIn = (text: string): number[] =>
  [...text.matchAll(/\d+(\.\d+)?/g)].map(([found]) => Number(found));
const keyOf = (item: Item): string =>
  item.kind === 'choice' ? (item.options.find(({ id }) => id === item.key)?.text ?? '') : '';

/**
 * Where the dot of a plan lies, from the drawing alone: inside the triangle of its three feet when it is
 * on one side of all its lines (signs of three cross products).
 */
function readPlan(item: Item) {
  const shapes = item.drawing?.shapes ?? [];
  const circles = shapes.flatMap((shape) => (shape.kind === 'circle' ? [shape] : []));
  const feet = circles.filter(({ r }) => r === 9);
  const dot = circles.find(({ r }) => r === 3);
  if (dot === undefined || feet.length !== 3) throw new Error('no plan');
  const lines = [
    ['A–B', 0, 1],
    ['B–C', 1, 2],
    ['A–C', 2, 0],
  ] as const;
  const off = lines.map(([name, i, j]) => {
    const [a, b] = [feet[i], feet[j]];
    if (a === undefined || b === undefined) throw new Error('no feet');
    const cross = (b.cx - a.cx) * (dot.cy - a.cy) - (b.cy - a.cy) * (dot.cx - a.cx);
    return { name, inside: cross / Math.hypot(b.cx - a.cx, b.cy - a.cy) };
  });
  return off.sort((a, b) => a.inside - b.inside)[0] ?? { name: '', inside: NaN };
}

describe('a plan of the feet', () => {
  it('answers what its drawing shows: standing inside, else over the nearest line', () => {
    for (const item of draws(overTheFeet, 'stands-or-tips')) {
      const { name, inside } = readPlan(item);
      expect(keyOf(item)).toContain(inside > 0 ? 'It stands' : `over the line ${name}`);
    }
  });

  it('foretells the slope as the drawing afterwards shows it', () => {
    for (const item of draws(overTheFeet, 'on-a-slope')) {
      if (item.afterwards === undefined) throw new Error('nothing afterwards');
      const { name, inside } = readPlan({ ...item, drawing: item.afterwards });
      expect(keyOf(item)).toContain(inside > 0 ? 'It stands' : `over the line ${name}`);
    }
  });

  it('points at the line that is nearest in the drawing', () => {
    for (const item of draws(overTheFeet, 'first-to-tip')) {
      if (item.kind !== 'point') throw new Error(item.kind);
      const key = item.spots.find(({ id }) => id === item.key);
      // Clockwise from the foot at the top of the page: right, lower, left.
      const side = { 'A–B': 'right-hand', 'B–C': 'lower', 'A–C': 'left-hand', '': '' };
      expect(key?.where).toBe(`halfway along the ${side[readPlan(item).name]} line`);
      const across = [...item.spots].sort((a, b) => a.x - b.x).map(({ where }) => where);
      expect(across.map((where) => / the (\S+) line/.exec(where)?.[1])).toEqual([
        'left-hand',
        'lower',
        'right-hand',
      ]);
    }
  });

  it('has its margin in millimetres as its squares count it', () => {
    for (const item of draws(overTheFeet, 'read-the-margin')) {
      if (item.kind !== 'numeric') throw new Error(item.kind);
      // 0.22 units a millimetre: a square of 50 mm is 11 units.
      expect(readPlan(item).inside / 11).toBeCloseTo(item.key / 50, 1);
      expect(item.key).toBeGreaterThan(20);
    }
  });
});

/** Which step must be done before which: written down by hand, apart from the engine’s graph. */
const before: Readonly<Record<string, readonly string[]>> = {
  'lock-spreader': ['spread-legs'],
  'set-height': ['spread-legs'],
  'lock-legs': ['set-height'],
  'tray-in': ['spread-legs'],
  'mount-on': ['lock-spreader', 'lock-legs', 'tray-in'],
  'bolt-mount': ['mount-on'],
};
const idOfStep = new Map<string, string>(
  Object.entries(standStepName).map(([id, name]) => [name.toLowerCase(), id]),
);
const doneIn = (prompt: string): string[] => {
  const listed = /Done so far: (.*?)\. (Which|Tick)/.exec(prompt)?.[1] ?? '';
  return listed.split('; ').flatMap((name) => idOfStep.get(name) ?? []);
};
const isReady = (id: string, done: readonly string[]): boolean =>
  !done.includes(id) && (before[id] ?? []).every((one) => done.includes(one));

describe('the order of the steps', () => {
  it('lets come next only what is ready by a list made by hand, and calls nothing else ready', () => {
    for (const item of draws(whatRestsOnWhat, 'what-next')) {
      if (item.kind !== 'choice') throw new Error(item.kind);
      const done = doneIn(item.prompt);
      for (const { id, text } of item.options)
        expect(isReady(idOfStep.get(text.toLowerCase()) ?? '', done), text).toBe(id === item.key);
    }
  });

  it('ticks all that is ready and nothing else', () => {
    for (const item of draws(whatRestsOnWhat, 'all-that-is-ready')) {
      if (item.kind !== 'several') throw new Error(item.kind);
      const done = doneIn(item.prompt);
      for (const { text, right } of item.options) {
        const id = idOfStep.get(text.toLowerCase());
        expect(right, text).toBe(id !== undefined && isReady(id, done));
      }
    }
  });

  it('begins with the legs and ends with the bolt, or the other way round', () => {
    for (const item of draws(whatRestsOnWhat, 'put-in-order')) {
      if (item.kind !== 'order') throw new Error(item.kind);
      const texts = readyOrder(item).map((id) => item.steps.find((step) => step.id === id)?.text);
      const down = item.prompt.includes('pack up');
      expect(texts[0]).toBe(standStepName[down ? 'unbolt-mount' : 'spread-legs']);
      expect(texts.at(-1)).toBe(standStepName[down ? 'fold-legs' : 'bolt-mount']);
    }
  });

  it('finds what was left out of a report', () => {
    for (const item of draws(leftOut, 'does-it-stand')) {
      const needed = ['lock-spreader', 'lock-legs', 'tray-in'] as const;
      const missing = needed.filter(
        (step) => !item.prompt.includes(standStepName[step].toLowerCase()),
      );
      expect(missing.length).toBeLessThan(2);
      const [gone] = missing;
      expect(keyOf(item)).toContain(
        gone === undefined ? 'It bears the mount' : standStepName[gone],
      );
    }
  });
});

describe('pushes and squeezes', () => {
  it('balance: weight × margin is push × height', () => {
    for (const item of draws(wideAndLow, 'how-hard-a-push')) {
      if (item.kind !== 'numeric') throw new Error(item.kind);
      const [kg = NaN, margin = NaN, height = NaN] = numbersIn(item.prompt);
      expect(item.key * height).toBeCloseTo(kg * margin, 6);
      expect(item.key).toBeLessThan(kg);
    }
  });

  it('put wider and shorter stands last when all else is equal', () => {
    for (const item of draws(wideAndLow, 'easiest-first')) {
      if (item.kind !== 'order') throw new Error(item.kind);
      expect(item.steps).toHaveLength(4);
      const pushes = item.rules.map(({ reason }) => numbersIn(reason));
      for (const [less = NaN, more = NaN] of pushes) expect(less).toBeLessThan(more);
    }
  });

  it('help most where the push grows most: no other change in the list reaches as much', () => {
    for (const item of draws(wideAndLow, 'what-helps-most')) {
      if (item.kind !== 'choice') throw new Error(item.kind);
      const after = (reason: string) => numbersIn(reason)[1] ?? NaN;
      const key = item.options.find(({ id }) => id === item.key);
      const others = item.options
        .filter(({ id }) => id !== item.key)
        .map(({ reason }) => after(reason));
      expect(Math.max(...others)).toBeLessThan(after(key?.reason ?? ''));
    }
  });

  it('grow towards the joint as a lever has it', () => {
    for (const item of draws(fingersClear, 'how-hard-it-squeezes')) {
      if (item.kind !== 'numeric') throw new Error(item.kind);
      const [leg = NaN, push = NaN, from = NaN] = numbersIn(item.prompt);
      expect(item.key * from).toBeCloseTo(push * leg, 6);
    }
  });

  it('leave room for a finger at the key only, by the side of a triangle', () => {
    for (const item of draws(fingersClear, 'where-it-is-safe')) {
      if (item.kind !== 'choice') throw new Error(item.kind);
      const [, , to = NaN] = numbersIn(item.prompt);
      for (const { id, text } of item.options) {
        const along = numbersIn(text)[0] ?? NaN;
        // Side² = 2 R² (1 − cos 120°): law of cosines between two of three feet.
        const circle = along * Math.sin((to * Math.PI) / 180);
        const side = Math.sqrt(2 * circle ** 2 * (1 - Math.cos((2 * Math.PI) / 3)));
        expect(side > 16, item.prompt).toBe(id === item.key);
      }
    }
  });

  it('have rings that lie apart', () => {
    for (const [family, template] of [
      [fingersClear, 'point-at-the-pinch'],
      [leftOut, 'point-at-the-stand'],
      [overTheFeet, 'first-to-tip'],
    ] as const)
      for (const item of draws(family, template)) {
        if (item.kind !== 'point') throw new Error(template);
        for (const one of item.spots)
          for (const other of item.spots)
            if (one !== other)
              expect(Math.hypot(one.x - other.x, one.y - other.y), item.prompt).toBeGreaterThan(24);
      }
  });
});

describe('ground', () => {
  it('falls by way × tangent', () => {
    for (const item of draws(groundAndHands, 'downhill-leg')) {
      if (item.kind !== 'numeric') throw new Error(item.kind);
      const [deg = NaN, , across = NaN] = numbersIn(item.prompt);
      expect(Math.atan2(item.key, across)).toBeCloseTo((deg * Math.PI) / 180, 9);
    }
  });
});
