import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endOfLocalDay, instantOfLocalTime, isTimeZone, localTimeOfInstant } from './local-time';

const refused = (reason: string, ...candidates: string[]) => ({ ok: false, reason, candidates });

describe('a local time', () => {
  it('becomes an instant by its zone, summer time included', () => {
    expect(instantOfLocalTime('2026-12-05T19:30', 'Europe/Berlin')).toEqual({
      ok: true,
      instant: '2026-12-05T18:30:00.000Z',
    });
    expect(instantOfLocalTime('2026-07-05T22:30:15', 'Europe/Berlin')).toEqual({
      ok: true,
      instant: '2026-07-05T20:30:15.000Z',
    });
    expect(instantOfLocalTime('2026-07-05T22:30', 'Asia/Kathmandu')).toEqual({
      ok: true,
      instant: '2026-07-05T16:45:00.000Z',
    });
  });

  // Dates of the changes: IANA time zone database. North: forward in March, back in autumn.
  // South: forward in spring (September, October), back in April.
  it.each([
    ['2026-03-08T02:30', 'America/New_York', '2026-03-08T01:30-05:00', '2026-03-08T03:30-04:00'],
    ['2026-03-29T02:00', 'Europe/Berlin', '2026-03-29T01:00+01:00', '2026-03-29T03:00+02:00'],
    ['2026-10-04T02:59', 'Australia/Sydney', '2026-10-04T01:59+10:00', '2026-10-04T03:59+11:00'],
    ['2026-09-27T02:30', 'Pacific/Auckland', '2026-09-27T01:30+12:00', '2026-09-27T03:30+13:00'],
    // Half an hour only.
    ['2026-10-04T02:15', 'Australia/Lord_Howe', '2026-10-04T01:45+10:30', '2026-10-04T02:45+11:00'],
    // A whole day: Samoa changed sides of the date line.
    ['2011-12-30T12:00', 'Pacific/Apia', '2011-12-29T12:00-10:00', '2011-12-31T12:00+14:00'],
  ])('%s in %s was jumped over: both neighbours are offered', (time, zone, before, after) => {
    expect(instantOfLocalTime(time, zone)).toEqual(refused('does-not-exist', before, after));
    for (const candidate of [before, after]) {
      expect(instantOfLocalTime(candidate, zone).ok).toBe(true);
    }
  });

  it.each([
    ['2026-11-01T01:30', 'America/New_York', '-04:00', '-05:00'],
    ['2026-10-25T02:00', 'Europe/Berlin', '+02:00', '+01:00'],
    ['2026-04-05T02:30', 'Australia/Sydney', '+11:00', '+10:00'],
    ['2026-04-05T02:30', 'Pacific/Auckland', '+13:00', '+12:00'],
    ['2026-04-05T01:45', 'Australia/Lord_Howe', '+11:00', '+10:30'],
  ])('%s in %s comes twice: it needs its offset', (time, zone, first, second) => {
    expect(instantOfLocalTime(time, zone)).toEqual(
      refused('exists-twice', time + first, time + second),
    );
    for (const offset of [first, second]) {
      expect(instantOfLocalTime(time + offset, zone)).toEqual({
        ok: true,
        instant: new Date(`${time}:00${offset}`).toISOString(),
      });
    }
  });

  it('the minutes around a change are plain again', () => {
    const ok = (time: string, zone: string) => instantOfLocalTime(time, zone).ok;
    expect(ok('2026-03-29T01:59', 'Europe/Berlin')).toBe(true);
    expect(ok('2026-03-29T03:00', 'Europe/Berlin')).toBe(true);
    expect(ok('2026-10-25T01:59', 'Europe/Berlin')).toBe(true);
    expect(ok('2026-10-25T03:00', 'Europe/Berlin')).toBe(true);
  });

  it('an offset that the zone does not have then is refused, with the right one', () => {
    expect(instantOfLocalTime('2026-12-05T19:30+02:00', 'Europe/Berlin')).toEqual(
      refused('offset-does-not-fit', '2026-12-05T19:30+01:00'),
    );
    expect(instantOfLocalTime('2026-11-01T01:30+00:00', 'America/New_York')).toEqual(
      refused('offset-does-not-fit', '2026-11-01T01:30-04:00', '2026-11-01T01:30-05:00'),
    );
  });

  it.each([
    ['', 'bad-format'],
    ['tonight', 'bad-format'],
    ['2026-12-05', 'bad-format'],
    ['2026-12-05T19:30Z', 'bad-format'],
    ['2026-12-05 19:30', 'bad-format'],
    ['2026-12-05T19:30[Europe/Paris]', 'bad-format'],
    ['2026-02-29T19:30', 'no-such-date'],
    ['2026-12-05T24:30', 'no-such-date'],
    ['2026-13-05T19:30', 'no-such-date'],
    ['1812-12-05T19:30', 'out-of-range'],
    ['2101-01-01T00:00', 'out-of-range'],
  ])('"%s" is refused: %s', (time, reason) => {
    expect(instantOfLocalTime(time, 'Europe/Berlin')).toEqual(refused(reason));
  });

  it.each(['', 'Middle/Earth', '+02:00', 'Europe', 'Europe/Berlin '])(
    'zone "%s" is unknown',
    (zone) => {
      expect(isTimeZone(zone)).toBe(false);
      expect(instantOfLocalTime('2026-12-05T19:30', zone)).toEqual(refused('unknown-zone'));
    },
  );
});

