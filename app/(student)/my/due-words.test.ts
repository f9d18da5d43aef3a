import { describe, expect, it } from 'vitest';
import { dayInWords, dueInWords, momentInWords } from './due-words';

const now = new Date('2026-12-09T20:00:00Z');

describe('a due time in words', () => {
  it('is said on the class’s clock, with the zone named', () => {
    expect(dueInWords('2026-12-11T18:00:00Z', 'Europe/London', now)).toBe(
      'Due in 2 days, Friday 11 December, 18:00 (United Kingdom time)',
    );
    expect(dueInWords('2026-12-11T18:00:00Z', 'America/Denver', now)).toBe(
      'Due in 2 days, Friday 11 December, 11:00 (Mountain time)',
    );
  });

  it('counts days by the zone’s calendar: the same instant is today here and tomorrow there', () => {
    const instant = '2026-12-10T01:30:00Z';
    expect(momentInWords(instant, 'America/Denver', now).away).toBe('today');
    expect(momentInWords(instant, 'Europe/London', now).away).toBe('tomorrow');
  });

  it('says when it is over', () => {
    expect(dueInWords('2026-12-08T18:00:00Z', 'Europe/London', now)).toBe(
      'Was due yesterday, Tuesday 8 December, 18:00 (United Kingdom time)',
    );
  });

  it('names the year when it is another', () => {
    expect(momentInWords('2027-01-08T18:00:00Z', 'Europe/London', now).date).toBe(
      'Friday 8 January 2027, 18:00',
    );
  });

  it('says so when there is none', () => {
    expect(dueInWords(null, 'Europe/London', now)).toBe('No due time');
  });

  it('leaves the hour out where it does not matter', () => {
    expect(dayInWords(new Date('2026-12-11T18:00:00Z'), 'Europe/London', now)).toBe(
      'Friday 11 December (in 2 days)',
    );
  });
});
