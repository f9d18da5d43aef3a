import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { skyTurnDeg, turnBetweenDeg } from '@/tests/support/sky-turn';
import { skyFrameAt } from '../sky/frame-at';
import { believedInstant } from './believed-instant';
import { believedSky, rightSettings, type EnteredSettings } from './entered-settings';

const place = { latitudeDeg: 50.11, longitudeDeg: 8.68, elevationM: 0 };
const instant = '2026-08-14T20:30:00.000Z';
const right = rightSettings(instant, place, 'Europe/Berlin');
const truth = skyFrameAt({ instant, place });

/** How far the believed sky is turned from the true one when something of it is entered wrongly. */
function turnOf(slip: Partial<EnteredSettings>): number {
  const believed = believedSky({ ...right, ...slip });
  if (!believed.ok) throw new Error(believed.reason);
  return turnBetweenDeg(believed.frame, truth);
}

describe('what a careful person enters', () => {
  it('is the wall clock, the zone in winter and the summer hour by itself', () => {
    expect(right).toEqual({
      localTime: '2026-08-14T22:30',
      zoneOffsetMinutes: 60,
      summerTime: true,
      summerTimeMinutes: 60,
      latitudeDeg: 50.11,
      longitudeDeg: 8.68,
    });
    expect(turnOf({})).toBe(0);
  });

  it.each([
    ['2026-01-10T09:00:00.000Z', 'Australia/Adelaide', 570, true],
    ['2026-07-10T09:00:00.000Z', 'Australia/Adelaide', 570, false],
    ['2026-07-10T02:00:00.000Z', 'America/Toronto', -300, true],
    ['2026-07-10T02:00:00.000Z', 'Asia/Kathmandu', 345, false],
    ['2026-07-10T22:00:00.000Z', 'Europe/Dublin', 0, true],
  ])('at %s in %s reads %i minutes and summer time %s', (at, zone, minutes, summer) => {
    const entered = rightSettings(at, place, zone);
    expect(entered).toMatchObject({ zoneOffsetMinutes: minutes, summerTime: summer });
    expect(believedInstant(entered)).toEqual({ ok: true, instant: at });
  });

  // IANA time zone database: Lord Howe Island stands at +10:30 and goes to +11 in summer; India knows no
  // summer time; Troll station goes from 0 to +2.
  it.each([
    ['2026-12-20T10:00:00.000Z', 'Australia/Lord_Howe', 630, true, 30],
    ['2026-07-20T10:00:00.000Z', 'Australia/Lord_Howe', 630, false, 30],
    ['2026-07-20T10:00:00.000Z', 'Asia/Kolkata', 330, false, 60],
    ['2026-07-20T22:00:00.000Z', 'Antarctica/Troll', 0, true, 120],
  ])('at %s in %s: %i minutes, summer time %s, which is %i minutes', (...row) => {
    const [at, zone, zoneOffsetMinutes, summerTime, summerTimeMinutes] = row;
    const entered = rightSettings(at, place, zone);
    expect(entered).toMatchObject({ zoneOffsetMinutes, summerTime, summerTimeMinutes });
    expect(believedInstant(entered)).toEqual({ ok: true, instant: at });
  });

  it('leads back to the instant, also in the hour that comes twice', () => {
    for (const at of ['2026-10-25T00:30:00.000Z', '2026-10-25T01:30:00.000Z']) {
      expect(believedInstant(rightSettings(at, place, 'Europe/Berlin'))).toEqual({
        ok: true,
        instant: at,
      });
    }
  });
});

describe('a slip turns the whole sky', () => {
  // Design, "Clock and place"; Meeus ch. 12: 15.041° an hour, a year has one turn more than days.
  it('by 15.04° for a forgotten summer hour', () => {
    expect(turnOf({ summerTime: false })).toBeCloseTo(15.041, 2);
    expect(skyTurnDeg(3600)).toBeCloseTo(15.041, 3);
  });

  it('by 0.986° for a date off by one', () => {
    expect(turnOf({ localTime: '2026-08-15T22:30' })).toBeCloseTo(0.9856, 2);
    expect(skyTurnDeg(86_400) - 360).toBeCloseTo(0.9856, 3);
  });

  it('by 0.25° a minute', () => {
    expect(turnOf({ localTime: '2026-08-14T22:31' })).toBeCloseTo(0.2507, 3);
  });

  it('by the zone’s hours', () => {
    expect(turnOf({ zoneOffsetMinutes: -60 })).toBeCloseTo(30.082, 2);
  });

  it('by twice the longitude when its sign is swapped', () => {
    expect(turnOf({ longitudeDeg: -8.68 })).toBeCloseTo(17.36, 3);
  });

  it('by the error in latitude', () => {
    expect(turnOf({ latitudeDeg: 51.11 })).toBeCloseTo(1, 3);
  });
});

describe('a wall clock', () => {
  it('that is none is refused', () => {
    const made = (localTime: string) => believedInstant({ ...right, localTime });
    expect(made('14.8.2026 22:30')).toEqual({ ok: false, reason: 'bad-format' });
    expect(made('2026-02-30T22:30')).toEqual({ ok: false, reason: 'no-such-date' });
    expect(made('2026-02-28T24:30')).toEqual({ ok: false, reason: 'no-such-date' });
    expect(made('2026-02-28T23:30:15').ok).toBe(true);
  });

  it('read an hour apart is an hour apart', () => {
    fc.assert(
      fc.property(fc.integer({ min: -720, max: 840 }), (zoneOffsetMinutes) => {
        const [winter, summer] = [false, true].map((summerTime) =>
          believedInstant({ ...right, zoneOffsetMinutes, summerTime }),
        );
        if (winter?.ok !== true || summer?.ok !== true) throw new Error('not an instant');
        expect(Date.parse(winter.instant) - Date.parse(summer.instant)).toBe(3_600_000);
      }),
    );
  });
});
