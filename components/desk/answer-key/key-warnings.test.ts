import { describe, expect, it } from 'vitest';
import type { AnswerKeyPair } from '@/lib/pointing/answer-key';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { keyWarnings } from './key-warnings';

const night = {
  sun: { azimuthDeg: 250, altitudeDeg: -20, trueAltitudeDeg: -20, magnitude: -26.7 },
};
const frame: SkyFrame = {
  instant: '2026-12-05T18:30:00.000Z',
  yearsFromJ2000: 26.9,
  icrsToLocal: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  earthVelocityOverC: [0, 0, 0],
  refractionScale: 1,
  ...night,
  moon: {
    azimuthDeg: 0,
    altitudeDeg: -9,
    trueAltitudeDeg: -9,
    magnitude: -5,
    illuminatedFraction: 0.1,
  },
  planets: [],
};
const pair = (mark: number): AnswerKeyPair => ({
  stars: [1, 2],
  separationDeg: 80,
  expectedErrorArcmin: 10,
  hitRate: 0.9,
  mark,
});
const keyWith = (pairs: AnswerKeyPair[]) => ({
  instant: frame.instant,
  nakedEyeLimit: 5,
  stars: [],
  pairs,
});
const variants = [{ template: 'free-pair' as const, sample: pair(100) }];
const titles = (pairs: AnswerKeyPair[], sky = frame) =>
  keyWarnings({ lab: 'pick-the-pair', key: keyWith(pairs), frame: sky, variants }, [
    'free-pair',
    'partner',
  ]).map((warning) => warning.title);

describe('warnings before publishing', () => {
  it('are none for an ordinary night', () => {
    expect(titles([pair(100), pair(90), pair(60), pair(40)])).toEqual([]);
  });

  it('tell that no pair is usable', () => {
    expect(titles([])[0]).toContain('every student will get “say so”');
  });

  it('tell that the Sun is up', () => {
    expect(titles([], { ...frame, sun: { ...frame.sun, trueAltitudeDeg: 3 } })[0]).toContain(
      'Sun is up',
    );
  });

  it('tell that there is little to choose from', () => {
    expect(titles([pair(100)])[0]).toContain('Only 1 usable pair');
  });

  it('tell that every choice is right', () => {
    expect(titles([pair(100), pair(100), pair(99), pair(95)])[0]).toContain('Almost any two');
  });

  it('name the kinds of task that have no good pair, and a lone kind', () => {
    const warnings = keyWarnings(
      {
        lab: 'pick-the-pair',
        key: keyWith([pair(100), pair(90), pair(60), pair(40)]),
        frame,
        variants: [{ template: 'cloud-bank', sample: null }],
      },
      ['cloud-bank'],
    );
    expect(warnings.map((warning) => warning.title)).toEqual([
      'Some tasks have no good pair: “Cloud over part of the sky”',
      'One kind of task only',
    ]);
  });

  it('of a run tell that nothing can be aligned on, and of a faulty evening nothing of the kind', () => {
    const kinds = ['a kind', 'another'];
    const sky = { key: keyWith([]), frame, variants: [] };
    const run = { ...sky, lab: 'alignment-run' as const };
    const fault = { ...sky, lab: 'what-went-wrong' as const };
    expect(keyWarnings(run, kinds).map(({ title }) => title)).toEqual([
      'No pair is usable at this time: a run cannot go well',
    ]);
    expect(keyWarnings(fault, kinds)).toEqual([]);
  });
});
