import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { drawItem } from '../draw-item';
import type { ItemFamily } from '../item-family';
import type { Item } from '../item';
import { afterTheAlignment } from './after-the-alignment';
import { firstSlewsOnALean } from './first-slews-on-a-lean';
import { halfTurnOfTheVial } from './half-turn-of-the-vial';
import { handsAtTheTripod } from './hands-at-the-tripod';
import { howFarTheLeg } from './how-far-the-leg';
import { readTheBubble } from './read-the-bubble';
import { whichLeg } from './which-leg';

/*
 * Every question is answered anew from its own words: directions by the clock's face, heads by the closed
 * form (2/3r) Σ h (sin ψ, cos ψ) of three feet, leans by t cos(A − A_t) (design, "Levelling"). None of it
 * uses the code that made the question.
 */

const world = loadItemWorld();
const rad = Math.PI / 180;

type Of<K extends Item['kind']> = Extract<Item, { kind: K }>;

function draws<K extends Item['kind']>(
  family: ItemFamily,
  template: string,
  kind: K,
  count = 120,
): Of<K>[] {
  return Array.from({ length: count }, (_, n) =>
    drawItem(family, template, { seed: `fact ${String(n)}`, world }),
  ).map((item) => {
    if (!isOf(item, kind)) throw new Error(`${template} asks another kind of question`);
    return item;
  });
}
const isOf = <K extends Item['kind']>(item: Item, kind: K): item is Of<K> => item.kind === kind;

const number = (text: string | undefined): number => Number((text ?? '').replace('−', '-'));
const numbersIn = (text: string): number[] =>
  (text.match(/−?\d+(\.\d+)?/g) ?? []).map((one) => number(one));

/** Degrees clockwise from 12 of every clock time in a text, in order. */
const clocksIn = (text: string): number[] =>
  [...text.matchAll(/(half past )?(\d+)( o’clock)?/g)]
    .filter(([, half, , oclock]) => half !== undefined || oclock !== undefined)
    .map(([, half, hour]) => (30 * Number(hour) + (half === undefined ? 0 : 15)) % 360);

type Vector = { x: number; y: number };
const towards = (mm: number, deg: number): Vector => ({
  x: mm * Math.sin(deg * rad),
  y: mm * Math.cos(deg * rad),
});
const length = ({ x, y }: Vector): number => Math.hypot(x, y);
const plus = (a: Vector, b: Vector): Vector => ({ x: a.x + b.x, y: a.y + b.y });
const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y });
const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y;

/** "4 mm from the middle, towards 7 o’clock" → where that is. */
function placesIn(text: string): Vector[] {
  return [
    ...text.matchAll(
      /([\d.]+) mm from the middle, towards ((?:half past )?\d+(?: o’clock)?)|in the (?:middle of the )?ring/g,
    ),
  ].map(([, mm, clock]) =>
    clock === undefined ? { x: 0, y: 0 } : towards(Number(mm), clocksIn(clock)[0] ?? NaN),
  );
}
const wordsOf = (item: Item): string => item.drawing?.alternative ?? '';

/** Where the legs stand: A, B, C. */
const legsIn = (item: Item): number[] =>
  clocksIn(/Leg A stands.*?leg C stands at [^.]*\./.exec(wordsOf(item))?.[0] ?? '');
const legDeg = (item: Item, name: string): number => legsIn(item)['ABC'.indexOf(name)] ?? NaN;

function rightText(item: Of<'choice'>): string {
  return item.options.find(({ id }) => id === item.key)?.text ?? '';
}
const wrongTexts = (item: Of<'choice'>): string[] =>
  item.options.filter(({ id }) => id !== item.key).map(({ text }) => text);

