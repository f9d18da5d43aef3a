import { AstroTime, Body, Equator, Horizon, Observer } from 'astronomy-engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { packedUp, packUpSteps, type PackUpStep } from '../../rehearsal/pack-up';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import type { ItemFamily } from '../item-family';
import { lightNeeded, lamps, rodsForCones } from '../../night/dark-adaptation';
import { dewAndGlass } from './dew-and-glass';
import { dewPointByRuleC, dewPointC, isDewy } from '../../night/dew-point';
import { eyesAndLamps } from './eyes-and-lamps';
import { mustPrecede, readyToDo } from '../../drawings/pack-up-graph';
import { packUpName } from '../../drawings/pack-up-words';
import { packingUp } from './packing-up';
import { duskAt } from './predict-the-twilight';
import { standingOf, type Observation } from '../../mastery/sign-off';
import { signingOff } from './signing-off';
import { whenItIsDark } from './when-it-is-dark';
import { darkHours, moonlessHours, nightOf } from './night-of';

const world = loadItemWorld();
const draws = (family: ItemFamily, template: string, count = 80): Item[] =>
  Array.from({ length: count }, (_, n) =>
    drawItem(family, template, { seed: `night ${String(n)}`, world }),
  );
const keyText = (item: Item): string =>
  item.kind === 'choice' ? (item.options.find(({ id }) => id === item.key)?.text ?? '') : '';
const signed = (text: string | undefined): number => Number((text ?? '').replace('−', '-'));

describe('the dew point', () => {
  it.each([
    // Published tables of the dew point, to a tenth of a degree (from memory).
    [20, 50, 9.3],
    [10, 80, 6.7],
    [25, 60, 16.7],
    [0, 90, -1.4],
  ])('of air at %d °C and %d %% is %d °C', (airC, humidity, dewC) => {
    expect(Math.abs(dewPointC(airC, humidity) - dewC)).toBeLessThan(0.1);
  });

  it('is the air’s own temperature at 100 %, and never above it', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 35 }), fc.integer({ min: 20, max: 100 }), (t, h) => {
        expect(dewPointC(t, 100)).toBeCloseTo(t, 9);
        expect(dewPointC(t, h)).toBeLessThanOrEqual(t + 1e-9);
      }),
    );
  });

  it('by the rule of thumb is within the marks’ band wherever a question asks for it', () => {
    for (const item of draws(dewAndGlass, 'dew-point-by-rule', 200)) {
      if (item.kind !== 'numeric') throw new Error('not numeric');
      const [, air, humidity] = /has (−?\d+) °C and a humidity of (\d+) %/.exec(item.prompt) ?? [];
      const off = Math.abs(dewPointByRuleC(signed(air), signed(humidity)) - item.key);
      expect(off).toBeLessThanOrEqual(item.tolerance.full);
    }
  });

  it('decides what is on the glass, by the degrees in the prompt', () => {
    for (const item of draws(dewAndGlass, 'predict-the-dew')) {
      const [, dew, glass] =
        /dew point is (−?\d+) °C.+cooled to (−?\d+) °C/.exec(item.prompt) ?? [];
      expect(keyText(item).startsWith('Dew')).toBe(signed(glass) <= signed(dew));
    }
    expect(isDewy(3, 8, 80)).toBe(true);
  });
});

