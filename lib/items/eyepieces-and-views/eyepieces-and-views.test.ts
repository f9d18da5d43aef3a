import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { drawItem } from '../draw-item';
import { gradeItem } from '../grade-item';
import type { Item } from '../item';
import { familyOf } from '../item-bank';

const world = loadItemWorld();
/** Focal length and width in millimetres, and what each does to right and up, by the design. */
const scopes: Readonly<Record<string, { F: number; D: number; view: readonly [number, number] }>> =
  {
    Wren: { F: 500, D: 80, view: [1, 1] },
    Heron: { F: 600, D: 120, view: [-1, -1] },
    Owl: { F: 1365, D: 105, view: [-1, 1] },
  };

function drawn<K extends Item['kind']>(family: string, template: string, kind: K) {
  return Array.from({ length: 80 }, (_, n) => {
    const item = drawItem(familyOf(family), template, { seed: `test ${String(n)}`, world });
    if (item.kind !== kind) throw new Error(`${template} is no ${kind}`);
    return item as Extract<Item, { kind: K }>;
  });
}
const scopeIn = (text: string) => {
  const name = Object.keys(scopes).find((one) => text.includes(one)) ?? '';
  const found = scopes[name];
  if (found === undefined) throw new Error(`no telescope in "${text}"`);
  return found;
};
/** The number before a unit: `numberIn('the 9 mm eyepiece', /([\d.]+) mm eyepiece/)`. */
function numberIn(text: string, pattern: RegExp): number {
  const found = pattern.exec(text)?.[1];
  if (found === undefined) throw new Error(`no ${String(pattern)} in "${text}"`);
  return Number(found.replace('−', '-'));
}
const eyepieceIn = (text: string) => numberIn(text, /(\d+) mm eyepiece/);
const rightOf = (item: Extract<Item, { kind: 'choice' }>) =>
  item.options.find(({ id }) => id === item.key) ?? { text: '', reason: '' };

/** Every order of the steps, and which of them earn full marks. */
function fullOrders(item: Extract<Item, { kind: 'order' }>): string[][] {
  const all = (ids: readonly string[]): string[][] =>
    ids.length === 0
      ? [[]]
      : ids.flatMap((id) => all(ids.filter((one) => one !== id)).map((rest) => [id, ...rest]));
  return all(item.steps.map(({ id }) => id)).filter((steps) => {
    const graded = gradeItem(item, { kind: 'order', steps });
    return graded.ok && graded.feedback.mark === 1;
  });
}
const textOf = (item: Extract<Item, { kind: 'order' }>, id: string) =>
  item.steps.find((one) => one.id === id)?.text ?? '';

describe('how many times an eyepiece magnifies', () => {
  it('is focal length over focal length: 500 mm and 25 mm make 20 times', () => {
    for (const item of drawn('times-larger', 'reckon', 'numeric')) {
      const { F } = scopeIn(item.prompt);
      expect(item.key * eyepieceIn(item.prompt)).toBeCloseTo(F, 6);
    }
  });

  it('is met by one eyepiece only, and the others say rightly whether they do too much', () => {
    for (const item of drawn('times-larger', 'which-does-it', 'choice')) {
      const { F } = scopeIn(item.prompt);
      const wanted = numberIn(item.prompt, /about ([\d.]+) times/);
      for (const option of item.options) {
        const gives = F / eyepieceIn(option.text);
        if (option.id === item.key) expect(Math.abs(gives - wanted)).toBeLessThanOrEqual(0.5);
        else {
          expect(Math.abs(gives / wanted - 1)).toBeGreaterThan(0.05);
          expect(option.reason.includes('too much')).toBe(gives > wanted);
        }
      }
    }
  });

  it('leaves one order only, and it runs evenly', () => {
    for (const item of drawn('times-larger', 'weakest-first', 'order')) {
      const [only = [], ...more] = fullOrders(item);
      expect(more).toEqual([]);
      const lengths = only.map((id) => eyepieceIn(textOf(item, id)));
      const down = item.prompt.includes('least magnifying first');
      expect(lengths).toEqual([...lengths].sort((a, b) => (down ? b - a : a - b)));
    }
  });

  it('differs from telescope to telescope for one eyepiece', () => {
    for (const item of drawn('times-larger', 'from-tube-to-tube', 'match')) {
      const f = numberIn(item.prompt, /of (\d+) mm/);
      for (const { left, right } of item.pairs) {
        const { F } = scopeIn(item.left.find(({ id }) => id === left)?.text ?? '');
        const told = numberIn(item.right.find(({ id }) => id === right)?.text ?? '', /([\d.]+)/);
        expect(Math.abs(told - F / f)).toBeLessThanOrEqual(0.5);
      }
    }
  });
});

