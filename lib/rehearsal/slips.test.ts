import { describe, expect, it } from 'vitest';
import { clockAndPlaceSlip, kickThatBites } from './slips';

describe('what was entered against what is true', () => {
  const actual = { instantMs: Date.UTC(2026, 7, 14, 20, 30), latitudeDeg: 50.1, longitudeDeg: 8.7 };

  it('is an hour where summer time was forgotten, and the clock is late by it', () => {
    const believed = { ...actual, instantMs: Date.UTC(2026, 7, 14, 21, 30) };
    expect(clockAndPlaceSlip(believed, actual)).toEqual({
      clockSeconds: 3600,
      latitudeDeg: 0,
      longitudeDeg: 0,
    });
  });

  it('is twice the longitude where its side was exchanged', () => {
    const believed = { ...actual, longitudeDeg: -8.7 };
    expect(clockAndPlaceSlip(believed, actual).longitudeDeg).toBeCloseTo(-17.4, 9);
  });

  it('goes the short way round between two longitudes', () => {
    const east = { ...actual, longitudeDeg: 179 };
    const west = { ...actual, longitudeDeg: -179 };
    expect(clockAndPlaceSlip(west, east).longitudeDeg).toBeCloseTo(2, 9);
  });
});

describe('a kick', () => {
  const kick = { afterConfirm: 2, tiltDeg: 1, risesTowardsDeg: 90, azimuthDeg: 2 };

  it('bites where a leg was not locked or the legs were not spread, and not otherwise', () => {
    const bites = (legsSpread: boolean, legLocksFirm: boolean) =>
      kickThatBites(kick, { legsSpread, legLocksFirm });
    expect(bites(true, true)).toBeNull();
    expect(bites(true, false)).toEqual(kick);
    expect(bites(false, true)).toEqual(kick);
  });
});
