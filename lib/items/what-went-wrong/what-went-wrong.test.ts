import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '@/lib/content/item-world';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import { familyOf } from '../item-bank';
import { firstSlew } from './first-slew';

/*
 * What the questions say is recomputed here from their own words, by other ways than the generators':
 * small-angle formulas of the design, plain spherical trigonometry, and the rules of the calendar.
 */

const world = loadItemWorld();
const draws = (family: string, template: string, count = 50): Item[] =>
  Array.from({ length: count }, (_, n) =>
    drawItem(familyOf(family), template, { seed: `checked ${String(n)}`, world }),
  );
const shown = (item: Item): string => item.drawing?.alternative ?? '';
const numbersIn = (text: string): number[] =>
  [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([figure]) => Number(figure));
const inRadians = (deg: number): number => (deg * Math.PI) / 180;
/** "48′" or "1.6°" in degrees. */
const angles = (text: string): number[] =>
  [...text.matchAll(/(\d+(?:\.\d+)?)(°|′)/g)].map(
    ([, figure, unit]) => Number(figure) / (unit === '°' ? 1 : 60),
  );

function optionsOf(item: Item) {
  if (item.kind !== 'choice') throw new Error('a choice');
  const key = item.options.find(({ id }) => id === item.key);
  if (key === undefined) throw new Error('no key');
  return { key, wrong: item.options.filter((one) => one !== key) };
}

describe('a first slew', () => {
  // design, "Levelling": t cos(A − At) in altitude and t sin(A − At) tan a in azimuth
  it.each([
    [0.5, 0, 40, 35],
    [1, 90, 200, 50],
    [2, 225, 300, 40],
  ])(
    'with a base that leans %f° toward %i° is off by the formula of a small lean',
    (t, towards, azimuthDeg, altitudeDeg) => {
      const { rightDeg, upDeg } = firstSlew(
        { kind: 'lean', tiltDeg: t, risesTowardsDeg: towards },
        { azimuthDeg, altitudeDeg },
      );
      const turn = inRadians(azimuthDeg - towards);
      expect(upDeg).toBeCloseTo(t * Math.cos(turn), 1);
      // On the sky the azimuth counts with the cosine of the altitude: tan a · cos a = sin a.
      expect(rightDeg).toBeCloseTo(t * Math.sin(turn) * Math.sin(inRadians(altitudeDeg)), 1);
    },
  );

  it('is 15.04° off on the sky’s equator with a clock an hour fast', () => {
    // Looking south from 50° north the equator crosses the meridian 40° up.
    const star = { azimuthDeg: 180, altitudeDeg: 40 };
    const { rightDeg, upDeg } = firstSlew({ kind: 'clock', fastHours: 1, latitudeDeg: 50 }, star);
    expect(Math.hypot(rightDeg, upDeg)).toBeCloseTo(15.04, 2);
    // It will stand farther west, which is to the right.
    expect(rightDeg).toBeGreaterThan(14);
  });

  it('is turned by a wrong north by the width of that azimuth', () => {
    const { rightDeg, upDeg } = firstSlew(
      { kind: 'north', rightDeg: 10 },
      { azimuthDeg: 77, altitudeDeg: 20 },
    );
    // design check value: 10° of azimuth is 9.3955° at 20° up
    expect(Math.hypot(rightDeg, upDeg)).toBeCloseTo(9.3955, 4);
  });
});

describe('when it began', () => {
  const rows = (item: Item) => {
    const [, first = '', second = '', stars = '', ...gotos] = shown(item).split(/: /);
    return {
      first: angles(first)[0] ?? 0,
      second: angles(second)[0] ?? 0,
      agree: stars.startsWith('These two agree'),
      gotos: gotos
        .slice(0, -1)
        .concat(gotos.at(-1)?.split('. ')[0] ?? '')
        .map((one) => angles(one)[0] ?? 0),
    };
  };

  it('follows from the first row that is far off, and only from that', () => {
    for (const item of draws('when-it-began', 'before-between-after')) {
      const { first, second, agree, gotos } = rows(item);
      const { key } = optionsOf(item);
      const by =
        first > 3.5
          ? 'Before the first star'
          : second > 1.8 || !agree
            ? 'Between the two stars'
            : Math.max(0, ...gotos) > 0.8
              ? 'After the second star'
              : 'Never';
      expect(key.text, shown(item)).toBe(by);
    }
  });

  it('is taken out only where the reason’s own figure is under half a degree', () => {
    for (const item of draws('when-it-began', 'what-is-absorbed', 30)) {
      if (item.kind !== 'several') throw new Error('several');
      for (const { right, reason } of item.options) {
        const off = angles(reason)[0];
        if (right) expect(off, reason).toBeLessThan(0.5);
        else expect(off === undefined || off > 0.8, reason).toBe(true);
      }
    }
  });

  it('is followed by what the strip afterwards shows', () => {
    for (const item of draws('when-it-began', 'what-follows')) {
      const { key } = optionsOf(item);
      const after = item.afterwards?.alternative ?? '';
      const refused = after.includes('none: no alignment');
      expect(key.text.startsWith('There are none')).toBe(refused);
      if (!refused) {
        const misses = after
          .split('Go-to')
          .slice(1)
          .map((one) => angles(one)[0] ?? 0);
        expect(key.text.startsWith('They end near')).toBe(Math.max(...misses) < 0.5);
      }
    }
  });
});

