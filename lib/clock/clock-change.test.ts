import { describe, expect, it } from 'vitest';
import { nextClockChange } from './clock-change';

// Dates and hours of the changes: IANA time zone database.
describe('the next change of the clocks', () => {
  it.each([
    ['2026-01-10T12:00:00Z', 'Europe/Berlin', '2026-03-29T01:00:00.000Z', 60, 120],
    ['2026-06-10T12:00:00Z', 'Europe/Berlin', '2026-10-25T01:00:00.000Z', 120, 60],
    ['2026-01-10T12:00:00Z', 'America/New_York', '2026-03-08T07:00:00.000Z', -300, -240],
    ['2026-06-10T12:00:00Z', 'Pacific/Auckland', '2026-09-26T14:00:00.000Z', 720, 780],
    ['2026-01-10T12:00:00Z', 'Australia/Lord_Howe', '2026-04-04T15:00:00.000Z', 660, 630],
  ])('after %s in %s is at %s', (after, zone, instant, beforeMinutes, afterMinutes) => {
    expect(nextClockChange(after, zone)).toEqual({ instant, beforeMinutes, afterMinutes });
  });

  it('never comes where there is no summer time', () => {
    expect(nextClockChange('2026-01-10T12:00:00Z', 'Asia/Kathmandu')).toBeNull();
  });
});
