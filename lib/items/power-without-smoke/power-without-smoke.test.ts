import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { coldShare } from '../../power/capacity';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import type { ItemFamily } from '../item-family';
import { cellsInARow } from './cells-in-a-row';
import { hoursOnCells } from './hours-on-cells';
import { labelsToRead } from './labels-to-read';
import { orderOfSwitchingOn } from './order-of-switching-on';
import { voltsWhileSlewing } from './volts-while-slewing';

const world = loadItemWorld();
const draws = (family: ItemFamily, template: string): Item[] =>
  Array.from({ length: 120 }, (_, n) =>
    drawItem(family, template, { seed: `power ${String(n)}`, world }),
  );

/** Every number of a text, in order. */
const numbersIn = (text: string): number[] =>
  [...text.matchAll(/−?\d+(?:\.\d+)?/g)].map(([found]) => Number(found.replace('−', '-')));
const wordNumbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];
const keyOf = (item: Item): { text: string; others: { text: string; reason: string }[] } => {
  if (item.kind !== 'choice') throw new Error('not a choice');
  return {
    text: item.options.find(({ id }) => id === item.key)?.text ?? '',
    others: item.options.filter(({ id }) => id !== item.key),
  };
};
const drawnWords = (item: Item): string => item.drawing?.alternative ?? '';
const numericKey = (item: Item): number => {
  if (item.kind !== 'numeric') throw new Error('not numeric');
  return item.key;
};

/** A label as it reads, taken apart by its own words. */
function label(text: string) {
  const [volts = 0, amperes = 0] = numbersIn(text);
  return { volts, amperes, plus: text.includes('middle pin +'), mains: text.includes('mains') };
}

describe('labels', () => {
  it('that serve have equal volts, equal polarity, enough current and no mains; each other fails in one thing, which its reason names', () => {
    for (const item of draws(labelsToRead, 'which-serves')) {
      const [volts = 0, needs = 0] = numbersIn(item.prompt);
      const plus = item.prompt.includes('middle pin +');
      const faults = (text: string): string[] => {
        const one = label(text);
        return [
          ...(one.volts > volts ? ['more than'] : []),
          ...(one.volts < volts ? ['less than'] : []),
          ...(one.plus !== plus ? ['exchanged'] : []),
          ...(one.amperes < needs ? ['restarts'] : []),
          ...(one.mains ? ['mains'] : []),
        ];
      };
      const { text, others } = keyOf(item);
      expect(faults(text)).toEqual([]);
      for (const other of others) {
        const [only = '', ...more] = faults(other.text);
        expect(more).toEqual([]);
        expect(other.reason).toContain(only);
      }
    }
  });

  it('have spoken against them what a comparison of the two drawn lines finds, and nothing else', () => {
    for (const item of draws(labelsToRead, 'what-speaks-against')) {
      if (item.kind !== 'several') throw new Error('not several');
      const [plate = '', supply = ''] = drawnWords(item).split(' On the ');
      const [wanted = 0, peak = 0] = numbersIn(plate);
      const [volts = 0, amperes = 0] = numbersIn(supply);
      const centre = (text: string) => /middle pin (plus|minus)/.exec(text)?.[1];
      const found: Record<string, boolean> = {
        'Plus and minus are exchanged': centre(plate) !== centre(supply),
        'Its volts are too many': volts > wanted,
        'Its volts are too few': volts < wanted,
        'It gives too little current': amperes < peak,
        'It hangs on the mains': supply.includes('mains'),
        'It could give more current than is needed': false,
      };
      for (const option of item.options) expect(option.right).toBe(found[option.text]);
    }
  });

  it('do not decide the current: the telescope’s own figure is the key', () => {
    for (const item of draws(labelsToRead, 'predict-the-current')) {
      const tracks = item.prompt.includes('while it tracks?');
      const [tracking, slewing] = numbersIn(item.prompt);
      expect(numbersIn(keyOf(item).text)).toEqual([tracks ? tracking : slewing]);
    }
  });
});

