import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '@/lib/content/item-world';
import { pairWorthDirect } from '@/lib/pointing/pair-worth-direct';
import { randomFrom } from '@/lib/variants/random';
import { normal } from '@/lib/variants/normal';
import { truthAtStart } from '@/lib/alignment/start-position';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import { familyOf } from '../item-bank';
import { honestMount, missDeg, outcomeOf } from './aligning';

/*
 * What the questions say is recomputed here from their own words, by other ways than the generators':
 * plain optics, a gear of two walls, spherical trigonometry, a Monte Carlo, counting.
 */

const world = loadItemWorld();
const draws = (family: string, template: string, count = 60): Item[] =>
  Array.from({ length: count }, (_, n) =>
    drawItem(familyOf(family), template, { seed: `checked ${String(n)}`, world }),
  );

function keyText(item: Item): string {
  if (item.kind === 'choice') return item.options.find(({ id }) => id === item.key)?.text ?? '';
  if (item.kind === 'point') return item.spots.find(({ id }) => id === item.key)?.where ?? '';
  throw new Error('no key to read');
}
const shown = (item: Item): string => item.drawing?.alternative ?? '';
const numbersIn = (text: string): number[] =>
  [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([figure]) => Number(figure));
const kitNamed = (text: string) => {
  const kit = world.kits.find(({ name }) => text.includes(name));
  if (kit === undefined) throw new Error(`no telescope in “${text}”`);
  return kit;
};

/** Design, "Field": a reflector turns by 180°, a star diagonal mirrors, an erecting prism does neither. */
const signsOf: Record<string, readonly [number, number]> = {
  refractor: [1, 1],
  reflector: [-1, -1],
  'maksutov-cassegrain': [-1, 1],
};
/** Half the true field: apparent field over magnification, halved (design, "Field"), arcminutes. */
const halfField = (focalLengthMm: number, apparentDeg: number, eyepieceMm: number): number =>
  (60 * apparentDeg) / (focalLengthMm / eyepieceMm) / 2;

describe('from eye to eyepiece', () => {
  it('the rockers that are right go toward the star on the sky', () => {
    for (const item of draws('eye-finder-eyepiece', 'which-rockers')) {
      const [across, along] = signsOf[kitNamed(item.prompt).tubeType] ?? [0, 0];
      const right = across * (shown(item).includes('right of the middle') ? 1 : -1);
      const up = along * (shown(item).includes('above it') ? 1 : -1);
      expect(keyText(item)).toBe(
        `Press ${right > 0 ? 'right' : 'left'} and ${up > 0 ? 'up' : 'down'}`,
      );
    }
  });

  it('a star goes the other way than the tube, as that telescope shows it', () => {
    const ways = {
      right: [1, 0],
      left: [-1, 0],
      up: [0, 1],
      down: [0, -1],
    } as const;
    for (const item of draws('eye-finder-eyepiece', 'where-it-goes')) {
      const [across, along] = signsOf[kitNamed(item.prompt).tubeType] ?? [0, 0];
      const moved = /′ (right|left|up|down) on the sky/.exec(item.prompt)?.[1] as keyof typeof ways;
      const x = -across * ways[moved][0];
      const y = -along * ways[moved][1];
      const where = x > 0 ? 'Right' : x < 0 ? 'Left' : y > 0 ? 'Above' : 'Below';
      expect(keyText(item)).toBe(
        `${where} ${where === 'Above' || where === 'Below' ? 'the' : 'of the'} middle`,
      );
    }
  });

  it('each distance belongs to the narrowest view that still shows it', () => {
    for (const item of draws('eye-finder-eyepiece', 'closest-view')) {
      if (item.kind !== 'match') throw new Error('a match');
      const { telescope, eyepieces } = kitNamed(item.prompt);
      const views = [
        ...eyepieces.map(({ focalLengthMm, apparentFieldDeg }) => ({
          name: `The ${String(focalLengthMm)} mm eyepiece`,
          reach: halfField(telescope.focalLengthMm, apparentFieldDeg, focalLengthMm),
        })),
        { name: 'The finder', reach: 240 },
        { name: 'The bare eye only', reach: Infinity },
      ].sort((a, b) => a.reach - b.reach);
      for (const { left, right } of item.pairs) {
        const text = item.left.find(({ id }) => id === left)?.text ?? '';
        const off = (numbersIn(text)[0] ?? NaN) * (text.includes('°') ? 60 : 1);
        expect(item.right.find(({ id }) => id === right)?.text).toBe(
          views.find(({ reach }) => off <= reach)?.name,
        );
      }
    }
  });
});