describe('how far the sky is turned', () => {
  it('is 15.04° an hour, and half the way on the circle of 60°', () => {
    for (const item of draws('turned-sky', 'how-far-off')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const hours = item.prompt.includes('two hours')
        ? 2
        : item.prompt.includes('half an hour')
          ? 0.5
          : item.prompt.includes('20 minutes')
            ? 1 / 3
            : 1;
      const declination = item.prompt.includes('60°') ? 60 : 0;
      // The angle between two places on one small circle, by the law of cosines.
      const turn = inRadians(15.041 * hours);
      const [s, c] = [Math.sin(inRadians(declination)), Math.cos(inRadians(declination))];
      const apart = (Math.acos(s * s + c * c * Math.cos(turn)) * 180) / Math.PI;
      expect(item.key).toBeCloseTo(apart, 1);
    }
  });

  it('names the one entry whose turn is the one that was seen', () => {
    for (const item of draws('turned-sky', 'which-entry')) {
      const turned = Number(/turned by about (\d+)°/.exec(item.prompt)?.[1]);
      const longitude = Number(/longitude (\d+)°/.exec(item.prompt)?.[1]);
      const turns: Record<string, number> = {
        'Summer time, an hour': 15,
        'The date, by one day': 360 / 365.25,
        'The date, by a month': (30 * 360) / 365.25,
        'The longitude, east for west': 2 * longitude,
        'The zone, by three hours': 45,
      };
      const { key, wrong } = optionsOf(item);
      expect(Math.abs((turns[key.text] ?? NaN) - turned)).toBeLessThan(0.8);
      for (const { text } of wrong)
        expect(Math.abs((turns[text] ?? NaN) - turned)).toBeGreaterThan(1.5);
    }
  });

  it('has one line on the card that is not as it is, and corrects that', () => {
    for (const item of draws('turned-sky', 'read-the-card', 30)) {
      const truth = new Map(
        [
          ...(item.prompt.split('What is so: ')[1] ?? '').matchAll(
            /(date|clock|zone|summer time|latitude|longitude) ([^,?]+?)(?:,|\. What)/g,
          ),
        ].map(([, name = '', value = '']) => [name, value]),
      );
      expect(truth.size).toBe(6);
      const wrong = [...truth].filter(
        ([name, value]) => !shown(item).toLowerCase().includes(`${name}: ${value.toLowerCase()}`),
      );
      expect(wrong).toHaveLength(1);
      const { key } = optionsOf(item);
      expect(key.text.toLowerCase()).toBe(
        `${wrong[0]?.[0] ?? ''}: make it ${(wrong[0]?.[1] ?? '').toLowerCase()}`,
      );
    }
  });

  it('puts a fast clock’s slew west of a star in the south, a slow one’s east', () => {
    for (const item of draws('turned-sky', 'where-it-ends')) {
      if (item.kind !== 'point') throw new Error('a point');
      const star = Number(/star: azimuth (\d+)°/.exec(shown(item))?.[1]);
      const key = item.spots.find(({ id }) => id === item.key);
      const azimuth = Number(/azimuth (\d+)°/.exec(key?.where ?? '')?.[1]);
      expect(azimuth > star).toBe(item.prompt.includes('fast'));
      expect(Math.abs(azimuth - star)).toBeGreaterThan(8);
    }
  });
});

