import { describe, expect, it } from 'vitest';
import { barOf, creepWhenRaised, letGo, pullShare, wholeTube } from './tube-facts';
import { raisedWords } from './tube-words';

/** A tube that can be reckoned in the head: 2 kg at 200 mm, finder 0.2 kg at 420 mm. */
const kit = {
  bench: {
    tube: {
      massKg: 2,
      lengthMm: 400,
      diameterMm: 90,
      centreOfMassFromFrontMm: 200,
      dovetailLengthMm: 160,
      centreAboveAxisMm: 0,
    },
    finderBesideTubeMm: 80,
    parts: [
      { id: 'finder' as const, name: 'finder', massKg: 0.2, fromFrontMm: 420 },
      { id: 'eyepiece-9' as const, name: '9 mm', massKg: 5, fromFrontMm: 0 },
      { id: 'phone-adapter' as const, name: 'phone', massKg: 0.3, fromFrontMm: 500 },
    ],
    tripod: { footCircleRadiusMm: 450, splayDeg: 24, legMinMm: 700, legMaxMm: 1200 },
  },
};

describe('the figure of the tube in its clamp', () => {
  it('balances where weights times places even out: (2 × 200 + 0.2 × 420) ÷ 2.2', () => {
    expect(wholeTube(kit, []).alongMm).toBeCloseTo(220, 9);
    // With the phone: (484 + 150) ÷ 2.5.
    expect(wholeTube(kit, ['phone-adapter']).alongMm).toBeCloseTo(253.6, 9);
  });

  it('lets the end sink on whose side of the clamp the balance point lies, beyond 10 mm', () => {
    expect(letGo(kit, [], 220).moves).toBe('holds');
    expect(letGo(kit, [], 229).moves).toBe('holds');
    expect(letGo(kit, [], 231).moves).toBe('front');
    expect(letGo(kit, [], 209).moves).toBe('back');
    expect(letGo(kit, ['phone-adapter'], 220).moves).toBe('back');
  });

  it('has a bar about the balance point', () => {
    const { leastMm, mostMm } = barOf(kit);
    expect((leastMm + mostMm) / 2).toBe(220);
  });
});

describe('the figure of the raised tube', () => {
  it('pulls with forward cos a − above sin a over the 10 mm of the clutch', () => {
    // Design, "Balance".
    expect(pullShare({ forwardMm: 8, aboveMm: 0 }, 0)).toBeCloseTo(0.8, 9);
    expect(pullShare({ forwardMm: 8, aboveMm: 0 }, 60)).toBeCloseTo(0.4, 9);
    expect(pullShare({ forwardMm: 0, aboveMm: 16 }, 30)).toBeCloseTo(-0.8, 9);
  });

  it('creeps from where 16 sin a is more than 10, about 39°, and its back sinks', () => {
    expect(creepWhenRaised({ forwardMm: 0, aboveMm: 16 }, 38).moves).toBe('holds');
    expect(creepWhenRaised({ forwardMm: 0, aboveMm: 16 }, 40).moves).toBe('back');
    expect(raisedWords({ forwardMm: 0, aboveMm: 16 }, 60)).toContain('creeps up');
  });
});
