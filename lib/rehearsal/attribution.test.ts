import { describe, expect, it } from 'vitest';
import { carefulHand, faultlessEvening, randomRehearsals } from '@/tests/support/rehearsed-evening';
import { attributionOf, type Attribution } from './attribution';
import type { GoTo } from './rehearsed-evening';
import { noSlips } from './slips';

const aldebaran = 21421;
const third: GoTo = { hip: aldebaran, atMs: 480_000, confirmsBefore: 2 };

function traced(attribution: Attribution): Extract<Attribution, { ok: true }> {
  if (!attribution.ok) throw new Error(attribution.reason);
  return attribution;
}

describe('the attribution of a miss', () => {
  // The bar, and the design's "Attribution".
  it('sums to the miss on 1,000 random evenings, and under a tenth of it is together when slips are small', () => {
    let misses = 0;
    let refused = 0;
    for (const { evening, goTo } of randomRehearsals('a thousand evenings')) {
      const attribution = attributionOf(evening, goTo);
      // A kick and a creep of nearly 1° each between the stars, and a computer says no to the pair.
      if (!attribution.ok && attribution.reason === 'refused') {
        refused += 1;
        continue;
      }
      const { missArcmin, shares, togetherArcmin } = traced(attribution);
      const sum = shares.reduce((total, { arcmin }) => total + arcmin, togetherArcmin);
      expect(Math.abs(sum - missArcmin)).toBeLessThanOrEqual(1e-9 * missArcmin);
      expect(Math.abs(togetherArcmin)).toBeLessThan(0.1 * missArcmin);
      misses += 1;
      if (misses === 1000) break;
    }
    expect(refused).toBeLessThan(misses / 4);
  }, 120_000);

  it('does the same for first slews, before there is an alignment', () => {
    for (const { evening, firstSlew } of randomRehearsals('first slews', 100)) {
      const { missArcmin, shares, togetherArcmin } = traced(attributionOf(evening, firstSlew));
      const sum = shares.reduce((total, { arcmin }) => total + arcmin, togetherArcmin);
      expect(Math.abs(sum - missArcmin)).toBeLessThanOrEqual(1e-9 * missArcmin);
      expect(Math.abs(togetherArcmin)).toBeLessThan(0.1 * missArcmin);
      // What happens later has no part in it.
      for (const { cause } of shares) {
        expect(['creep', 'kick', 'first-centring', 'final-approach']).not.toContain(cause);
      }
    }
  });

  it('gives a miss with one cause wholly to it', () => {
    const evening = faultlessEvening('solved-zero', {
      slips: { ...noSlips, creep: { betweenStarsDeg: 0, afterSecondDeg: -0.4 } },
    });
    const { shares, missArcmin, togetherArcmin } = traced(attributionOf(evening, third));
    expect(missArcmin).toBeCloseTo(24, 6);
    expect(shares[0]?.cause).toBe('creep');
    expect(shares[0]?.arcmin).toBeCloseTo(24, 6);
    expect(Math.abs(togetherArcmin)).toBeLessThan(1e-6);
  });

  it('tells the larger of two causes from the smaller, and one that works against both', () => {
    const evening = faultlessEvening('solved-zero', {
      slips: {
        ...noSlips,
        creep: { betweenStarsDeg: 0, afterSecondDeg: -0.5 },
        clutch: { afterConfirm: 2, azimuthDeg: 0, altitudeDeg: 0.1 },
      },
    });
    // 30′ down by the creep, 6′ up by the clutch.
    const { shares, missArcmin, miss } = traced(attributionOf(evening, third));
    expect(missArcmin).toBeCloseTo(24, 4);
    expect(miss.upArcmin).toBeLessThan(0);
    expect(
      shares
        .filter(({ arcmin }) => Math.abs(arcmin) > 0.01)
        .map(({ cause, arcmin }) => [cause, Math.round(arcmin * 100) / 100]),
    ).toEqual([
      ['creep', 30],
      ['clutch', -6],
    ]);
  });

  it('names what would have made a computer agree that refused', () => {
    // In Ottawa a summer-time hour would be a base that leans by 10.5°.
    const evening = faultlessEvening('solved-zero', {
      slips: {
        ...noSlips,
        tilt: { tiltDeg: 1, risesTowardsDeg: 90 },
        clockAndPlace: { ...noSlips.clockAndPlace, clockSeconds: 3600 },
      },
    });
    expect(attributionOf(evening, third)).toEqual({
      ok: false,
      reason: 'refused',
      outcome: 'base-on-its-side',
      mends: ['clock'],
    });
  });

  it('says of a reset after the alignment that the computer has forgotten it', () => {
    const evening = faultlessEvening('solved-zero', {
      slips: { ...noSlips, resetsAtSlew: 3 },
    });
    expect(attributionOf(evening, third)).toEqual({ ok: false, reason: 'forgotten' });
  });

  it('has no shares where nothing is missed, and no answer for a star of no catalogue', () => {
    const { shares, missArcmin } = traced(attributionOf(faultlessEvening(), third));
    expect(missArcmin).toBeLessThan(1e-6);
    expect(shares.every(({ arcmin }) => Math.abs(arcmin) < 1e-6)).toBe(true);
    const nowhere = { ...third, hip: 999_999_999 };
    expect(attributionOf(faultlessEvening(), nowhere)).toEqual({
      ok: false,
      reason: 'not-in-this-sky',
    });
  });

  it('does not count what happened before the start position was set again', () => {
    const slips = {
      ...noSlips,
      clutch: { afterConfirm: 1, azimuthDeg: 2, altitudeDeg: 1 },
    };
    const [one, other] = [carefulHand(24608, 1), carefulHand(677, 2)];
    const begunAgain = faultlessEvening('solved-zero', {
      slips,
      startedAfterConfirms: 1,
      hands: [one, other],
    });
    const goTo = { ...third, atMs: 700_000, confirmsBefore: 3 };
    expect(traced(attributionOf(begunAgain, goTo)).missArcmin).toBeLessThan(1e-6);
    const first = { hip: 24608, atMs: 240_000, confirmsBefore: 1 };
    expect(traced(attributionOf(begunAgain, first)).missArcmin).toBeLessThan(1e-6);
    const carriedOn = { ...begunAgain, startedAfterConfirms: 0, hands: [] };
    expect(traced(attributionOf(carriedOn, first)).shares[0]?.cause).toBe('clutch');
  });
});
