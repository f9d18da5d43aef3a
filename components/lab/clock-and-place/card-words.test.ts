import { describe, expect, it } from 'vitest';
import { clockTask, manyClockTasks } from '@/tests/support/clock-tasks';
import type { ClockCard } from '@/lib/variants/bench/clock-and-place/clock-card';
import { answerWhenAsked, cardInWords, cardLines, spokenTime } from './card-words';
import { clockHints } from './clock-hints';
import { hoursInWords, missInWords, offsetText } from './clock-words';

const card: ClockCard = {
  placeName: 'the mill pond',
  date: { year: 2026, month: 12, day: 5, style: 'in-words' },
  time: { hour: 0, minute: 20, style: 'twelve-hour' },
  watch: null,
  zone: { minutes: -210, style: 'ahead-or-behind' },
  summer: { style: 'said', on: true },
  place: {
    latitudeArcmin: 50 * 60 + 7,
    longitudeArcmin: -(8 * 60 + 41),
    style: 'letters',
    longitudeFirst: false,
  },
  smudged: [],
};
const written = (changes: Partial<ClockCard>): Record<string, string> => {
  const variant = { ...clockTask('words', 'enter-the-card'), card: { ...card, ...changes } };
  return Object.fromEntries(
    cardLines(variant).map(({ label, parts }) => [
      label,
      parts.map((one) => one ?? '?').join(', '),
    ]),
  );
};

describe('a card', () => {
  it('is written as people write', () => {
    expect(written({})).toEqual({
      Date: 'Saturday 5 December 2026',
      Time: '12:20 a.m.',
      'Clocks here': 'in winter 3 hours 30 minutes behind UTC',
      'Summer time': 'in force that day',
      Where: '50° 07′ N, 8° 41′ W',
    });
  });

  it('has twelve o’clock at noon and at midnight, and the order of day and month beside it', () => {
    const time = (hour: number) => written({ time: { ...card.time, hour, minute: 5 } })['Time'];
    expect([0, 1, 11, 12, 13, 23].map(time)).toEqual([
      '12:05 a.m.',
      '1:05 a.m.',
      '11:05 a.m.',
      '12:05 p.m.',
      '1:05 p.m.',
      '11:05 p.m.',
    ]);
    const date = (style: ClockCard['date']['style']) =>
      written({ date: { ...card.date, style } })['Date'];
    expect(date('day-first')).toBe('5/12/2026, the day first');
    expect(date('month-first')).toBe('12/5/2026, the month first');
  });

  it.each([
    [21, 40, 'twenty to ten in the evening'],
    [22, 30, 'half past ten at night'],
    [23, 45, 'a quarter to twelve at night'],
    [0, 5, 'five past twelve at night'],
    [12, 0, 'twelve o’clock in the afternoon'],
    [6, 35, 'twenty-five to seven in the morning'],
  ])('%i:%i is spoken "%s"', (hour, minute, text) => {
    expect(spokenTime(hour, minute)).toBe(text);
  });

  it('writes a place with letters, signs or decimals, either first', () => {
    const place = (changes: Partial<ClockCard['place']>) =>
      written({ place: { ...card.place, ...changes } })['Where'];
    expect(place({ style: 'signs' })).toBe(
      'latitude +50° 07′ (N is +), longitude −8° 41′ (E is +)',
    );
    expect(place({ style: 'decimals', longitudeFirst: true })).toBe('8.68° W, 50.12° N');
  });

  it('shows nothing of what the dew took', () => {
    const lines = written({ smudged: ['date', 'longitude', 'zone'] });
    expect(lines).toMatchObject({ Date: '?', 'Clocks here': '?', Where: '50° 07′ N, ?' });
  });

  it('says what the watch is ahead of UTC, all told', () => {
    expect(written({ watch: { aheadMinutes: 120 } })['My watch']).toBe(
      'still runs on home time: all told 2 hours ahead of UTC',
    );
  });
});

it('every task has a card, an answer when asked and three hints, with nothing left undefined', () => {
  for (const variant of manyClockTasks(20)) {
    const texts = [cardInWords(variant), answerWhenAsked(variant), ...clockHints(variant)];
    expect(texts.join(' ')).not.toMatch(/undefined|null|NaN/);
    expect(clockHints(variant)).toHaveLength(3);
  }
});

it('angles are told in degrees and in fists, offsets with their sign', () => {
  expect(missInWords(15.04)).toBe('15.0°, about one and a half fists');
  expect(missInWords(0.98)).toBe('1.0°');
  expect([offsetText(345), offsetText(-300), offsetText(0)]).toEqual([
    'UTC+5:45',
    'UTC−5:00',
    'UTC+0:00',
  ]);
  expect(hoursInWords(60)).toBe('1 hour');
});