describe('the middle of the field', () => {
  it('is read off as a share of half the width', () => {
    for (const item of draws('middle-of-the-field', 'read-offset')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const width = numbersIn(item.prompt.split('it shows')[1] ?? '')[0] ?? NaN;
      const ring = ['first', 'second', 'third'].findIndex((one) => shown(item).includes(one)) + 1;
      expect(Math.abs(item.key - (ring / 4) * (width / 2))).toBeLessThan(0.3);
    }
  });

  it('is a tenth of half the field away at most: 7.5′ in Wren’s 25 mm eyepiece', () => {
    // 50° / (500/25) = 2.5° across, half 75′: design, "Defaults", centring σ of Wren
    const wren = draws('middle-of-the-field', 'tenth-of-field', 200).find(
      ({ prompt }) => prompt.includes('Wren') && prompt.includes('25 mm'),
    );
    expect(wren?.kind === 'numeric' && wren.key).toBeCloseTo(7.5, 6);
  });
});

/**
 * A gear as two walls with the play between them: the tube stands still until a wall of the motor
 * pushes it. In steps of a tenth of an arcminute.
 */
function gearLag(moves: readonly number[], play: number): number {
  let motor = 0;
  let tube = 0;
  for (const move of moves)
    for (let step = 0; step < Math.abs(move) * 10; step += 1) {
      motor += Math.sign(move) / 10;
      if (tube < motor) tube = motor;
      if (tube > motor + play) tube = motor + play;
    }
  return Math.round(10 * (tube - motor)) / 10;
}
const movesIn = (text: string): number[] =>
  [...text.matchAll(/(\d+)′ (right|left|up|down)/g)].map(
    ([, size, way]) => Number(size) * (way === 'right' || way === 'up' ? 1 : -1),
  );
const playIn = (prompt: string): number => Number(/(\d+)′ of play/.exec(prompt)?.[1]);

describe('the last moves', () => {
  it('leave no play only where a gear of two walls has none', () => {
    for (const item of [
      ...draws('last-moves', 'reads-true'),
      ...draws('last-moves', 'which-endings'),
    ]) {
      if (item.kind !== 'choice' && item.kind !== 'several') throw new Error('options');
      for (const option of item.options) {
        const isRight =
          item.kind === 'choice' ? option.id === item.key : 'right' in option && option.right;
        const lag = gearLag(movesIn(option.text), playIn(item.prompt));
        expect(lag === 0, option.text).toBe(isRight);
        // The reason names what is left.
        if (!isRight) expect(numbersIn(option.reason)).toContain(lag);
      }
    }
  });

  it('leave as much as the match says', () => {
    for (const item of draws('last-moves', 'lag-match')) {
      if (item.kind !== 'match') throw new Error('a match');
      for (const { left, right } of item.pairs) {
        const moves = movesIn(item.left.find(({ id }) => id === left)?.text ?? '');
        const said = numbersIn(item.right.find(({ id }) => id === right)?.text ?? '')[0];
        expect(gearLag(moves, playIn(item.prompt))).toBe(said);
      }
    }
  });

  it('move the tube by what the motor turns beyond the play', () => {
    for (const item of draws('last-moves', 'tube-moves')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const turned = Number(/motor turns (\d+)′/.exec(item.prompt)?.[1]);
      const play = playIn(item.prompt);
      // From taken up: the motor goes back by `turned`, the tube by that less what the lag grew.
      expect(item.key).toBe(turned - gearLag([-turned], play));
    }
  });
});

/** Angle between two places by the spherical law of cosines; azimuth and altitude in degrees. */
function between(a: readonly [number, number], b: readonly [number, number]): number {
  const [az1 = NaN, alt1 = NaN, az2 = NaN, alt2 = NaN] = [...a, ...b].map(
    (angle) => (angle * Math.PI) / 180,
  );
  const cosine =
    Math.sin(alt1) * Math.sin(alt2) + Math.cos(alt1) * Math.cos(alt2) * Math.cos(az1 - az2);
  return (Math.acos(cosine) * 180) / Math.PI;
}
const placesIn = (alternative: string): Map<string, [number, number]> =>
  new Map(
    [...alternative.matchAll(/(\w): azimuth (\d+)°, altitude (\d+)°/g)].map(
      ([, name = '', azimuth, altitude]) => [name, [Number(azimuth), Number(altitude)]],
    ),
  );