// The clocks of these days as the tz database gives them.
describe('the end of a local day', () => {
  it.each([
    ['midnight', '2026-11-30T09:00:00Z', 'Europe/London', '2026-12-01T00:00:00.000Z'],
    [
      'a day on for the first instant of a day',
      '2026-12-01T00:00:00Z',
      'Europe/London',
      '2026-12-02T00:00:00.000Z',
    ],
    [
      '25 hours on where the clocks go back',
      '2026-10-24T23:00:00Z',
      'Europe/London',
      '2026-10-26T00:00:00.000Z',
    ],
    // São Paulo went from 00:00 to 01:00 on 4 November 2018: that day had no midnight.
    [
      'one o’clock where midnight is jumped over',
      '2018-11-03T12:00:00Z',
      'America/Sao_Paulo',
      '2018-11-04T03:00:00.000Z',
    ],
  ])('is %s', (_, instant, zone, end) => {
    expect(endOfLocalDay(instant, zone)).toBe(end);
  });
});

describe('the local time of an instant', () => {
  it('carries its offset only where the hour comes twice', () => {
    expect(localTimeOfInstant('2026-11-01T06:30:00Z', 'America/New_York')).toBe(
      '2026-11-01T01:30-05:00',
    );
    expect(localTimeOfInstant('2026-11-01T07:30:00Z', 'America/New_York')).toBe('2026-11-01T02:30');
    expect(localTimeOfInstant('2026-12-05T18:30:09.6Z', 'Europe/Berlin')).toBe(
      '2026-12-05T19:30:10',
    );
  });

  it('is read back as the same instant, through every change of the clocks', () => {
    const zones = ['America/New_York', 'Europe/Berlin', 'Australia/Lord_Howe', 'America/Santiago'];
    fc.assert(
      fc.property(
        fc.integer({ min: Date.UTC(2000, 0) / 1000, max: Date.UTC(2060, 0) / 1000 }),
        fc.constantFrom(...zones),
        (seconds, zone) => {
          const instant = new Date(seconds * 1000).toISOString();
          expect(instantOfLocalTime(localTimeOfInstant(instant, zone), zone)).toEqual({
            ok: true,
            instant,
          });
        },
      ),
    );
    for (let minute = 0; minute < 300; minute += 5) {
      const instant = new Date(Date.UTC(2026, 3, 4, 13, minute)).toISOString();
      const local = localTimeOfInstant(instant, 'Australia/Lord_Howe');
      expect(instantOfLocalTime(local, 'Australia/Lord_Howe')).toEqual({ ok: true, instant });
    }
  });
});