describe('the pattern of first slews', () => {
  it('fits one of the suspects, and no other to within 2.5°', () => {
    for (const item of draws('slew-patterns', 'two-arrows')) {
      const { key, wrong } = optionsOf(item);
      // Each reason tells what its suspect would have done: only the key's is what was seen.
      const seen = /star A ends (.+); the one to B (.+?)\. The arrows/.exec(item.prompt);
      expect(key.reason).toBe(`That brings A ${seen?.[1] ?? ''}, and B ${seen?.[2] ?? ''}.`);
      const signed = (text: string): [number, number] => {
        const part = (words: RegExp) => {
          const found = words.exec(text);
          return found === null
            ? 0
            : Number(found[1]) * (found[2] === 'high' || found[2] === 'right' ? 1 : -1);
        };
        return [part(/([\d.]+)° (high|low)/), part(/([\d.]+)° to the (right|left)/)];
      };
      const pairOf = (reason: string) => {
        const [a = '', b = ''] = reason.split('and B');
        return [...signed(a), ...signed(b)];
      };
      const was = pairOf(key.reason);
      for (const { reason } of wrong) {
        const would = pairOf(reason);
        const apart = [0, 2].map((i) =>
          Math.hypot((would[i] ?? 0) - (was[i] ?? 0), (would[i + 1] ?? 0) - (was[i + 1] ?? 0)),
        );
        expect(Math.max(...apart)).toBeGreaterThan(2.3);
      }
    }
  });

  it('is highest for the star nearest to where the base rises', () => {
    for (const item of draws('slew-patterns', 'highest-landing')) {
      if (item.kind !== 'point') throw new Error('a point');
      const towards = Number(/toward azimuth (\d+)°/.exec(item.prompt)?.[1]);
      const away = (where: string) => {
        const azimuth = numbersIn(where)[0] ?? NaN;
        return Math.abs(((azimuth - towards + 540) % 360) - 180);
      };
      const nearest = [...item.spots].sort((a, b) => away(a.where) - away(b.where))[0];
      expect(nearest?.id).toBe(item.key);
    }
  });

  it('in numbers is that of the exact mechanics to within the band', () => {
    for (const item of draws('slew-patterns', 'lean-in-height')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const [tiltDeg = NaN, risesTowardsDeg = NaN, azimuthDeg = NaN] = numbersIn(item.prompt);
      const { upDeg } = firstSlew(
        { kind: 'lean', tiltDeg, risesTowardsDeg },
        { azimuthDeg, altitudeDeg: 40 },
      );
      expect(Math.abs(upDeg - item.key)).toBeLessThan(item.tolerance.full);
    }
    for (const item of draws('slew-patterns', 'beside-north')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const [turn = NaN, altitude = NaN] = numbersIn(item.prompt);
      const across = 2 * Math.asin(Math.cos(inRadians(altitude)) * Math.sin(inRadians(turn) / 2));
      expect(item.key).toBeCloseTo((across * 180) / Math.PI, 1);
    }
  });

  it('ticks only what the cosine rule of a lean gives', () => {
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
    for (const item of draws('slew-patterns', 'fits-the-lean')) {
      if (item.kind !== 'several') throw new Error('several');
      const azimuthOf = (text: string) =>
        45 *
        winds.indexOf(
          /(?:the|in the) ((?:north|south)?-?(?:east|west)?)[,.]/.exec(text)?.[1] ?? '',
        );
      const towards = azimuthOf(item.prompt);
      for (const { text, right } of item.options) {
        const high = Math.cos(inRadians(azimuthOf(text) - towards)) > 0;
        expect(text.endsWith('too high') === high, `${item.prompt} ${text}`).toBe(right);
      }
    }
  });
});

function between(a: readonly number[], b: readonly number[]): number {
  const [az1 = NaN, alt1 = NaN] = a.map(inRadians);
  const [az2 = NaN, alt2 = NaN] = b.map(inRadians);
  const cosine =
    Math.sin(alt1) * Math.sin(alt2) + Math.cos(alt1) * Math.cos(alt2) * Math.cos(az1 - az2);
  return (Math.acos(cosine) * 180) / Math.PI;
}
const placesIn = (alternative: string): Map<string, number[]> =>
  new Map(
    [...alternative.matchAll(/(\w+): azimuth (\d+)°, altitude (\d+)°/g)].map(
      ([, name = '', azimuth, altitude]) => [name, [Number(azimuth), Number(altitude)]],
    ),
  );