describe('how wide a piece of sky an eyepiece shows', () => {
  it('is the apparent field over the magnification', () => {
    for (const item of drawn('sky-in-the-ring', 'reckon-field', 'numeric')) {
      const times = numberIn(item.prompt, /magnifies ([\d.]+) times/);
      const apparent = numberIn(item.prompt, /field is (\d+)°/);
      expect(item.key / ((60 * apparent) / times)).toBeCloseTo(1, 2);
    }
  });

  it('is told by the Moon in the ring as well: what is drawn, counted in Moons of 31′', () => {
    for (const item of drawn('sky-in-the-ring', 'moon-for-a-ruler', 'numeric')) {
      const moons = numberIn(item.drawing?.alternative ?? '', /([\d.]+) Moons/);
      const { F } = scopeIn(item.prompt);
      expect(item.key).toBeCloseTo((50 * 60 * eyepieceIn(item.prompt)) / F, 6);
      // Whoever counts the Moons gets full marks.
      expect(Math.abs((31 * moons) / item.key - 1)).toBeLessThan(0.12);
      const [ring, moon] = (item.drawing?.shapes ?? []).flatMap((one) =>
        one.kind === 'circle' ? [one.r] : [],
      );
      expect((ring ?? 0) / (moon ?? 1)).toBeCloseTo(item.key / 31, 6);
    }
  });

  it('holds what is called whole with a tenth to spare, and not what hangs over', () => {
    for (const item of drawn('sky-in-the-ring', 'what-is-whole', 'several')) {
      const { F } = scopeIn(item.prompt);
      const field = (50 * 60 * eyepieceIn(item.prompt)) / F;
      for (const option of item.options) {
        const size = numberIn(option.text, /(\d+)′ wide/);
        expect(option.right).toBe(field >= 1.1 * size);
        expect(option.reason.includes('hangs over')).toBe(field < size);
      }
    }
  });

  it('shrinks by a stronger eyepiece as the prediction says', () => {
    for (const item of drawn('sky-in-the-ring', 'closer-in', 'choice')) {
      const { F } = scopeIn(item.prompt);
      const size = numberIn(item.prompt, /\((\d+)′\)/);
      const strong = numberIn(item.prompt, /will the (\d+) mm/);
      const field = (50 * 60 * strong) / F;
      expect(rightOf(item).text.includes('still whole')).toBe(field > size);
      expect(rightOf(item).text.includes('outside')).toBe(field < size);
    }
  });

  it('is wider for a wider apparent field at one magnification', () => {
    for (const item of drawn('sky-in-the-ring', 'same-focal-length', 'choice')) {
      const { F } = scopeIn(item.prompt);
      const f = numberIn(item.prompt, /Two (\d+) mm/);
      const wide = numberIn(item.prompt, /other of (\d+)°/);
      const told = numberIn(rightOf(item).text, /shows (\d+)′/);
      expect(Math.abs(told - (60 * wide * f) / F)).toBeLessThanOrEqual(0.5);
    }
  });
});

/**
 * Seconds for a star to cross a field through its middle, on the sphere: both ends of the way lie on the
 * star's circle, `field` apart: sin(field/2) = cos δ sin(H/2). Sidereal day 86 164.0905 s (IAU).
 */
function secondsOnSphere(fieldArcmin: number, declinationDeg: number): number {
  const rad = Math.PI / 180;
  const half = Math.asin(Math.sin((fieldArcmin / 120) * rad) / Math.cos(declinationDeg * rad));
  return (2 * half * 86_164.0905) / (2 * Math.PI);
}