describe('what the bubble tells', () => {
  it('the high side is where the bubble stands, and no other side is offered as right', () => {
    for (const item of draws(readTheBubble, 'high-side', 'choice')) {
      const [bubble = { x: 0, y: 0 }] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
      const along = (text: string) => dot(towards(1, clocksIn(text)[0] ?? NaN), bubble);
      const right = along(rightText(item));
      for (const wrong of wrongTexts(item)) expect(along(wrong)).toBeLessThan(right - 1);
    }
  });

  it('the degrees are half the millimetres, 2 mm a degree', () => {
    // Design, "Levelling": 2 mm per degree is a glass of 114.6 mm radius.
    for (const item of draws(readTheBubble, 'how-many-degrees', 'numeric')) {
      const [bubble = { x: NaN, y: NaN }] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
      expect(item.key).toBeCloseTo(length(bubble) / 2, 1);
    }
  });

  it('the bubble that is pointed at lies on the high side, 2 mm a degree from the middle', () => {
    for (const item of draws(readTheBubble, 'point-bubble', 'point')) {
      const [side = NaN] = clocksIn(item.prompt);
      const tilt = number(/stands ([\d.]+)° high/.exec(item.prompt)?.[1]);
      const wanted = towards(2 * tilt, side);
      for (const { id, where } of item.spots) {
        const [place = { x: NaN, y: NaN }] = placesIn(where);
        const off = length(minus(place, wanted));
        if (id === item.key) expect(off).toBeLessThan(0.3);
        else expect(off).toBeGreaterThan(1.5);
      }
    }
  });

  it('a leg let out moves the bubble as the feedback then shows it', () => {
    for (const item of draws(readTheBubble, 'predict-leg-out', 'choice')) {
      const [before, after] = placesIn(
        (item.afterwards?.alternative ?? '').split('leg C')[1] ?? '',
      );
      if (before === undefined || after === undefined) throw new Error('two bubbles are shown');
      const moved = minus(after, before);
      const along = (text: string) => dot(towards(1, clocksIn(text)[0] ?? NaN), moved);
      const best = Math.max(...item.options.map(({ text }) => along(text)));
      expect(along(rightText(item))).toBe(best);
    }
  });
});

/** The lean left when one leg carries the head higher by h, as a share of the radius; bubble units. */
const afterLeg = (bubble: Vector, legAtDeg: number, byMm: number): number =>
  length(plus(bubble, towards(byMm, legAtDeg)));

describe('which leg', () => {
  it('is the one that alone leaves the least lean, found by trying every length', () => {
    for (const item of draws(whichLeg, 'first-leg', 'choice')) {
      const [bubble = { x: NaN, y: NaN }] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
      const best = (text: string): number => {
        const [, name = '', out] = /Leg ([ABC]): (let)?/.exec(text) ?? [];
        const sign = out === undefined ? -1 : 1;
        const tries = Array.from({ length: 400 }, (_, n) => (n + 1) / 20);
        return Math.min(...tries.map((mm) => afterLeg(bubble, legDeg(item, name), sign * mm)));
      };
      const right = best(rightText(item));
      for (const wrong of wrongTexts(item)) expect(best(wrong)).toBeGreaterThan(right + 0.5);
      // The right leg the wrong way only makes it worse.
      expect(item.options.some(({ text }) => best(text) > length(bubble))).toBe(true);
    }
  });

  it('stops where the other leg alone can reach the middle, and at no other place offered', () => {
    for (const item of draws(whichLeg, 'stop-where', 'point')) {
      const [, first = '', next = ''] = /begin with leg (.), and leg (.)/.exec(item.prompt) ?? [];
      const [bubble = { x: NaN, y: NaN }] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
      const across = (place: Vector, name: string) =>
        Math.abs(dot(place, towards(1, legDeg(item, name) + 90)));
      const serves = item.spots.filter(({ where }) => {
        const [place = { x: NaN, y: NaN }] = placesIn(where);
        // Reached by the first leg alone, and on the next leg's line.
        return across(minus(place, bubble), first) < 0.8 && across(place, next) < 0.8;
      });
      expect(serves.map(({ id }) => id)).toEqual([item.key]);
    }
  });

  it('was moved as the way of the bubble says', () => {
    for (const item of draws(whichLeg, 'what-was-done', 'choice')) {
      const [before, after] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
      if (before === undefined || after === undefined) throw new Error('two bubbles are shown');
      const moved = minus(after, before);
      const fits = (text: string) => {
        const [, name = '', out] = /Leg ([ABC]) was (let)?/.exec(text) ?? [];
        return dot(towards(out === undefined ? -1 : 1, legDeg(item, name)), moved);
      };
      for (const wrong of wrongTexts(item))
        expect(fits(rightText(item))).toBeGreaterThan(fits(wrong) + 0.5);
    }
  });

  it('helped by the two others goes the way that lessens the lean', () => {
    for (const item of draws(whichLeg, 'at-its-end', 'several')) {
      const [bubble = { x: NaN, y: NaN }] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
      for (const { text, right } of item.options) {
        const [, name = '', out] = /Leg ([ABC]): (let)?/.exec(text) ?? [];
        const after = afterLeg(bubble, legDeg(item, name), out === undefined ? -0.5 : 0.5);
        expect(after < length(bubble)).toBe(right);
      }
    }
  });
});