describe('cells in a row', () => {
  it('make as many volts as those that push less those that push back', () => {
    for (const item of draws(cellsInARow, 'volts-of-the-row')) {
      const [, count = '', , each = ''] =
        /connects (\w+) fresh ([\w\s-]+?) cells of ([\d.]+) V/.exec(item.prompt) ?? [];
      const turned = /(\w+) of them lies?/.exec(item.prompt)?.[1]?.toLowerCase() ?? 'no';
      const [n, k] = [wordNumbers.indexOf(count), wordNumbers.indexOf(turned)];
      // Kirchhoff's second law, cell by cell.
      let volts = 0;
      for (let i = 0; i < n; i++) volts += i < k ? -Number(each) : Number(each);
      expect(numericKey(item)).toBeCloseTo(volts, 9);
    }
  });

  it('have their turned one where spring and plus end are at the same end, and nowhere else', () => {
    for (const item of draws(cellsInARow, 'point-at-the-turned-cell')) {
      if (item.kind !== 'point') throw new Error('not a point');
      const bays = [
        ...drawnWords(item).matchAll(
          /Bay (\d): spring (at the \w+), the cell’s plus end (at the \w+)/g,
        ),
      ];
      const turned = bays.filter(([, , spring, plus]) => spring === plus).map(([, bay]) => bay);
      expect(turned).toHaveLength(1);
      expect(item.spots.find(({ id }) => id === item.key)?.where).toContain(
        `bay ${turned[0] ?? ''}`,
      );
      expect(item.spots).toHaveLength(bays.length);
    }
  });

  it('tell by their meter how many are turned, by trying all numbers', () => {
    for (const item of draws(cellsInARow, 'how-many-turned')) {
      const count = wordNumbers.findIndex((one) => item.prompt.includes(`has ${one} fresh`));
      const [reads] = numbersIn(drawnWords(item));
      const fits = wordNumbers
        .map((_, turned) => turned)
        .filter((turned) => turned <= count && (count - 2 * turned) * 1.5 === reads);
      expect(fits).toHaveLength(1);
      expect(keyOf(item).text.toLowerCase()).toContain(wordNumbers[fits[0] ?? 0]);
    }
  });

  it('belong together by kind and by what they read, to the hundredth of a volt', () => {
    for (const item of draws(cellsInARow, 'which-belong-together')) {
      if (item.kind !== 'several') throw new Error('not several');
      const kind = /You want (.+?) cells/.exec(item.prompt)?.[1] ?? '';
      const fresh = kind === 'alkaline' ? '1.50 V' : '1.20 V';
      for (const { text, right } of item.options)
        expect(right).toBe(text.includes(`: ${kind}, `) && text.endsWith(fresh));
    }
  });
});

describe('a slew', () => {
  it('leaves the volts at rest less amperes times the ohms of all eight', () => {
    for (const item of draws(voltsWhileSlewing, 'volts-at-the-peak')) {
      const [open = 0, ohm = 0, amperes = 0] = numbersIn(item.prompt);
      // Ohm's law from the numbers as they are printed; cells are rounded to 0.005 ohm there.
      expect(Math.abs(numericKey(item) - (open - amperes * 8 * ohm))).toBeLessThan(0.08);
    }
  });

  it('restarts the computer exactly where the volts reckoned from the prompt are too few', () => {
    for (const item of draws(voltsWhileSlewing, 'predict-the-slew')) {
      const open = Number(/: ([\d.]+) V without/.exec(item.prompt)?.[1]);
      const ohms = Number(/([\d.]+) ohms/.exec(item.prompt)?.[1]);
      const limit = Number(/below ([\d.]+) V/.exec(item.prompt)?.[1]);
      const amperes = Number(/slew at ([\d.]+) A/.exec(item.prompt)?.[1]);
      expect(keyOf(item).text.startsWith('It restarts')).toBe(open - amperes * ohms < limit);
    }
  });
});