describe('how long a star stays', () => {
  it('is what the turning sphere gives', () => {
    for (const item of drawn('star-adrift', 'how-long', 'numeric')) {
      const field = numberIn(item.prompt, /shows (\d+)′/);
      expect(item.key * 60).toBeCloseTo(secondsOnSphere(field, 0), 0);
    }
    for (const item of drawn('star-adrift', 'field-from-time', 'numeric')) {
      const seconds = numberIn(item.prompt, /takes (\d+) seconds/);
      expect(secondsOnSphere(item.key, 0) / seconds).toBeCloseTo(1, 2);
      const mm = numberIn(item.explanation, /the (\d+) mm eyepiece/);
      expect(item.key / ((50 * 60 * mm) / scopeIn(item.prompt).F)).toBeGreaterThan(0.96);
      expect(item.key / ((50 * 60 * mm) / scopeIn(item.prompt).F)).toBeLessThan(1.04);
    }
  });

  const declinationIn = (text: string) => numberIn(text, /declination ([+−]?[\d.]+)°/);

  it('is longest for the one that is farthest from the equator, by five in a hundred at least', () => {
    for (const item of drawn('star-adrift', 'longest-stay', 'choice')) {
      const stays = item.options.map(({ id, text }) => ({
        key: id === item.key,
        seconds: secondsOnSphere(60, declinationIn(text)),
      }));
      const [longest, next] = stays.sort((a, b) => b.seconds - a.seconds);
      expect(longest?.key).toBe(true);
      expect((longest?.seconds ?? 0) / (next?.seconds ?? 1)).toBeGreaterThan(1.05);
    }
  });

  it('leaves one order, from the equator to the poles', () => {
    for (const item of drawn('star-adrift', 'shortest-first', 'order')) {
      const [only = [], ...more] = fullOrders(item);
      expect(more).toEqual([]);
      const stays = only.map((id) => secondsOnSphere(60, declinationIn(textOf(item, id))));
      expect(stays).toEqual([...stays].sort((a, b) => a - b));
    }
  });

  it('decides whether a star is still in view', () => {
    for (const item of drawn('star-adrift', 'looked-away', 'choice')) {
      const field = numberIn(item.prompt, /shows (\d+)′/);
      const minutes = numberIn(item.prompt, /after (\d+) min/);
      const left = minutes * 60 > secondsOnSphere(field, 0) / 2;
      expect(rightOf(item).text.startsWith(left ? 'Out of view' : 'Still in view')).toBe(true);
      const told = numberIn(rightOf(item).text, /([\d.]+)′ from the middle/);
      expect(Math.abs(told - 15.041 * minutes)).toBeLessThan(0.6);
    }
  });
});

describe('the eyepiece for what one wants to see', () => {
  it('is the strongest that shows a cluster whole, and the others fail as they say', () => {
    for (const item of drawn('eyepiece-for-it', 'whole-and-large', 'choice')) {
      const { F } = scopeIn(item.prompt);
      const size = numberIn(item.prompt, /(\d+)′ wide/);
      const fieldOf = (text: string) => (50 * 60 * numberIn(text, /(\d+) mm/)) / F;
      const fits = item.options.filter(({ text }) => fieldOf(text) >= 1.1 * size);
      const best = fits.sort((a, b) => fieldOf(a.text) - fieldOf(b.text))[0];
      expect(best?.id).toBe(item.key);
      for (const { id, text, reason } of item.options) {
        if (id !== item.key) expect(reason.includes('stays outside')).toBe(fieldOf(text) < size);
      }
    }
  });

  it('parts a pair only where tube and magnification both do', () => {
    for (const item of drawn('eyepiece-for-it', 'part-the-pair', 'choice')) {
      const { F, D } = scopeIn(item.prompt);
      const apart = numberIn(item.prompt, /stand ([\d.]+)″/);
      const good = item.options.filter(({ text }) => {
        if (text.startsWith('None')) return apart < 116 / D;
        const times = F / eyepieceIn(text);
        return apart >= 116 / D && (apart / 60) * times >= 4 && times <= 2 * D;
      });
      expect(good.map(({ id }) => id)).toEqual([item.key]);
    }
  });

  it('magnifies twice the width in millimetres at most', () => {
    for (const item of drawn('eyepiece-for-it', 'too-much', 'several')) {
      const D = numberIn(item.prompt, /(\d+) mm wide/);
      for (const { text, right } of item.options) {
        expect(right).toBe(numberIn(text, /(\d+) times/) <= 2 * D);
      }
    }
  });

  it('is told by its exit pupil, read off the rule in words', () => {
    for (const item of drawn('eyepiece-for-it', 'disc-on-a-rule', 'numeric')) {
      const { D } = scopeIn(item.prompt);
      const shown = item.drawing?.alternative ?? '';
      const width = numberIn(shown, /to ([\d.]+) mm/) - numberIn(shown, /from ([\d.]+) mm/);
      expect(Math.abs(D / width / item.key - 1)).toBeLessThan(0.06);
    }
  });

  it('comes after the wide one', () => {
    for (const item of drawn('eyepiece-for-it', 'wide-first', 'order')) {
      const orders = fullOrders(item);
      expect(orders).toHaveLength(1);
      expect(textOf(item, orders[0]?.[0] ?? '')).toBe('Put the 25 mm eyepiece in');
    }
  });
});