describe('dark adaptation', () => {
  it('needs ever less light as minutes pass, without a jump', () => {
    for (let minute = 0; minute < 40; minute += 0.25) {
      expect(lightNeeded(minute + 0.25)).toBeLessThanOrEqual(lightNeeded(minute));
      expect(lightNeeded(minute) / lightNeeded(minute + 0.25)).toBeLessThan(1.8);
    }
    expect(lightNeeded(40)).toBe(1);
  });

  it('has the rods gain 0.24 powers of ten a minute once they lead (Lamb & Pugh 2004)', () => {
    expect(Math.log10(lightNeeded(12) / lightNeeded(17))).toBeCloseTo(5 * 0.24, 9);
  });

  it('is read off the chart at a hundred times after 10 + 1/0.24 minutes, and so for the others', () => {
    const minutes: Record<string, number> = { 1000: 10, 100: 10 + 1 / 0.24, 10: 10 + 2 / 0.24 };
    for (const item of draws(eyesAndLamps, 'read-the-curve')) {
      if (item.kind !== 'numeric') throw new Error('not numeric');
      const times = /down to (\d+) times/.exec(item.prompt)?.[1] ?? '';
      expect(Math.abs(item.key - (minutes[times] ?? NaN))).toBeLessThan(0.06);
    }
  });

  it('sorts lamps by their wavelength from 650 down to 510 nm, as the CIE tables do', () => {
    const red = lamps.filter(({ nm }) => nm >= 510);
    expect([...red].sort((a, b) => rodsForCones(a) - rodsForCones(b))).toEqual(red);
    // V′ and V are each at their greatest near 507 and 555 nm.
    expect(rodsForCones({ name: 'green', nm: 550, scotopic: 0.481, photopic: 0.995 })).toBeLessThan(
      1,
    );
  });

  it('costs after a flash what the two minutes cost, one over the other', () => {
    for (const item of draws(eyesAndLamps, 'predict-the-flash')) {
      const [, before, after] =
        /spent (\d+) minutes.+need (\d+) minutes later/.exec(item.prompt) ?? [];
      const times = lightNeeded(Number(after)) / lightNeeded(Number(before));
      const said = Number(/About (\d+) times/.exec(keyText(item))?.[1]);
      expect(Math.abs(Math.log(said / times))).toBeLessThan(Math.log(1.5));
    }
  });
});

/** The Sun's altitude by another way than the product's wrapper: the library itself. */
function sunDepthDeg(instant: Date, latitudeDeg: number): number {
  const observer = new Observer(latitudeDeg, 0, 0);
  const time = new AstroTime(instant);
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
  return -Horizon(time, observer, ra, dec).altitude;
}

describe('dusk', () => {
  it('is named after how far down the Sun is: 6°, 12°, 18° (USNO)', () => {
    for (const item of draws(whenItIsDark, 'name-the-twilight')) {
      const depth = Number(/stands (\d+)°/.exec(item.prompt)?.[1]);
      const name =
        depth < 6
          ? 'Civil twilight'
          : depth < 12
            ? 'Nautical twilight'
            : depth < 18
              ? 'Astronomical twilight'
              : 'Dark night';
      expect(keyText(item)).toBe(name);
    }
  });

  it('takes from −0.833° to −18° at 15° an hour on the equator at an equinox: 68.7 minutes', () => {
    expect(Math.abs((duskAt(0, '2027-03-20').minutes ?? 0) - (17.167 / 15) * 60)).toBeLessThan(1);
  });

  it('has no end in June at 52° and 57° north', () => {
    expect(duskAt(52, '2027-06-21').minutes).toBeNull();
    expect(duskAt(57, '2027-06-21').minutes).toBeNull();
  });

  it('counts as dark just where the Sun is 18° down', () => {
    const night = nightOf(52, '2026-12-05');
    for (const { hours, dark } of night.marks) {
      const instant = new Date(Date.parse('2026-12-05T00:00:00Z') + hours * 3_600_000);
      expect(dark).toBe(sunDepthDeg(instant, 52) > 18);
    }
  });

  it('leaves the night after a full Moon no dark hour without it, and one near new Moon nearly all', () => {
    // Full Moon on 22 January 2027, new Moon on 9 December 2026 (almanac, from memory).
    expect(moonlessHours(nightOf(52, '2027-01-22'))).toBeLessThan(1);
    const dark = nightOf(52, '2026-12-08');
    expect(darkHours(dark) - moonlessHours(dark)).toBeLessThan(1);
  });

  it('orders a night’s moments as their instants are', () => {
    for (const item of draws(whenItIsDark, 'order-the-night', 20)) {
      if (item.kind !== 'order') throw new Error('not an order');
      const wanted = ['Sunset', 'Civil dusk', 'Nautical dusk', 'Astronomical dusk'];
      wanted.push('Astronomical dawn', 'Nautical dawn', 'Civil dawn', 'Sunrise');
      const place = (id: string) =>
        wanted.indexOf(item.steps.find((one) => one.id === id)?.text ?? '');
      for (const { first, then } of item.rules) expect(place(first)).toBeLessThan(place(then));
    }
  });
});