describe('what the mount says', () => {
  it('disagrees by the difference of the two angles, and by no other of the three', () => {
    for (const item of draws('these-two-agree', 'what-it-says')) {
      const [ab = NaN, ac = NaN, bc = NaN] = numbersIn(item.prompt.split('From A')[1] ?? '');
      const places = placesIn(shown(item));
      const [a, b, c] = ['A', 'B', 'C'].map((name) => places.get(name) ?? ([NaN, NaN] as const));
      // The chart's words are to the degree.
      expect(Math.abs(between(a ?? [0, 0], b ?? [0, 0]) - ab)).toBeLessThan(1.2);
      expect(Math.abs(between(a ?? [0, 0], c ?? [0, 0]) - ac)).toBeLessThan(1.2);
      expect(Math.abs(between(b ?? [0, 0], c ?? [0, 0]) - bc)).toBeLessThan(1.2);
      const said = numbersIn(keyText(item))[0] ?? NaN;
      // The zero of this mount is off by up to 0.05°, which counts twice; and figures are rounded.
      expect(Math.abs(said - Math.abs(ac - ab))).toBeLessThan(0.25);
      expect(Math.abs(bc - said)).toBeGreaterThan(1.3);
    }
  });

  it('has its odd evening out where no bubble would have left it', () => {
    for (const item of draws('these-two-agree', 'which-evening', 30)) {
      if (item.kind !== 'choice') throw new Error('a choice');
      for (const { id, text } of item.options) {
        const worst = Math.max(...numbersIn(text));
        if (id === item.key) expect(worst).toBeGreaterThanOrEqual(1.8);
        else expect(worst).toBeLessThan(1.1);
      }
    }
  });

  it('says the same of a leaning base as of a level one: 1° of lean leaves under 0.001′', () => {
    // design, "Which slip bites where"
    const level = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };
    const a = { azimuthDeg: 100, altitudeDeg: 40 };
    const b = { azimuthDeg: 200, altitudeDeg: 50 };
    const truth = honestMount(randomFrom('lean'), { tiltDeg: 1, northDeg: 3, zeroDeg: 0.01 });
    const leaning = { ...truth, errors: level };
    const outcome = outcomeOf('solved-zero', leaning, [
      { named: a, centred: a },
      { named: b, centred: b },
    ]);
    if (outcome.kind !== 'agree') throw new Error(outcome.kind);
    const third = { azimuthDeg: 330, altitudeDeg: 35 };
    expect(60 * missDeg(outcome.model, leaning, third)).toBeLessThan(0.001);
  });
});

describe('a third star', () => {
  it('shows a poor alignment best where three hundred alignments through the exact mechanics miss most', () => {
    for (const item of draws('third-star', 'point-at-third', 12)) {
      if (item.kind !== 'point') throw new Error('a point');
      const { telescope } = kitNamed(item.prompt);
      const places = placesIn(shown(item));
      const at = (name: string) => {
        const [azimuthDeg = NaN, altitudeDeg = NaN] = places.get(name) ?? [];
        return { azimuthDeg, altitudeDeg };
      };
      const pair = [at('1'), at('2')] as const;
      const random = randomFrom('three hundred alignments');
      const squares = new Map(item.spots.map(({ id }) => [id, 0]));
      for (let n = 0; n < 300; n += 1) {
        const off = (sigmaArcmin: number) => normal(random, sigmaArcmin) / 60;
        const truth = truthAtStart(
          [1, 0, 0, 0, 1, 0, 0, 0, 1],
          { azimuthDeg: 0, altitudeDeg: off(telescope.altitudeZeroArcmin) },
          {
            altitudeZeroDeg: 0,
            coneDeg: off(telescope.coneArcmin),
            axisSkewDeg: off(telescope.axisSkewArcmin),
          },
        );
        const centred = (star: (typeof pair)[number]) => ({
          named: star,
          centred: {
            azimuthDeg:
              star.azimuthDeg +
              off(telescope.centringArcmin) / Math.cos((star.altitudeDeg * Math.PI) / 180),
            altitudeDeg: star.altitudeDeg + off(telescope.centringArcmin),
          },
        });
        const outcome = outcomeOf('solved-zero', truth, [centred(pair[0]), centred(pair[1])]);
        if (outcome.kind !== 'agree') continue;
        for (const { id, where } of item.spots) {
          const [azimuthDeg = NaN, altitudeDeg = NaN] = numbersIn(where);
          const miss = missDeg(outcome.model, truth, { azimuthDeg, altitudeDeg });
          squares.set(id, (squares.get(id) ?? 0) + miss * miss);
        }
      }
      const worst = [...squares].sort((a, b) => b[1] - a[1])[0]?.[0];
      expect(worst, item.explanation).toBe(item.key);
    }
  });

  it('is trusted well inside the field and never far outside it', () => {
    for (const item of draws('third-star', 'verdict')) {
      const { telescope, eyepieces, observingEyepieceId } = kitNamed(item.prompt);
      const eyepiece = eyepieces.find(({ id }) => id === observingEyepieceId);
      const radius = halfField(
        telescope.focalLengthMm,
        eyepiece?.apparentFieldDeg ?? NaN,
        eyepiece?.focalLengthMm ?? NaN,
      );
      const said = /ends (\d+(?:\.\d+)?)(′|°)/.exec(item.prompt);
      const miss = Number(said?.[1]) * (said?.[2] === '°' ? 60 : 1);
      expect(keyText(item).startsWith('Go on')).toBe(miss < radius);
      expect(miss < 0.7 * radius || miss > 2 * radius).toBe(true);
    }
  });

  it('far off is read from the ring and the two fields', () => {
    for (const item of draws('third-star', 'how-far-off')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const { telescope, eyepieces } = kitNamed(item.prompt);
      const [narrow = NaN, wide = NaN] = eyepieces
        .map((one) => halfField(telescope.focalLengthMm, one.apparentFieldDeg, one.focalLengthMm))
        .sort((a, b) => a - b);
      const ring = ['first', 'second', 'third'].findIndex((one) => shown(item).includes(one)) + 1;
      expect(item.key).toBeCloseTo(Math.abs((ring / 4) * wide - narrow), 1);
    }
  });

  it('misses nothing at the first star when only the second was spoilt', () => {
    for (const item of draws('third-star', 'spoilt-second', 20)) {
      if (item.kind !== 'choice') throw new Error('a choice');
      const first = item.options.find(({ text }) => text.startsWith('The first star'));
      expect(first?.reason).toContain('by 0′');
      const missOf = (reason: string) =>
        (numbersIn(reason)[0] ?? NaN) * (reason.includes('°') ? 60 : 1);
      const key = item.options.find(({ id }) => id === item.key);
      for (const { id, reason } of item.options)
        if (id !== item.key) expect(missOf(reason)).toBeLessThan(missOf(key?.reason ?? ''));
    }
  });
});