const sideIn = (text: string): readonly [number, number] => [
  /\bright\b/i.test(text.replace('a bright', '')) ? 1 : -1,
  /upper|up\b|above/i.test(text) ? 1 : -1,
];

describe('which way round a view is', () => {
  it('makes the star come to the middle when the tube goes the right way, and no other', () => {
    for (const item of drawn('which-way-round', 'move-the-tube', 'choice')) {
      const { view } = scopeIn(item.prompt);
      const seen = sideIn(/in the (\w+ \w+) of the view/.exec(item.prompt)?.[1] ?? '');
      for (const { id, text } of item.options) {
        const [right, up] = sideIn(text);
        // Tried out: the tube goes one step, so the star shifts by one step the other way on the sky.
        const after = [seen[0] - view[0] * right, seen[1] - view[1] * up];
        expect(after.every((one) => one === 0)).toBe(id === item.key);
      }
    }
  });

  it('brings a corner of the view back to the sky', () => {
    for (const item of drawn('which-way-round', 'read-the-view', 'choice')) {
      const { view } = scopeIn(item.prompt);
      const seen = sideIn(/in the (\w+ \w+),/.exec(item.drawing?.alternative ?? '')?.[1] ?? '');
      expect(sideIn(rightOf(item).text)).toEqual([seen[0] * view[0], seen[1] * view[1]]);
      const star = item.drawing?.shapes.find(
        (one) => one.kind === 'circle' && one.fill === 'sky-lamp',
      );
      if (star?.kind !== 'circle') throw new Error('no star is drawn');
      expect([Math.sign(star.cx - 160), Math.sign(120 - star.cy)]).toEqual(seen);
    }
  });

  it('puts the faint star into one corner', () => {
    for (const item of drawn('which-way-round', 'point-in-the-view', 'point')) {
      const { view } = scopeIn(item.prompt);
      const sky = sideIn(/stands .+ it\./.exec(item.prompt)?.[0] ?? '');
      const spot = item.spots.find(({ id }) => id === item.key);
      expect([Math.sign((spot?.x ?? 0) - 160), Math.sign(120 - (spot?.y ?? 0))]).toEqual([
        sky[0] * view[0],
        sky[1] * view[1],
      ]);
      expect(sideIn(spot?.where ?? '')).toEqual([sky[0] * view[0], sky[1] * view[1]]);
    }
  });

  it('lets a drifting star leave at one edge', () => {
    for (const item of drawn('which-way-round', 'where-it-leaves', 'point')) {
      const { view } = scopeIn(item.prompt);
      const told = /drifts (?:to the |straight )(\w+)/.exec(item.prompt)?.[1] ?? '';
      const across = { right: view[0], left: -view[0], up: 0, down: 0 }[told] ?? 0;
      const upward = { right: 0, left: 0, up: view[1], down: -view[1] }[told] ?? 0;
      const spot = item.spots.find(({ id }) => id === item.key);
      expect((spot?.x ?? 0) - 160).toBeCloseTo(92 * across, 6);
      expect(120 - (spot?.y ?? 0)).toBeCloseTo(92 * upward, 6);
    }
  });

  it('shows a thing on the ground as each telescope does', () => {
    for (const item of drawn('which-way-round', 'three-views', 'match')) {
      const toEye = /points to the right/.test(item.prompt) ? 1 : -1;
      for (const { left, right } of item.pairs) {
        const { view } = scopeIn(item.left.find(({ id }) => id === left)?.text ?? '');
        const told = item.right.find(({ id }) => id === right)?.text ?? '';
        expect(told).toContain(toEye * view[0] > 0 ? 'to the right' : 'to the left');
        expect(told).toContain(view[1] > 0 ? 'at the bottom' : 'at the top');
      }
    }
  });
});