describe('which light was centred', () => {
  it('is the only one at the distance that the mount’s sentence asks for', () => {
    for (const item of draws('wrong-lights', 'what-was-centred', 30)) {
      const places = placesIn(shown(item));
      const a = places.get('A') ?? [];
      const due = between(a, places.get('B') ?? []);
      const by = Number(/disagree by ([\d.]+)°/.exec(item.prompt)?.[1]);
      const farther = /swung (farther|too far)/.test(item.prompt);
      const fits = ['C', 'D', 'E'].filter(
        (name) => Math.abs(between(a, places.get(name) ?? []) - due - (farther ? by : -by)) < 1,
      );
      expect(fits).toEqual([optionsOf(item).key.text.charAt(0)]);
    }
  });

  it('is, where one points at it, the only place at that distance too', () => {
    for (const item of draws('wrong-lights', 'point-at-it', 30)) {
      if (item.kind !== 'point') throw new Error('a point');
      const places = placesIn(shown(item));
      const a = places.get('1') ?? [];
      const due = between(a, places.get('2') ?? []);
      const by = Number(/disagree by ([\d.]+)°/.exec(item.prompt)?.[1]);
      const sign = item.prompt.includes('swung too far') ? 1 : -1;
      const fits = item.spots.filter(
        ({ where }) => Math.abs(between(a, numbersIn(where)) - due - sign * by) < 1,
      );
      expect(fits.map(({ id }) => id)).toEqual([item.key]);
      for (const { where } of item.spots)
        expect(Math.abs(between(a, numbersIn(where)) - (numbersIn(where)[2] ?? NaN))).toBeLessThan(
          1,
        );
    }
  });

  it('adds where the tube swung too far, and takes off where it did not swing far enough', () => {
    for (const item of draws('wrong-lights', 'how-far-it-swung')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const [due = NaN, by = NaN] = angles(item.prompt);
      expect(item.key).toBeCloseTo(item.prompt.includes('too far') ? due + by : due - by, 6);
    }
  });

  it('lets only two stars right opposite and equally high be swapped unseen', () => {
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
    for (const item of draws('wrong-lights', 'swapped-unseen')) {
      const { key, wrong } = optionsOf(item);
      const opposite = (text: string): boolean => {
        const [one, other] = [...text.matchAll(/the ([a-z-]+), (\d+)° up/g)];
        if (one === undefined || other === undefined) throw new Error(`no two stars: ${text}`);
        const [[, wind1 = '', high1], [, wind2 = '', high2]] = [one, other];
        return (winds.indexOf(wind1) + 4) % 8 === winds.indexOf(wind2) && high1 === high2;
      };
      expect(opposite(key.text)).toBe(true);
      for (const { text } of wrong) expect(opposite(text)).toBe(false);
    }
  });
});

describe('the slew that tells', () => {
  it('goes where a lean and a wrong level part most: by the cosine rule, opposite', () => {
    for (const item of draws('test-slew', 'point-at-test')) {
      if (item.kind !== 'point') throw new Error('a point');
      const first = placesIn(shown(item)).get('1')?.[0] ?? NaN;
      const parts = (where: string): number => {
        const [azimuth = NaN, altitude = NaN] = numbersIn(where);
        const turn = inRadians(azimuth - first);
        // In units of the lean: 1 − cos in height, sin · sin a sideways.
        return Math.hypot(1 - Math.cos(turn), Math.sin(turn) * Math.sin(inRadians(altitude)));
      };
      const best = [...item.spots].sort((a, b) => parts(b.where) - parts(a.where))[0];
      expect(best?.id).toBe(item.key);
    }
  });

  it('is as far too low opposite as it was too high at first, by a lean', () => {
    for (const item of draws('test-slew', 'predict-it')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      expect(item.key).toBeCloseTo(Number(/ended ([\d.]+)° too high/.exec(item.prompt)?.[1]), 2);
    }
  });

  it('finds a wrong level by the same height at both, and a lean by the opposite', () => {
    for (const item of draws('test-slew', 'what-it-tells')) {
      const first = /ended [\d.]+° too (high|low)/.exec(item.prompt)?.[1];
      const test = /, ended [\d.]+° (high|low)/.exec(
        item.prompt.split('The test slew')[1] ?? '',
      )?.[1];
      const { key } = optionsOf(item);
      expect(key.text.startsWith('The tube pointed')).toBe(first === test);
    }
  });
});
