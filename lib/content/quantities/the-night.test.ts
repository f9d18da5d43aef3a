import { describe, expect, it } from 'vitest';
import { reckoningFrom } from '../reckoning';
import { theNightQuantities } from './the-night';

const { number, text } = reckoningFrom(theNightQuantities, new Map(), []);

/** Minutes after midnight of a clock as the lesson shows it. */
const minutesOf = (clock: string): number => {
  const [hours, minutes] = clock.split(':').map(Number);
  return (hours ?? Number.NaN) * 60 + (minutes ?? Number.NaN);
};

describe('the minutes of twilight', () => {
  it.each([
    ['52 2027-03-05'],
    ['52 2026-12-05'],
    ['0 2027-03-20'],
    ['35 2027-09-23'],
    ['20 2027-06-21'],
    ['57 2027-01-23'],
  ])('at %s are what lies between the two clock times that are shown', (night) => {
    const shown = minutesOf(text(`dark-clock ${night}`)) - minutesOf(text(`sunset-clock ${night}`));
    expect(number(`twilight-minutes ${night}`)).toBe(shown);
  });

  it('have no end where the Sun does not get 18° down', () => {
    expect(number('twilight-minutes 52 2027-06-21')).toBe(Number.POSITIVE_INFINITY);
  });
});
