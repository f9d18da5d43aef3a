import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { drawItem } from '../draw-item';
import { gradeItem } from '../grade-item';
import type { Item } from '../item';
import { familyOf } from '../item-bank';

const world = loadItemWorld();

function drawn<K extends Item['kind']>(family: string, template: string, kind: K) {
  return Array.from({ length: 40 }, (_, n) => {
    const item = drawItem(familyOf(family), template, { seed: `test ${String(n)}`, world });
    if (item.kind !== kind) throw new Error(`${template} is no ${kind}`);
    return item as Extract<Item, { kind: K }>;
  });
}
function numberIn(text: string, pattern: RegExp): number {
  const found = pattern.exec(text)?.[1];
  if (found === undefined) throw new Error(`no ${String(pattern)} in "${text}"`);
  return Number(found.replace('½', '.5'));
}
const rightOf = (item: Extract<Item, { kind: 'choice' }>) =>
  item.options.find(({ id }) => id === item.key) ?? { text: '', reason: '' };

/** Degrees between two directions by the cosine rule of the sphere. */
function apart(azimuthGapDeg: number, altitude1Deg: number, altitude2Deg = 0): number {
  const [gap = 0, a = 0, b = 0] = [azimuthGapDeg, altitude1Deg, altitude2Deg].map(
    (deg) => (deg * Math.PI) / 180,
  );
  const cosine = Math.sin(a) * Math.sin(b) + Math.cos(a) * Math.cos(b) * Math.cos(gap);
  return (Math.acos(cosine) * 180) / Math.PI;
}
/** "4 fists to the left of the Sun" → −4. */
const fistsIn = (text: string): number =>
  numberIn(text, /([\d½]+) fists? (?:to the )?(?:right|left)/) *
  (/fists? (?:to the )?left/.test(text) ? -1 : 1);
/** Small-angle parallax, arcminutes: 1 mm at 1 m is 1/1000 radian, 3.438′. */
const parallax = (apartMm: number, distanceM: number): number => (3.4377 * apartMm) / distanceM;
const metresIn = (text: string): number =>
  / km/.test(text) ? 1000 * numberIn(text, /([\d.]+) km/) : numberIn(text, /([\d.]+) m\b/);

describe('before a cap comes off', () => {
  it('names the one thing that is missing, or nothing', () => {
    for (const item of drawn('before-the-cap', 'what-is-missing', 'choice')) {
      const { prompt } = item;
      const grownUp = /teacher|grown-up/.test(prompt);
      const shadow = /shadow/.test(prompt);
      const far = numberIn(prompt, /points (\d+) fist/) >= 3;
      const expected = !grownUp ? 'An adult' : !shadow ? 'A place' : !far ? 'A target' : 'Nothing';
      expect([grownUp, shadow, far].filter((one) => !one).length).toBeLessThanOrEqual(1);
      expect(rightOf(item).text.startsWith(expected), prompt).toBe(true);
    }
  });

  it('stands a telescope on the side away from the Sun, never on another or under a tree', () => {
    const opposite: Record<string, string> = {
      north: 'south',
      south: 'north',
      east: 'west',
      west: 'east',
    };
    for (const item of drawn('before-the-cap', 'where-to-stand', 'point')) {
      const sun = /from the (\w+)\./.exec(item.prompt)?.[1] ?? '';
      const key = item.spots.find(({ id }) => id === item.key);
      expect(key?.where.startsWith(opposite[sun] ?? '?')).toBe(true);
    }
  });

  it('opens only a tube that was turned capped in the shadow, and caps it before the adult goes', () => {
    for (const item of drawn('before-the-cap', 'in-which-order', 'order').slice(0, 8)) {
      const at = (part: string) => item.steps.find(({ text }) => text.includes(part))?.id ?? '';
      const order = ['into the shadow', 'Turn the capped', 'Take the caps off'].map(at);
      const rest = ['Set the dot', 'Put both caps', 'adult may go'].map(at);
      const mark = (steps: string[]) => {
        const graded = gradeItem(item, { kind: 'order', steps });
        return graded.ok ? graded.feedback.mark : -1;
      };
      expect(mark([...order, ...rest])).toBe(1);
      // Opened before it is turned.
      expect(mark([order[0] ?? '', order[2] ?? '', order[1] ?? '', ...rest])).toBeLessThan(1);
      // Left open when the adult goes.
      expect(mark([...order, rest[0] ?? '', rest[2] ?? '', rest[1] ?? ''])).toBeLessThan(1);
    }
  });

  it('asks of what must hold nothing that helps little', () => {
    for (const item of drawn('before-the-cap', 'what-must-hold', 'several')) {
      for (const { text, right } of item.options) {
        expect(right).toBe(/adult stays|building|three fists|capped tube/.test(text));
      }
    }
  });
});