describe('hours', () => {
  it('are charge times what the cold leaves over the mean current, whatever the number of cells', () => {
    for (const item of draws(hoursOnCells, 'hours-in-the-cold')) {
      const meanA = Number(/current of ([\d.]+) A/.exec(item.prompt)?.[1]);
      const capacity = Number(/give ([\d.]+) ampere/.exec(item.prompt)?.[1]);
      const percent = Number(/leaves (\d+) %/.exec(item.prompt)?.[1]);
      // The key is given to a hundredth of an hour.
      const off = numericKey(item) - (capacity * percent) / 100 / meanA;
      expect(Math.abs(off)).toBeLessThan(0.00501);
    }
  });

  it('of alkaline cells are those of IEC 60086-2 at its two currents: 5 h at 250 mA, 15 h at 100 mA', () => {
    // From memory: minimum average durations of LR6 to 0.9 V at one hour a day.
    const cold = draws(hoursOnCells, 'hours-in-the-cold').find(({ prompt }) =>
      /alkaline cells in a row\. At a mean current of 0\.25 A each can give 1\.25 ampere-hours/.test(
        prompt,
      ),
    );
    expect(cold).toBeDefined();
  });

  it('are planned for by the volts first, then by the hours', () => {
    for (const item of draws(hoursOnCells, 'plan-the-night')) {
      const lasts = Number(/they last ([\d.]+) h/.exec(item.prompt)?.[1]);
      const volts = Number(/hold ([\d.]+) V/.exec(item.prompt)?.[1]);
      const limit = Number(/below ([\d.]+) V/.exec(item.prompt)?.[1]);
      const wanted = Number(/stays for ([\d.]+) h/.exec(item.prompt)?.[1]);
      const plan = volts < limit ? 'Take another' : lasts < wanted ? 'Take a spare' : 'Go';
      expect(keyOf(item).text.startsWith(plan)).toBe(true);
    }
  });

  it('read off the chart lie between the two tens of degrees that its words give', () => {
    for (const item of draws(hoursOnCells, 'read-the-cold-chart')) {
      const [first = ''] = drawnWords(item).split('Dashed line');
      const points = [...first.matchAll(/(\d+) per cent at (−?\d+)/g)].map(([, share, t]) => [
        Number((t ?? '').replace('−', '-')),
        Number(share),
      ]);
      const asked = Number((/at (−?\d+) °C\?/.exec(item.prompt)?.[1] ?? '').replace('−', '-'));
      const below = points.filter(([t = 0]) => t <= asked).at(-1) ?? [];
      const above = points.find(([t = 0]) => t >= asked) ?? [];
      const [t0 = 0, s0 = 0] = below;
      const [t1 = 0, s1 = 0] = above;
      const read = t0 === t1 ? s0 : s0 + ((s1 - s0) * (asked - t0)) / (t1 - t0);
      expect(Math.abs(numericKey(item) - read)).toBeLessThanOrEqual(1);
    }
    expect(coldShare('alkaline', 20)).toBe(1);
  });
});

describe('the order of switching on', () => {
  it('ends as its words say: by what is wrong with the pack, else by the first plug that goes in live', () => {
    for (const item of draws(orderOfSwitchingOn, 'predict-the-start')) {
      const steps = /(first .+?)\. Predict/.exec(item.prompt)?.[1] ?? '';
      const [hand, supply, on] = ['hand control', 'plug in', 'switches on'].map((one) =>
        steps.indexOf(one),
      );
      const ends = item.prompt.includes('24 V')
        ? 'Twice the volts'
        : item.prompt.includes('middle pin −')
          ? 'Plus and minus'
          : (hand ?? 0) > Math.max(supply ?? 0, on ?? 0)
            ? 'The hand control'
            : (supply ?? 0) > (on ?? 0)
              ? 'The computer gets'
              : 'It starts';
      expect(keyOf(item).text.startsWith(ends)).toBe(true);
    }
  });
});