describe('bringing stars to focus', () => {
  it('is where the straight line through the two discs meets nothing', () => {
    for (const item of drawn('sharp-stars', 'where-sharp', 'numeric')) {
      const [far = 0, near = 0] = [...item.prompt.matchAll(/the (\d+) mm mark/g)].map((one) =>
        Number(one[1]),
      );
      const [wide = 0, narrow = 0] = [...item.prompt.matchAll(/([\d.]+)′/g)].map((one) =>
        Number(one[1]),
      );
      const zero = far + ((near - far) * wide) / (wide - narrow);
      expect(Math.abs(zero - item.key)).toBeLessThan(0.5);
    }
  });

  it('goes on where the disc shrank and back where it grew', () => {
    for (const item of drawn('sharp-stars', 'what-now', 'choice')) {
      const [before = 0, after = 0] = [...item.prompt.matchAll(/([\d.]+)′/g)].map((one) =>
        Number(one[1]),
      );
      expect(before).not.toBe(after);
      expect(rightOf(item).text.startsWith(after < before ? 'Go on' : 'Turn back')).toBe(true);
    }
  });

  it('makes the discs grow with the distance on both sides', () => {
    for (const item of drawn('sharp-stars', 'smallest-first', 'order')) {
      const [only = [], ...more] = fullOrders(item);
      expect(more).toEqual([]);
      const sharp = numberIn(item.prompt, /at the (\d+) mm/);
      const away = only.map((id) => Math.abs(numberIn(textOf(item, id), /(\d+) mm/) - sharp));
      expect(away).toEqual([...away].sort((a, b) => a - b));
    }
  });

  it('shows the disc that the rule of three gives', () => {
    for (const item of drawn('sharp-stars', 'which-view', 'point')) {
      const [sharp = 0, seenAt = 0, asked = 0] = [
        ...item.prompt.matchAll(/the (\d+) mm mark/g),
      ].map((one) => Number(one[1]));
      const expected = (16 * Math.abs(asked - sharp)) / Math.abs(seenAt - sharp);
      const drawnDiscs = item.drawing.shapes.flatMap((one) =>
        one.kind === 'circle' && one.fill === 'sky-lamp' ? [one] : [],
      );
      const fitting = drawnDiscs.filter((disc) => Math.abs((100 * disc.r) / 46 - expected) < 0.01);
      expect(fitting).toHaveLength(1);
      expect(item.spots.find(({ id }) => id === item.key)?.x).toBe(fitting[0]?.cx);
    }
  });
});

describe('eye and Sun', () => {
  it('gathers light by area: 80 mm against a pupil of 2 mm are 1600 times', () => {
    for (const item of drawn('eye-and-sun', 'how-much-more', 'numeric')) {
      const pupil = numberIn(item.prompt, /about ([\d.]+) mm/);
      const wide = numberIn(item.prompt, /is (\d+) mm wide/);
      const area = (mm: number) => Math.PI * (mm / 2) ** 2;
      expect(item.key).toBeCloseTo(area(wide) / area(pupil), 6);
      expect(item.key).toBeGreaterThan(90);
    }
  });

  it('opens nothing before the Sun has set, and caps at the end', () => {
    for (const item of drawn('eye-and-sun', 'first-light', 'order')) {
      const orders = fullOrders(item);
      expect(orders).toHaveLength(1);
      const texts = (orders[0] ?? []).map((id) => textOf(item, id));
      expect(texts[0]).toContain('Sun has set');
      expect(texts.at(-1)).toContain('caps back on');
    }
  });

  it('never lets anything with the Sun in it pass as safe', () => {
    for (const item of drawn('eye-and-sun', 'which-may', 'several')) {
      for (const { text, right } of item.options) {
        if (/the Sun|sunshine|finder/i.test(text.replace('sunset', ''))) expect(right).toBe(false);
      }
    }
    for (const item of drawn('eye-and-sun', 'what-do-you-say', 'choice')) {
      expect(rightOf(item).text).toMatch(/^No\. /);
      for (const { id, text } of item.options) {
        if (id !== item.key) expect(text).toMatch(/^(Yes|No, but)/);
      }
    }
  });
});