describe('three fists clear of the Sun', () => {
  it('is measured straight across the sky, by the cosine rule', () => {
    for (const item of drawn('clear-of-the-sun', 'how-far', 'numeric')) {
      const sun = numberIn(item.prompt, /Sun stands at azimuth (\d+)°/);
      const thing = numberIn(item.prompt, /horizon at azimuth (\d+)°/);
      const up = numberIn(item.prompt, /, (\d+)° up/);
      expect(Math.abs(item.key - apart(thing - sun, up))).toBeLessThan(0.05);
    }
  });

  it('leaves one target, and never one within 30°', () => {
    for (const item of drawn('clear-of-the-sun', 'which-target', 'choice')) {
      const up = 10 * numberIn(item.prompt, /stands ([\d½]+) fists? up/);
      for (const { id, text } of item.options) {
        const deg = apart(10 * fistsIn(text), up);
        expect(deg >= 30).toBe(id === item.key);
        expect(Math.abs(deg - 30)).toBeGreaterThan(4);
      }
    }
  });

  it('counts the whole way: stepped along by tenths of a degree', () => {
    for (const item of drawn('clear-of-the-sun', 'which-way', 'choice')) {
      const up = numberIn(item.prompt, /Sun is (\d+)° up/);
      const [from = '', to = ''] = [...item.prompt.matchAll(/\d+ fists? to the \w+/g)].map(
        ([text]) => text,
      );
      const [start, end] = [10 * fistsIn(from), 10 * fistsIn(to)];
      const steps = Array.from({ length: 2001 }, (_, i) => start + ((end - start) * i) / 2000);
      const least = Math.min(...steps.map((gap) => apart(gap, up)));
      expect(apart(start, up)).toBeGreaterThan(30);
      expect(apart(end, up)).toBeGreaterThan(30);
      expect(/the way between is not/.test(item.explanation)).toBe(least < 30);
      for (const { id, text } of item.options) {
        const off = Math.abs(numberIn(text, /([\d.]+)°/) - least);
        // Told in whole degrees.
        if (id === item.key) expect(off).toBeLessThan(0.6);
        else expect(off).toBeGreaterThan(3);
      }
    }
  });

  it('is read off the strip', () => {
    for (const item of drawn('clear-of-the-sun', 'on-the-strip', 'several')) {
      const up = 10 * numberIn(item.drawing?.alternative ?? '', /Sun stands (\d+) fist/);
      for (const { text, right } of item.options) {
        expect(right).toBe(apart(10 * fistsIn(text), up) >= 30);
      }
    }
  });
});

describe('why a finder is set on something far away', () => {
  it('is 5.5′ for 80 mm at 50 m, and so on by small angles', () => {
    expect(parallax(80, 50)).toBeCloseTo(5.5, 1);
    for (const item of drawn('crossed-lines', 'reckon', 'numeric')) {
      const b = numberIn(item.prompt, /sits (\d+) mm/);
      const d = numberIn(item.prompt, /post (\d+) m/);
      expect(item.key / parallax(b, d)).toBeCloseTo(1, 2);
    }
  });

  it('decides whether the star is in the eyepiece', () => {
    for (const item of drawn('crossed-lines', 'tonight', 'choice')) {
      const b = numberIn(item.prompt, /sits (\d+) mm/);
      const d = numberIn(item.prompt, / (\d+) m away/);
      const edge = numberIn(item.prompt, /shows ([\d.]+)′/) / 2;
      const inside = parallax(b, d) < edge;
      expect(rightOf(item).text.startsWith(inside ? 'In the eyepiece' : 'Not in')).toBe(true);
    }
  });

  it('puts the star on the side away from the finder: two lines drawn through the target', () => {
    for (const item of drawn('crossed-lines', 'to-which-side', 'point')) {
      const told = /sits \d+ mm (to the right of|to the left of|above|below)/.exec(
        item.prompt,
      )?.[1];
      const b =
        { 'to the right of': 1, 'to the left of': -1, above: 1, below: -1 }[told ?? ''] ?? 0;
      // From b at 0 through 0 at the target: a thousand times farther off it is at about −1000 b.
      const far = b + (0 - b) * 1000;
      const key = item.spots.find(({ id }) => id === item.key);
      const across = told?.includes('of') === true;
      const seen = across ? (key?.x ?? 0) - 160 : 120 - (key?.y ?? 0);
      expect(Math.sign(seen)).toBe(Math.sign(far));
    }
  });
});

