import { describe, expect, it } from 'vitest';
import { standSteps } from '@/lib/drawings/step-words';
import { closingFacts } from './closing-facts';
import { stepsInWords, waitsFor, type BuildStep } from './steps-facts';
import {
  narrowAndTallSetting,
  startingTriangle,
  triangleFacts,
  wideAndLowSetting,
} from './triangle-facts';

describe('the figure of the foot triangle', () => {
  it('takes more of a push wide and low than tall and narrow', () => {
    const level = { ...narrowAndTallSetting, groundSlopeDeg: 0 };
    expect(triangleFacts(wideAndLowSetting).pushKg).toBeGreaterThan(
      2 * triangleFacts(level).pushKg,
    );
  });

  it('tips by itself once the ground is steep enough, and says so', () => {
    expect(triangleFacts(startingTriangle).stands).toBe(true);
    const steep = triangleFacts({ ...narrowAndTallSetting, groundSlopeDeg: 25 });
    expect(steep.stands).toBe(false);
    expect(steep.words).toContain('it tips over that line');
    expect(steep.pushKg).toBe(0);
  });
});

describe('the figure of closing legs', () => {
  it('catches a finger of 16 mm as soon as less room is left: 1.732 × 60 mm × sin 8.86° is 16 mm', () => {
    expect(closingFacts({ splayDeg: 9, fingerAtMm: 60 }).caught).toBe(false);
    expect(closingFacts({ splayDeg: 8, fingerAtMm: 60 }).caught).toBe(true);
  });

  it('squeezes with 2 kg × 1000 mm ÷ 50 mm, 40 kg', () => {
    expect(closingFacts({ splayDeg: 2, fingerAtMm: 50 }).squeezeKg).toBeCloseTo(40, 9);
  });
});

describe('the figure of steps', () => {
  it('takes the order of the lesson, and another with the tray first', () => {
    const orders: BuildStep[][] = [
      [...standSteps],
      [
        'spread-legs',
        'tray-in',
        'set-height',
        'lock-spreader',
        'lock-legs',
        'mount-on',
        'bolt-mount',
      ],
    ];
    for (const order of orders) {
      order.forEach((step, index) => expect(waitsFor(step, order.slice(0, index))).toBeNull());
      expect(stepsInWords(order)).toContain('may bear the tube');
    }
  });

  it('tells of what a step waits for', () => {
    expect(waitsFor('mount-on', ['spread-legs'])).toContain('comes first');
    expect(waitsFor('spread-legs', ['spread-legs'])).toContain('done already');
  });
});
