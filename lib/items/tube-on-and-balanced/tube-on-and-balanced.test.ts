import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { drawItem } from '../draw-item';
import type { ItemFamily } from '../item-family';
import type { Item } from '../item';
import { balancePoint } from './balance-point';
import { creepAndClutch } from './creep-and-clutch';
import { intoTheClamp } from './into-the-clamp';
import { partsGoOn } from './parts-go-on';
import { raisedTube } from './raised-tube';
import { whichEndSinks } from './which-end-sinks';

/*
 * Every question is answered anew from its own words, by the law of the lever: each weight times its place
 * (any first-year book on statics). None of it uses the code that made the question.
 */

const world = loadItemWorld();

type Of<K extends Item['kind']> = Extract<Item, { kind: K }>;
const isOf = <K extends Item['kind']>(item: Item, kind: K): item is Of<K> => item.kind === kind;

function draws<K extends Item['kind']>(family: ItemFamily, template: string, kind: K): Of<K>[] {
  return Array.from({ length: 120 }, (_, n) =>
    drawItem(family, template, { seed: `fact ${String(n)}`, world }),
  ).map((item) => {
    if (!isOf(item, kind)) throw new Error(`${template} asks another kind of question`);
    return item;
  });
}

const number = (text: string | undefined): number => Number((text ?? '').replace('−', '-'));
const find = (text: string, pattern: RegExp): number => number(pattern.exec(text)?.[1]);
const wordsOf = (item: Item): string => item.drawing?.alternative ?? '';
const rightText = (item: Of<'choice'>): string =>
  item.options.find(({ id }) => id === item.key)?.text ?? '';
const clampIn = (item: Item): number => find(wordsOf(item), /clamp grips at (\d+) mm/);
const crossIn = (item: Item): number => find(wordsOf(item), /cross at (\d+) mm/);

describe('which end sinks', () => {
  it('is the one on whose side of the clamp the balance point lies, beyond what the clutch takes', () => {
    for (const item of draws(whichEndSinks, 'let-it-go', 'choice')) {
      const takes = find(item.prompt, /within (\d+) mm/);
      // Places count from the front towards the back.
      const behind = crossIn(item) - clampIn(item);
      const start = Math.abs(behind) <= takes ? 'It stays' : behind > 0 ? 'The back' : 'The front';
      expect(rightText(item).startsWith(start)).toBe(true);
    }
  });

  it('goes nearer to the clamp: the tube slides until the clamp grips at the cross', () => {
    for (const item of draws(whichEndSinks, 'which-way', 'choice')) {
      const behind = crossIn(item) - clampIn(item);
      expect(rightText(item)).toBe(
        `${behind > 0 ? 'Forward' : 'Back'} by ${String(Math.abs(behind))} mm`,
      );
    }
    for (const item of draws(whichEndSinks, 'how-far', 'numeric'))
      expect(item.key).toBe(Math.abs(crossIn(item) - clampIn(item)));
  });

  it('one spot alone is the place where all weights balance', () => {
    for (const item of draws(whichEndSinks, 'grip-here', 'point')) {
      const balance = find(item.prompt, /balance at (\d+) mm/);
      for (const { id, where } of item.spots)
        expect(find(where, /at (\d+) mm/) === balance).toBe(id === item.key);
    }
  });
});

describe('the balance point', () => {
  it('of a tube and a camera leaves no torque', () => {
    for (const item of draws(balancePoint, 'two-weights', 'numeric')) {
      const [, tubeKg, tubeMm] =
        /weighs ([\d.]+) kg and balances at (\d+) mm/.exec(item.prompt) ?? [];
      const [, partMm, kg] =
        /At (\d+) mm you strap on a camera of ([\d.]+) kg/.exec(item.prompt) ?? [];
      const torque =
        Number(tubeKg) * (Number(tubeMm) - item.key) + Number(kg) * (Number(partMm) - item.key);
      expect(torque).toBeCloseTo(0, 6);
    }
  });

  it('moves by m d / (M + m) when a part goes on', () => {
    // Design, "Balance".
    for (const item of draws(balancePoint, 'how-far-it-moves', 'numeric')) {
      const M = find(item.prompt, /weighs ([\d.]+) kg/);
      const m = find(item.prompt, /, (\d+) g, goes/) / 1000;
      const d = find(item.prompt, /goes on (\d+) mm/);
      expect(Math.abs(item.key - (m * d) / (M + m))).toBeLessThan(0.5);
    }
  });

  it('lies as far from the one edge as from the other', () => {
    for (const item of draws(balancePoint, 'between-the-edges', 'choice')) {
      const [front, back] = [
        find(item.prompt, /front just begins to sink with the clamp at (\d+)/),
        find(item.prompt, /back with the clamp at (\d+)/),
      ];
      const halfway = item.options.filter(
        ({ text }) => find(text, /At (\d+) mm/) === (front + back) / 2,
      );
      expect(halfway.map(({ id }) => id)).toEqual([item.key]);
    }
  });

  it('moves more for more weight times distance, in the order of the answer', () => {
    for (const item of draws(balancePoint, 'most-shift', 'order')) {
      const M = find(item.prompt, /, ([\d.]+) kg/);
      const shift = (id: string) => {
        const text = item.steps.find((step) => step.id === id)?.text ?? '';
        const [, g, mm] = /, (\d+) g, (\d+) mm away/.exec(text) ?? [];
        return (Number(g) * Number(mm)) / (1000 * M + Number(g));
      };
      for (const { first, then } of item.rules) expect(shift(first)).toBeLessThan(shift(then));
    }
  });
});