describe('how far', () => {
  it('is half the millimetres of bubble times the millimetres to a degree', () => {
    for (const item of draws(howFarTheLeg, 'mm-for-bubble', 'numeric')) {
      const [bubble = { x: NaN, y: NaN }] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
      const perDeg = number(/tripod (\d+) mm/.exec(item.prompt)?.[1]);
      const reckoned = (length(bubble) / 2) * perDeg;
      // Both the told rule and whole millimetres are rounded.
      expect(Math.abs(item.key - reckoned)).toBeLessThan(0.06 * reckoned + 1);
    }
  });

  it('a board under one foot leans a head by its thickness over 1.5 radii: 10 mm at 0.45 m is 0.849°', () => {
    // Design, "Levelling".
    expect(Math.atan(10 / (1.5 * 450)) / rad).toBeCloseTo(0.849, 3);
    for (const item of draws(howFarTheLeg, 'wide-or-narrow', 'match')) {
      const board = number(/board (\d+) mm/.exec(item.prompt)?.[1]);
      for (const { left, right } of item.pairs) {
        const radius = numbersIn(item.left.find(({ id }) => id === left)?.text ?? '')[0] ?? NaN;
        const lean = numbersIn(item.right.find(({ id }) => id === right)?.text ?? '')[0];
        // Told to a tenth of a degree.
        expect(lean).toBe(Math.round((10 * Math.atan(board / (1.5 * radius))) / rad) / 10);
      }
    }
  });

  it('a sunk foot leans the head by what it sank over the millimetres to a degree', () => {
    for (const item of draws(howFarTheLeg, 'sunk-foot', 'numeric')) {
      const sank = number(/sinks (\d+) mm/.exec(item.prompt)?.[1]);
      const perDeg = number(/tripod (\d+) mm/.exec(item.prompt)?.[1]);
      expect(Math.abs(item.key - sank / perDeg)).toBeLessThan(0.06 * item.key);
    }
  });

  it('the bubble afterwards is where the answer says, and nowhere else that is offered', () => {
    for (const item of draws(howFarTheLeg, 'bubble-after', 'choice')) {
      const [, after] = placesIn((item.afterwards?.alternative ?? '').split('leg C')[1] ?? '');
      if (after === undefined) throw new Error('two bubbles are shown');
      const off = (text: string) => length(minus(placesIn(text)[0] ?? { x: NaN, y: NaN }, after));
      expect(off(rightText(item))).toBeLessThanOrEqual(0.51);
      for (const wrong of wrongTexts(item)) expect(off(wrong)).toBeGreaterThan(0.9);
    }
  });
});