describe('hits out of a hundred', () => {
  it('are counted inside the circle', () => {
    for (const item of draws('hit-rate', 'count-hits', 30)) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const [radius = NaN, ...offs] = numbersIn(shown(item));
      expect(offs).toHaveLength(20);
      expect(item.key).toBe(5 * offs.filter((off) => off <= radius).length);
    }
  });

  it('rank alignments as the direct sum over the grid does', () => {
    for (const item of draws('hit-rate', 'best-to-worst', 12)) {
      if (item.kind !== 'order') throw new Error('an order');
      const { telescope, eyepieces, observingEyepieceId } = kitNamed(item.prompt);
      const eyepiece = eyepieces.find(({ id }) => id === observingEyepieceId);
      const radius = halfField(
        telescope.focalLengthMm,
        eyepiece?.apparentFieldDeg ?? NaN,
        eyepiece?.focalLengthMm ?? NaN,
      );
      const hits = new Map(
        item.steps.map(({ id, text }) => {
          const [gap = NaN, centringArcmin = NaN] = numbersIn(text);
          const { hitRate } = pairWorthDirect(
            { ...telescope, centringArcmin },
            radius,
            { azimuthDeg: 100, altitudeDeg: 40 },
            { azimuthDeg: 100 + gap, altitudeDeg: 40 },
          );
          return [id, hitRate];
        }),
      );
      for (const { first, then } of item.rules)
        expect(hits.get(first) ?? NaN).toBeGreaterThan((hits.get(then) ?? NaN) + 0.08);
    }
  });

  it('go up in a wider eyepiece and down in a narrower one, on an alignment that stays', () => {
    for (const item of draws('hit-rate', 'other-eyepiece')) {
      const [from = NaN, to = NaN] = [...item.prompt.matchAll(/(\d+) mm/g)].map(([, mm]) =>
        Number(mm),
      );
      expect(keyText(item)).toContain(to > from ? 'up' : 'down');
    }
  });

  it('leave the rest of a list unseen', () => {
    for (const item of draws('hit-rate', 'how-many-missed')) {
      if (item.kind !== 'numeric') throw new Error('a number');
      const rate = Number(/rate of (\d+)/.exec(item.prompt)?.[1]);
      const targets = Number(/has (\d+) targets/.exec(item.prompt)?.[1]);
      expect(item.key).toBeCloseTo(targets - (targets * rate) / 100, 9);
    }
  });
});
