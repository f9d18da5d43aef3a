import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { pairWorthDirect } from '../../pointing/pair-worth-direct';
import { fieldRadiusArcmin } from '../../pointing/field-radius';
import { airmass } from '../../sky/extinction';
import { skyFrameAt } from '../../sky/frame-at';
import { placeCatalogue } from '../../sky/star-places';
import { whereabouts } from '../clock-and-place/words';
import { inFists } from '../../wording/fists';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import type { ItemFamily } from '../item-family';
import { fistsAndCompass } from './fists-and-compass';
import { lookAlikes } from './look-alikes';
import { starOrPlanet } from './star-or-planet';
import { strikeOut } from './strike-out';
import { whatAPairCosts } from './what-a-pair-costs';
import { whichPair } from './which-pair';

const world = loadItemWorld();
const draws = 50;

function drawn<K extends Item['kind']>(family: ItemFamily, template: string, kind: K) {
  return Array.from({ length: draws }, (_, n) =>
    drawItem(family, template, { seed: `recomputed ${String(n)}`, world }),
  ).flatMap((item) => (item.kind === kind ? [item as Extract<Item, { kind: K }>] : []));
}

function found(text: string, pattern: RegExp): string[] {
  const match = pattern.exec(text);
  if (match === null) throw new Error(`${String(pattern)} is not in “${text}”`);
  return [...match];
}

const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
];
const planets = ['mercury', 'venus', 'mars', 'jupiter', 'saturn'];