describe('the half-turn', () => {
  const bothPlaces = (item: Item): [Vector, Vector] => {
    const [before, after] = placesIn(wordsOf(item).split('leg C')[1] ?? '');
    if (before === undefined || after === undefined) throw new Error('two bubbles are shown');
    return [before, after];
  };

  it('shows the vial’s own fault as half of the bubble’s way', () => {
    for (const item of draws(halfTurnOfTheVial, 'own-fault', 'numeric')) {
      const [before, after] = bothPlaces(item);
      expect(item.key).toBeCloseTo(length(minus(before, after)) / 2, 1);
    }
  });

  it('shows the head’s lean halfway between, half a degree to the millimetre', () => {
    for (const item of draws(halfTurnOfTheVial, 'heads-part', 'numeric')) {
      const [before, after] = bothPlaces(item);
      expect(item.key).toBeCloseTo(length(plus(before, after)) / 4, 1);
    }
  });

  it('tells head and vial apart; each wrong verdict would have been seen otherwise', () => {
    for (const item of draws(halfTurnOfTheVial, 'verdict', 'choice')) {
      const [before, after] = placesIn(item.prompt);
      if (before === undefined || after === undefined) throw new Error('two places are told');
      const lean = length(plus(before, after)) / 4;
      const own = length(minus(before, after)) / 2;
      const said = (text: string) => ({
        lean: number(/leans by ([\d.]+)°/.exec(text)?.[1] ?? '0'),
        own: text.includes('so does the vial')
          ? 2 * number(/leans by ([\d.]+)°/.exec(text)?.[1])
          : number(/vial is ([\d.]+) mm out/.exec(text)?.[1] ?? '0'),
      });
      const far = (text: string) =>
        Math.abs(said(text).lean - lean) + Math.abs(said(text).own - own);
      expect(far(rightText(item))).toBeLessThan(0.03);
      for (const wrong of wrongTexts(item)) expect(far(wrong)).toBeGreaterThan(0.4);
    }
  });

  it('leaves the bubble of a level head where the vial alone puts it', () => {
    for (const item of draws(halfTurnOfTheVial, 'leave-it', 'point')) {
      const [before, after] = bothPlaces(item);
      const own = { x: (after.x - before.x) / 2, y: (after.y - before.y) / 2 };
      const off = (where: string) => length(minus(placesIn(where)[0] ?? own, own));
      for (const { id, where } of item.spots) expect(off(where) < 0.6, where).toBe(id === item.key);
    }
  });
});

const winds = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
];
const windDeg = (name: string | undefined): number => 45 * winds.indexOf(name ?? '');
const windsIn = (text: string): number[] =>
  [...text.matchAll(/in the ((?:north|south)-(?:east|west)|north|south|east|west)/g)].map(
    ([, name]) => windDeg(name),
  );
const leanIn = (text: string): number => 60 * number(/([\d.]+)° high/.exec(text)?.[1]);

describe('first slews on a lean', () => {
  it('land high by t cos(A − A_t), to a minute and a half', () => {
    // Design, "Levelling", to first order; t² tan² a / 2 is 1′ for 1.4° at 45°.
    for (const item of draws(firstSlewsOnALean, 'how-high', 'numeric')) {
      const [high = NaN, star = NaN] = windsIn(item.prompt);
      const expected = leanIn(item.prompt) * Math.cos((star - high) * rad);
      expect(Math.abs(item.key - expected)).toBeLessThan(1.5);
    }
  });

  it('put the star into the eyepiece when the lean is less than the field reaches', () => {
    for (const item of draws(firstSlewsOnALean, 'in-the-eyepiece', 'choice')) {
      const field = number(/shows (\d+)′/.exec(item.prompt)?.[1]);
      const lean = number(/([\d.]+)° high/.exec(item.prompt)?.[1]) * 60;
      expect(rightText(item).startsWith('Yes'), item.prompt).toBe(lean < field);
    }
  });

  it('land too high at stars nearer to the high side than to the low one, and at no other', () => {
    for (const item of draws(firstSlewsOnALean, 'which-too-low', 'several')) {
      const [high = NaN] = windsIn(item.prompt);
      const wantsHigh = item.prompt.endsWith('too high?');
      for (const { text, right } of item.options) {
        const up = Math.cos(((windsIn(text)[0] ?? NaN) - high) * rad) > 0;
        expect(up === wantsHigh).toBe(right);
      }
    }
  });

  it('miss most straight along the slope', () => {
    for (const item of draws(firstSlewsOnALean, 'point-worst', 'point')) {
      const high = windDeg(/high: ([a-z-]+)\./.exec(wordsOf(item))?.[1]);
      const sign = item.prompt.includes('too high?') ? 1 : -1;
      const up = (where: string) => sign * Math.cos(((windsIn(where)[0] ?? NaN) - high) * rad);
      const best = Math.max(...item.spots.map(({ where }) => up(where)));
      expect(up(item.spots.find(({ id }) => id === item.key)?.where ?? '')).toBe(best);
      expect(item.spots.filter(({ where }) => up(where) > best - 0.1)).toHaveLength(1);
    }
  });
});