describe('what to set a finder on', () => {
  it('is far, still and clear, the only one of four', () => {
    for (const item of drawn('daytime-target', 'which-one', 'choice')) {
      for (const { id, text } of item.options) {
        const moves = /gull|kite|cloud|lorry|balloon/.test(text);
        const good = !moves && metresIn(text) >= 300 && Math.abs(fistsIn(text)) >= 3;
        expect(good).toBe(id === item.key);
      }
    }
  });

  it('is so far away that the dot keeps its limit', () => {
    for (const item of drawn('daytime-target', 'how-far-at-least', 'numeric')) {
      const b = numberIn(item.prompt, /sits (\d+) mm/);
      const limit = numberIn(item.prompt, /off by (\d+)′/);
      expect(parallax(b, item.key) / limit).toBeCloseTo(1, 3);
    }
  });

  it('is the farthest of those that are clear, on the strip', () => {
    for (const item of drawn('daytime-target', 'point-at-it', 'point')) {
      const clear = item.spots
        .map(({ id, where }) => {
          const letter = where.charAt(0);
          const away = new RegExp(`${letter} is ([\\d.]+ k?m)`).exec(item.prompt)?.[1] ?? '';
          return { id, fists: Math.abs(fistsIn(where)), distance: metresIn(away) };
        })
        .filter(({ fists }) => fists > 3)
        .sort((a, b) => b.distance - a.distance);
      expect(clear[0]?.id).toBe(item.key);
    }
  });
});

describe('turning the two adjusters', () => {
  /** Where a screw carries the dot, by what the prompt says of it; squares of 6′, 12′ a turn. */
  const carried = (prompt: string, turns: string) => {
    const sideRight = /side screw carries the dot 12′ to the right/.test(prompt) ? 1 : -1;
    const rearUp = /rear screw, 12′ up/.test(prompt) ? 1 : -1;
    const of = (screw: string) => {
      const found = new RegExp(`${screw} screw ([\\d.]+) turns? to the (right|left)`, 'i').exec(
        turns,
      );
      return Number(found?.[1]) * (found?.[2] === 'right' ? 1 : -1);
    };
    return [2 * sideRight * of('side'), 2 * rearUp * of('rear')] as const;
  };
  const squaresIn = (text: string) => {
    const across = /(\d+) squares? to the (right|left)/.exec(text);
    const upward = /(\d+) squares? (above|below)/.exec(text);
    return [
      Number(across?.[1]) * (across?.[2] === 'right' ? 1 : -1),
      Number(upward?.[1]) * (upward?.[2] === 'above' ? 1 : -1),
    ] as const;
  };

  it('brings the dot onto the tip by one of the four answers only', () => {
    for (const item of drawn('two-screws', 'which-turns', 'choice')) {
      const dot = squaresIn(item.drawing?.alternative ?? '');
      for (const { id, text } of item.options) {
        const by = carried(item.prompt, text);
        expect(Math.hypot(dot[0] + by[0], dot[1] + by[1]) < 1e-9).toBe(id === item.key);
      }
    }
  });

  it('carries the dot where it is pointed at', () => {
    for (const item of drawn('two-screws', 'where-does-it-go', 'point')) {
      const key = item.spots.find(({ id }) => id === item.key);
      const turned = item.prompt.slice(item.prompt.indexOf('Somebody'));
      expect(squaresIn(key?.where ?? '')).toEqual(carried(item.prompt, turned));
    }
  });

  it('takes as many turns as divide the way', () => {
    for (const item of drawn('two-screws', 'how-many-turns', 'numeric')) {
      const offBy = numberIn(item.prompt, /dot is ([\d.]+)′/);
      expect(item.key).toBeCloseTo(offBy / numberIn(item.prompt, /dot (\d+)′\. How/), 9);
    }
    for (const item of drawn('two-screws', 'after-a-try', 'choice')) {
      const before = numberIn(item.prompt, /was (\d+)′/);
      const now = numberIn(item.prompt, /is (\d+)′/);
      const turns = now / (2 * Math.abs(now - before));
      expect(Math.abs(numberIn(rightOf(item).text, /([\d.]+) turns/) - turns)).toBeLessThan(0.01);
      expect(rightOf(item).text.includes('more')).toBe(now < before);
    }
  });
});

describe('what the dot is worth at night', () => {
  it('is so many tenths of half the field', () => {
    for (const item of drawn('dot-at-night', 'read-off', 'numeric')) {
      const field = numberIn(item.prompt, /shows ([\d.]+)′/);
      const tenths = numberIn(item.drawing?.alternative ?? '', /(\d+) tenths/);
      expect(item.key / ((field / 2) * (tenths / 10))).toBeCloseTo(1, 2);
    }
  });

  it('keeps a star in view where half the field is more than the error', () => {
    for (const item of drawn('dot-at-night', 'still-in-it', 'several')) {
      const offBy = numberIn(item.prompt, /off by (\d+)′/);
      for (const { text, right } of item.options) {
        expect(right).toBe(numberIn(text, /([\d.]+)′ across/) / 2 > offBy);
      }
    }
  });

  it('leads back to what the finder was set on', () => {
    for (const item of drawn('dot-at-night', 'how-near-was-it', 'numeric')) {
      const b = numberIn(item.prompt, /sits (\d+) mm/);
      const offBy = numberIn(item.prompt, /star is ([\d.]+)′/);
      expect(parallax(b, item.key) / offBy).toBeCloseTo(1, 1);
    }
  });
});