describe('packing up', () => {
  const stepOf = (text: string): PackUpStep | undefined =>
    packUpSteps.find((step) => packUpName(step) === text);

  it('lets nothing come next that would break a rule, and says no less of what would', () => {
    for (const item of draws(packingUp, 'what-next')) {
      if (item.kind !== 'choice') throw new Error('not a choice');
      const doneText = /done so far: (.+?)\. Which/.exec(item.prompt)?.[1] ?? '';
      const done = packUpSteps.filter((step) => doneText.includes(packUpName(step).toLowerCase()));
      for (const { id, text } of item.options) {
        const step = stepOf(text);
        if (step === undefined) throw new Error(`no step is called ${text}`);
        const rest = packUpSteps.filter((one) => one !== step && !done.includes(one));
        // Done now, with all that is left after it: broken or not by the rehearsal's own grader.
        const { broken } = packedUp([...done, step, ...rest]);
        expect(broken.some(({ after }) => after === step)).toBe(id !== item.key);
      }
    }
  });

  it('asks for orders in which any that the grader takes is right, and each broken rule is one of its', () => {
    for (const item of draws(packingUp, 'in-order', 30)) {
      if (item.kind !== 'order') throw new Error('not an order');
      const step = (id: string) => stepOf(item.steps.find((one) => one.id === id)?.text ?? '');
      for (const a of item.steps)
        for (const b of item.steps) {
          if (a === b) continue;
          const [before, after] = [step(a.id), step(b.id)];
          if (before === undefined || after === undefined) throw new Error('unknown step');
          // Told, or following from what is told: an order that swaps the two breaks a rule.
          const follows = (from: string): boolean =>
            item.rules.some(
              ({ first, then }) => first === from && (then === b.id || follows(then)),
            );
          expect(follows(a.id)).toBe(mustPrecede(before, after));
        }
    }
  });

  it('is ready for its first step with nothing done: level the tube, or put the caps on', () => {
    expect(readyToDo([])).toEqual(['tube-level', 'caps-on']);
  });
});

describe('the sign-off', () => {
  const seen = (date: string, level: 1 | 2 | 3 | 4, gate: string | null = null): Observation => ({
    date,
    level,
    gate,
  });

  it.each<[string, Observation[], 3 | 4, string]>([
    ['two dates at the level', [seen('1 May', 3), seen('8 May', 4)], 3, 'signed-off'],
    ['one date', [seen('1 May', 4)], 3, 'one-date'],
    ['the same date twice', [seen('1 May', 4), seen('1 May', 4)], 3, 'one-date'],
    ['below the level', [seen('1 May', 3), seen('8 May', 3)], 4, 'level'],
    ['a failed gate', [seen('1 May', 4), seen('8 May', 4, 'cap off')], 3, 'gate'],
    [
      'a gate made good by two more dates',
      [seen('1 May', 4, 'cap off'), seen('8 May', 4), seen('9 May', 4)],
      3,
      'signed-off',
    ],
  ])('with %s stands as the design says', (_, observations, needed, standing) => {
    const found = standingOf(observations, needed);
    expect(found.signedOff ? 'signed-off' : found.because).toBe(standing);
  });

  it('is never given by a card on which fewer than two evenings count, as its words tell', () => {
    for (const item of draws(signingOff, 'read-the-card')) {
      const words = item.drawing?.alternative ?? '';
      const needed = Number(/signed off at level (\d)/.exec(words)?.[1]);
      const evenings = words.split('. ').slice(1);
      const good = evenings.filter(
        (one) => Number(/level (\d)/.exec(one)?.[1]) >= needed && one.includes('all gates passed'),
      );
      expect(keyText(item).startsWith('Signed off')).toBe(good.length >= 2);
      const gated = evenings.some((one) => one.includes('gate failed'));
      if (good.length >= 2 || !gated) continue;
      expect(evenings.some((one) => one.includes(keyText(item).replace('Not yet, ', '')))).toBe(
        true,
      );
      // By the levels alone it would have been signed off: nothing else holds it back.
      const atLevel = evenings.filter((one) => Number(/level (\d)/.exec(one)?.[1]) >= needed);
      expect(atLevel.length).toBeGreaterThanOrEqual(2);
    }
  });
});