describe('after the alignment', () => {
  it('a computer that takes its base as level is off by twice the lean across the sky', () => {
    for (const item of draws(afterTheAlignment, 'taken-for-level', 'numeric')) {
      const [high = NaN, setOn = NaN, star = NaN] = windsIn(item.prompt);
      const t = leanIn(item.prompt);
      const expected = t * (Math.cos((star - high) * rad) - Math.cos((setOn - high) * rad));
      expect(Math.abs(item.key - expected)).toBeLessThan(2);
    }
  });

  it('a foot that sinks costs what it sank over the millimetres to a degree, times 60', () => {
    for (const item of draws(afterTheAlignment, 'sinks-afterwards', 'numeric')) {
      const sank = number(/sinks by (\d+) mm/.exec(item.prompt)?.[1]);
      const perDeg = number(/tripod (\d+) mm/.exec(item.prompt)?.[1]);
      expect(Math.abs(item.key - (60 * sank) / perDeg)).toBeLessThan(0.06 * item.key);
    }
  });

  it('ranks the evenings as first principles do', () => {
    for (const item of draws(afterTheAlignment, 'most-harm', 'order', 60)) {
      const harm = (text: string): number => {
        const [first = NaN] = numbersIn(text);
        if (text.includes('aligned on two stars')) return 0;
        return text.includes('sinks') ? (60 * first) / 11.8 : 120 * first;
      };
      const of = (id: string) => harm(item.steps.find((step) => step.id === id)?.text ?? '');
      for (const { first, then } of item.rules) expect(of(first)).toBeLessThan(of(then));
      expect(item.rules).toHaveLength(3);
    }
  });

  it('what spoils is what happens after it, and every wrong option was so before', () => {
    const later = /sinks|stumbles|slips|make the base level/;
    for (const item of draws(afterTheAlignment, 'what-spoils', 'several'))
      for (const { text, right } of item.options) expect(later.test(text)).toBe(right);
  });
});

describe('hands at the tripod', () => {
  it('an open leg under the tube runs in unless somebody holds the weight', () => {
    for (const item of draws(handsAtTheTripod, 'opened-alone', 'choice')) {
      const held = item.prompt.includes('with both hands');
      expect(rightText(item).includes('rests in the helper')).toBe(held);
      expect(rightText(item).includes('goes over')).toBe(!held);
    }
  });

  it('a foot that sinks sends the bubble straight away from it, 2 mm a degree', () => {
    for (const item of draws(handsAtTheTripod, 'soft-foot', 'choice')) {
      const [, name = '', sank] = /foot (.) sinks (\d+) mm/.exec(item.prompt) ?? [];
      const mm = 2 * (Math.atan(Number(sank) / 675) / rad);
      const wanted = towards(-mm, legDeg(item, name));
      const off = (text: string) => length(minus(placesIn(text)[0] ?? { x: NaN, y: NaN }, wanted));
      expect(off(rightText(item))).toBeLessThan(0.6);
      for (const wrong of wrongTexts(item)) expect(off(wrong)).toBeGreaterThan(1);
    }
  });
});