type Place = { azimuthDeg: number; altitudeDeg: number; magnitude: number };
/** The skies that a prompt may mean: that day of 2026 and of 2027, with everything by name. */
function skiesOf(prompt: string): ((name: string) => Place)[] {
  const [, latitude, day, month, hour, minute] = found(
    prompt,
    /At (\d+)° north, (\d+) (\w+), (\d\d):(\d\d)/,
  );
  return [2026, 2027].map((year) => {
    const at = Date.UTC(
      year,
      months.indexOf(month ?? ''),
      Number(day),
      Number(hour),
      Number(minute),
    );
    const place = { latitudeDeg: Number(latitude), longitudeDeg: 0, elevationM: 0 };
    const frame = skyFrameAt({ instant: new Date(at), place });
    const placed = placeCatalogue(world.catalogue, frame);
    return (name: string): Place => {
      const planet = frame.planets.find(({ body }) => body === name.toLowerCase());
      if (planet !== undefined) return planet;
      const index = world.catalogue.stars.findIndex((star) => star.name === name);
      if (index < 0) throw new Error(`${name} is in no catalogue`);
      return {
        azimuthDeg: placed.azimuthDeg[index] ?? Number.NaN,
        altitudeDeg: placed.altitudeDeg[index] ?? Number.NaN,
        magnitude: world.catalogue.stars[index]?.magnitude ?? Number.NaN,
      };
    };
  });
}
/** The first name of a text that stands in the catalogue or among the planets. */
const nameIn = (text: string): string => found(text, /^([^,:(]+?)(?=,|:| \(|$)/)[1] ?? '';

/** True when for one of the two years everything about a question holds. */
const someSky = (prompt: string, holds: (sky: (name: string) => Place) => boolean): boolean =>
  skiesOf(prompt).some(holds);

/** Spherical law of cosines, as a second way beside the product's vectors. */
function apart(one: Place, other: Place): number {
  const r = Math.PI / 180;
  const cos =
    Math.sin(one.altitudeDeg * r) * Math.sin(other.altitudeDeg * r) +
    Math.cos(one.altitudeDeg * r) *
      Math.cos(other.altitudeDeg * r) *
      Math.cos((one.azimuthDeg - other.azimuthDeg) * r);
  return Math.acos(Math.min(1, cos)) / r;
}
const gap = (one: Place, other: Place): number =>
  Math.abs(((one.azimuthDeg - other.azimuthDeg + 540) % 360) - 180);

/** Targets of 100, by the direct sum over the grid, which the product keeps as its oracle. */
function directHits(kitName: string, one: Place, other: Place): number {
  const kit = world.kits.find(({ name }) => name === kitName);
  const eyepiece = kit?.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (kit === undefined || eyepiece === undefined) throw new Error(`no kit ${kitName}`);
  const radius = fieldRadiusArcmin(kit.telescope, eyepiece);
  return 100 * pairWorthDirect(kit.telescope, radius, one, other).hitRate;
}
const kitIn = (prompt: string): string => found(prompt, /(Wren|Heron|Owl)/)[1] ?? '';
const pairIn = (text: string): [string, string] => {
  const [, one = '', other = ''] = found(
    text,
    /^(.+?)(?: \(.+?\))? and (.+?)(?: \(.+?\))?(?:,.*)?$/,
  );
  return [one, other];
};

describe('by fist and compass', () => {
  it('has the star of the question where the ephemeris has it, to half a fist', () => {
    for (const { prompt, key } of drawn(fistsAndCompass, 'fists-up', 'numeric')) {
      const [, name = ''] = found(prompt, /horizon up to (.+?)\. What/);
      expect(
        someSky(prompt, (sky) => Math.abs(sky(name).altitudeDeg - key) < 2.6),
        prompt,
      ).toBe(true);
    }
  });

  it('counts azimuth from the side that is faced, and to its own hand alone', () => {
    for (const item of drawn(fistsAndCompass, 'beside-a-direction', 'choice')) {
      const [, facing = '', name = '', hand] = found(
        item.prompt,
        /due (\w+)\. (.+?) is .+ to your (left|right)/,
      );
      const from = 90 * ['north', 'east', 'south', 'west'].indexOf(facing);
      // One and the same night must bear out all of it: a planet stands elsewhere a year later.
      const fits = someSky(item.prompt, (sky) =>
        item.options.every(({ id, text }) => {
          const azimuthDeg = Number(text.replace('°', ''));
          const near = gap(sky(name), { ...sky(name), azimuthDeg }) < 2.6;
          return near === (id === item.key);
        }),
      );
      expect(fits, item.prompt).toBe(true);
      const key = Number(
        (item.options.find(({ id }) => id === item.key)?.text ?? '').replace('°', ''),
      );
      expect(Math.sin(((key - from) * Math.PI) / 180) > 0 ? 'right' : 'left').toBe(hand);
    }
  });
});

describe('what may serve', () => {
  it('lets those pass that are stars between 20° and 70°, by the ephemeris, and no others', () => {
    for (const item of drawn(strikeOut, 'may-serve', 'several')) {
      const fits = someSky(item.prompt, (sky) =>
        item.options.every(({ text, right }) => {
          const name = nameIn(text);
          const { altitudeDeg, magnitude } = sky(name);
          const star = !planets.includes(name.toLowerCase());
          return (star && altitudeDeg >= 20 && altitudeDeg <= 70 && magnitude <= 2.5) === right;
        }),
      );
      expect(fits, item.prompt).toBe(true);
    }
  });

  it('gives the objection that is true of what is struck out', () => {
    for (const item of drawn(strikeOut, 'one-to-strike-out', 'choice')) {
      const key = item.options.find(({ id }) => id === item.key);
      if (key === undefined) throw new Error('a choice has its key');
      const name = nameIn(key.text);
      const fits = someSky(item.prompt, (sky) => {
        const { altitudeDeg } = sky(name);
        if (key.reason.includes('planet')) return planets.includes(name.toLowerCase());
        return key.reason.includes('below 20°') ? altitudeDeg < 20 : altitudeDeg > 70;
      });
      expect(fits, `${item.prompt} ${key.text}`).toBe(true);
    }
  });

  it('puts the most air first: by Kasten & Young, and the lowest first all the same', () => {
    for (const item of drawn(strikeOut, 'most-air-first', 'order')) {
      const name = (id: string) => nameIn(item.steps.find((step) => step.id === id)?.text ?? '');
      const fits = someSky(item.prompt, (sky) =>
        item.rules.every(({ first, then }) => {
          const [low, high] = [sky(name(first)).altitudeDeg, sky(name(then)).altitudeDeg];
          return low < high && airmass(low) > airmass(high);
        }),
      );
      expect(fits, item.prompt).toBe(true);
    }
  });
});

describe('a star or a planet', () => {
  it('has the planet of that night where the question has it, and stars everywhere else', () => {
    for (const item of drawn(starOrPlanet, 'not-on-the-chart', 'choice')) {
      const [, name = ''] = found(item.explanation, /on the chart: (\w+),/);
      expect(planets).toContain(name.toLowerCase());
      const key = item.options.find(({ id }) => id === item.key)?.text ?? '';
      const there = someSky(item.prompt, (sky) => {
        const { azimuthDeg, altitudeDeg } = sky(name);
        return key.toLowerCase() === `${whereabouts({ azimuthDeg, altitudeDeg })}.`;
      });
      expect(there, item.prompt).toBe(true);
    }
  });

  it('orders by magnitude, the smallest first', () => {
    for (const item of drawn(starOrPlanet, 'brightest-first', 'order')) {
      const text = (id: string) => item.steps.find((step) => step.id === id)?.text ?? '';
      const fits = someSky(item.prompt, (sky) =>
        item.rules.every(
          ({ first, then }) => sky(text(first)).magnitude < sky(text(then)).magnitude - 0.3,
        ),
      );
      expect(fits, item.prompt).toBe(true);
    }
  });
});

describe('look-alikes', () => {
  it('are less than a fist away and less than 0.7 mag fainter; the distractors are not', () => {
    for (const item of drawn(lookAlikes, 'who-could-mislead', 'choice')) {
      const [, name = ''] = found(item.prompt, /would like (.+?), /);
      const fits = someSky(item.prompt, (sky) =>
        item.options.every(({ id, text }) => {
          const [star, other] = [sky(name), sky(nameIn(text))];
          // Components that the eye cannot part are one light, so a catalogue's V may be 0.1 off.
          const alike = apart(star, other) < 10 && other.magnitude - star.magnitude < 0.75;
          return alike === (id === item.key);
        }),
      );
      expect(fits, item.prompt).toBe(true);
    }
  });

  it('cost as many degrees as the two are apart, to half a fist', () => {
    for (const { prompt, key } of drawn(lookAlikes, 'how-far-off-then', 'numeric')) {
      const [, like = '', fists = '', star = ''] = found(
        prompt,
        /\d\d:\d\d\. (.+?) stands (.+?) from (.+?)\. Some/,
      );
      expect(inFists(key)).toBe(fists);
      expect(
        someSky(prompt, (sky) => Math.abs(apart(sky(like), sky(star)) - key) < 2.6),
        prompt,
      ).toBe(true);
    }
  });
});

describe('which two', () => {
  it('are worth more than any other pair offered, by the direct sum', () => {
    for (const item of drawn(whichPair, 'which-two', 'choice')) {
      const kit = kitIn(item.prompt);
      const fits = someSky(item.prompt, (sky) => {
        const key = item.options.find(({ id }) => id === item.key)?.text ?? '';
        const best = directHits(kit, ...placesIn(key, sky));
        return item.options.every(({ id, text, misconception }) => {
          if (id === item.key) return best > 89;
          const [one, other] = placesIn(text, sky);
          if (misconception === 'two-stars-too-close')
            return apart(one, other) < 20 && best - directHits(kit, one, other) > 25;
          if (misconception === 'two-stars-in-line')
            return gap(one, other) < 15 && best - directHits(kit, one, other) > 25;
          // What is left holds a light that may not serve at all.
          return (
            pairIn(text).some((name) => {
              const { altitudeDeg } = sky(name);
              return planets.includes(name.toLowerCase()) || altitudeDeg < 20 || altitudeDeg > 70;
            }) ||
            /Moon|changes|bright/.test(item.options.find((one) => one.id === id)?.reason ?? '')
          );
        });
      });
      expect(fits, item.prompt).toBe(true);
    }
  });

  it('go in order of their hit rates, by the direct sum', () => {
    for (const item of drawn(whichPair, 'best-first', 'order')) {
      const kit = kitIn(item.prompt);
      const text = (id: string) => item.steps.find((step) => step.id === id)?.text ?? '';
      const fits = someSky(item.prompt, (sky) =>
        item.rules.every(
          ({ first, then }) =>
            directHits(kit, ...placesIn(text(first), sky)) >
            directHits(kit, ...placesIn(text(then), sky)) + 20,
        ),
      );
      expect(fits, item.prompt).toBe(true);
    }
  });
});

function placesIn(text: string, sky: (name: string) => Place): [Place, Place] {
  const [one, other] = pairIn(text);
  return [sky(one), sky(other)];
}

describe('what a pair costs', () => {
  it('is what the direct sum gives, to a target', () => {
    for (const { prompt, key } of drawn(whatAPairCosts, 'how-many-are-found', 'numeric')) {
      const [, names = '', rate, count] = found(
        prompt,
        /aligned on (.+?), has a hit rate of (\d+) of 100.* to (\d+) targets/,
      );
      const kit = kitIn(prompt);
      expect(
        someSky(
          prompt,
          (sky) => Math.abs(directHits(kit, ...placesIn(names, sky)) - Number(rate)) < 1,
        ),
        prompt,
      ).toBe(true);
      expect(key).toBeCloseTo((Number(count) * Number(rate)) / 100, 9);
    }
  });

  it('falls into the band of the key, and clearly not into those of the distractors', () => {
    for (const item of drawn(whatAPairCosts, 'how-good-is-it', 'choice')) {
      const kit = kitIn(item.prompt);
      const [, names = ''] = found(item.prompt, /aligned on (.+?), \d+° apart/);
      const fits = someSky(item.prompt, (sky) => {
        const hits = directHits(kit, ...placesIn(names, sky));
        return item.options.every(({ id, text }) => {
          const about = /about (\d+) of/.exec(text);
          const inside = text.includes('fewer than 10')
            ? hits < 10
            : text.includes('more than 90')
              ? hits > 90
              : Math.abs(hits - Number(about?.[1])) < 12;
          return inside === (id === item.key);
        });
      });
      expect(fits, item.prompt).toBe(true);
    }
  });

  it('goes where the direct sum says when one star is swapped', () => {
    for (const item of drawn(whatAPairCosts, 'swap-one-star', 'choice')) {
      const kit = kitIn(item.prompt);
      const [, names = ''] = found(item.prompt, /aligned on (.+?): /);
      const [, incoming = ''] = found(item.prompt, /when (.+?) \(/);
      const key = item.options.find(({ id }) => id === item.key)?.text ?? '';
      const to = Number(found(key, /about (\d+) of/)[1]);
      const fits = someSky(item.prompt, (sky) => {
        const [kept] = pairIn(names);
        return Math.abs(directHits(kit, sky(kept), sky(incoming)) - to) < 1;
      });
      expect(fits, item.prompt).toBe(true);
      for (const { id, text } of item.options) {
        if (id !== item.key)
          expect(Math.abs(Number(found(text, /about (\d+) of/)[1]) - to)).toBeGreaterThan(15);
      }
    }
  });
});
