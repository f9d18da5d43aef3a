import { describe, expect, it } from 'vitest';
import { slipsHandedOn, type EveningEvents, type HandedOn } from './handed-on';
import { noSlips } from './slips';
import { undoesTheRun } from './stages';

const wellDone: HandedOn = {
  tripod: { legsSpread: true, legLocksFirm: true },
  tilt: { tiltDeg: 0, risesTowardsDeg: 0 },
  tube: { clamped: { massKg: 3, forwardMm: 1, aboveMm: 0 }, holdingTorqueNm: 0.3 },
  dot: { rightArcmin: 0, upArcmin: 0 },
  power: { resetsAtSlew: null, hours: 5 },
  clockAndPlace: { clockSeconds: 0, latitudeDeg: 0, longitudeDeg: 0 },
  clutchesLocked: true,
};
const events: EveningEvents = {
  kick: { afterConfirm: 2, tiltDeg: 1, risesTowardsDeg: 40, azimuthDeg: 0.5 },
  ifNotLocked: { afterConfirm: 1, azimuthDeg: 2, altitudeDeg: -1 },
};
const handedOn = (changes: Partial<HandedOn>) =>
  slipsHandedOn({ ...wellDone, ...changes }, events, [45, 50]);

describe('what the stages hand on', () => {
  it('is nothing where all was done well, whatever the evening holds ready', () => {
    expect(handedOn({})).toEqual({ ok: true, slips: noSlips });
  });

  it('is what it is: tilt, dot and clock at their size', () => {
    const slips = {
      tilt: { tiltDeg: 1.2, risesTowardsDeg: 200 },
      dot: { rightArcmin: -30, upArcmin: 4 },
      clockAndPlace: { clockSeconds: 3600, latitudeDeg: 0, longitudeDeg: 0 },
    };
    expect(handedOn(slips)).toMatchObject({ ok: true, slips });
  });

  it('is a creep between the stars and after them where the tube is out of balance', () => {
    // 0.8825 N m level, 0.624 at 45°: more than twice what the clutch holds.
    const tube = { clamped: { massKg: 3, forwardMm: 30, aboveMm: 0 }, holdingTorqueNm: 0.3 };
    const made = handedOn({ tube });
    if (!made.ok) throw new Error(made.reason);
    // Half a degree a minute for 1.08 times what it holds too much, three minutes.
    expect(made.slips.creep.betweenStarsDeg).toBeCloseTo(-1.62, 2);
    expect(made.slips.creep.afterSecondDeg).toBeLessThan(0);
  });

  it('is a kick only where a leg gives, and a slipping clutch only where it was not locked', () => {
    expect(handedOn({ tripod: { legsSpread: true, legLocksFirm: false } })).toMatchObject({
      slips: { kick: events.kick },
    });
    expect(handedOn({ clutchesLocked: false })).toMatchObject({
      slips: { clutch: events.ifNotLocked },
    });
  });

  it('is no evening at all with a dark computer, a date that is none, or no slew that it survives', () => {
    expect(handedOn({ power: null })).toEqual({ ok: false, reason: 'dark' });
    expect(handedOn({ clockAndPlace: null })).toEqual({ ok: false, reason: 'not-taken' });
    expect(handedOn({ power: { resetsAtSlew: 1, hours: 5 } })).toEqual({
      ok: false,
      reason: 'resets-at-once',
    });
    expect(handedOn({ power: { resetsAtSlew: 3, hours: 5 } })).toMatchObject({
      slips: { resetsAtSlew: 3 },
    });
  });
});

describe('going back', () => {
  it('makes an alignment begin again, but not from packing up or what is steered anyway', () => {
    expect(undoesTheRun('level')).toBe(true);
    expect(undoesTheRun('clock-and-place')).toBe(true);
    expect(undoesTheRun('alignment-run')).toBe(false);
    expect(undoesTheRun('pack-up')).toBe(false);
  });
});