describe('a part that goes on', () => {
  it('sinks the end where it sits when its lever beats the clutch', () => {
    for (const item of draws(partsGoOn, 'phone-with-no-hand', 'choice')) {
      const takes = find(item.prompt, /takes (\d+) mm/);
      const balance = find(item.prompt, /balanced at (\d+) mm/);
      const [, grams, place] = /: (\d+) g at (−?\d+) mm/.exec(item.prompt) ?? [];
      const kit = world.kits.find(({ name }) => item.prompt.startsWith(name));
      if (kit === undefined) throw new Error('the question names its telescope');
      const M =
        kit.tube.massKg +
        kit.parts
          .filter(({ id }) => ['prism', 'diagonal', 'finder', 'eyepiece-25'].includes(id))
          .reduce((sum, { massKg }) => sum + massKg, 0);
      // The clutch holds M g × what it takes; the part pulls with m g × its distance.
      const pulls = (Number(grams) / 1000) * (number(place) - balance);
      const start =
        Math.abs(pulls) <= M * takes ? 'It stays' : pulls > 0 ? 'Its back' : 'Its front';
      // A tube off its kind by a rounded millimetre may turn the scale; then nothing is said here.
      if (Math.abs(Math.abs(pulls) / (M * takes) - 1) > 0.05)
        expect(rightText(item).startsWith(start), item.prompt).toBe(true);
    }
  });

  it('makes the end heavier on whose side of the balance point it sits', () => {
    for (const item of draws(partsGoOn, 'which-make-heavier', 'several')) {
      const balance = find(item.prompt, /balances at (\d+) mm/);
      const end = /make its (front|back)/.exec(item.prompt)?.[1];
      for (const { right, reason } of item.options) {
        const place = find(reason, /at (−?\d+) mm/);
        expect((place < balance ? 'front' : 'back') === end).toBe(right);
      }
    }
  });
});

describe('a raised tube', () => {
  it('creeps when its weight’s arm h sin a is longer than the clutch takes', () => {
    for (const item of draws(raisedTube, 'raise-it', 'choice')) {
      const h = find(item.prompt, /lies (\d+) mm/);
      const takes = find(item.prompt, /arm of (\d+) mm/);
      const a = find(item.prompt, /raise it to (\d+)°/);
      const above = item.prompt.includes('mm above');
      const arm = h * Math.sin((a * Math.PI) / 180);
      const start = arm <= takes ? 'It stays: the clutch' : above ? 'Its back' : 'Its front';
      expect(rightText(item).startsWith(start), item.prompt).toBe(true);
    }
  });

  it('at 60° pulls on half of its level arm', () => {
    for (const item of draws(raisedTube, 'arm-at-60', 'numeric'))
      expect(item.key).toBeCloseTo(find(item.prompt, /arm of (\d+) mm/) / 2, 9);
  });

  it('is pointed at where its pull, as told in words, is greatest', () => {
    for (const item of draws(raisedTube, 'point-creeps', 'point')) {
      const pull = (where: string) =>
        find(wordsOf(item), new RegExp(`at ${/(\d+)°/.exec(where)?.[1] ?? ''}° (\\d+(?:\\.\\d)?)`));
      const key = item.spots.find(({ id }) => id === item.key)?.where ?? '';
      for (const { id, where } of item.spots)
        if (id !== item.key) expect(pull(where)).toBeLessThan(pull(key));
    }
  });
});

describe('creep', () => {
  it('of a degree is sixty arcminutes at every target', () => {
    for (const item of draws(creepAndClutch, 'how-far-off', 'numeric'))
      expect(item.key).toBeCloseTo(60 * find(item.prompt, /by ([\d.]+)°/), 6);
  });

  it('leaves a target in view when it is less than from the middle to the edge', () => {
    for (const item of draws(creepAndClutch, 'in-the-eyepiece', 'choice')) {
      const crept = 60 * find(item.prompt, /crept by ([\d.]+)°/);
      const field = find(item.prompt, /shows (\d+)′/);
      expect(rightText(item).startsWith('In view')).toBe(crept < field);
    }
  });
});

describe('into the clamp', () => {
  it('a tube falls only when neither hand nor stop screw holds it', () => {
    for (const item of draws(intoTheClamp, 'open-the-clamp', 'choice')) {
      const hand = item.prompt.includes('One hand is under');
      const screw = item.prompt.includes('stop screw in.');
      expect(rightText(item).includes('falls')).toBe(!hand && !screw);
      expect(rightText(item).includes('catches')).toBe(!hand && screw);
    }
  });

  it('the right order of lifting ends with letting go', () => {
    for (const item of draws(intoTheClamp, 'put-it-in', 'order')) {
      const last = item.steps.find(({ text }) => text.startsWith('Let go'))?.id;
      expect(item.rules.some(({ then }) => then === last)).toBe(true);
      expect(item.rules.some(({ first }) => first === last)).toBe(false);
    }
  });
});
