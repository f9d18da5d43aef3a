import { expect, it } from 'vitest';
import { masteryOf } from '@/lib/mastery/mastery';
import { skillStanding } from './skill-standing';

// Three passed at half past one in the morning, London time: the first review is two days later.
const masteredAt = new Date('2026-12-08T01:30:00Z');
const evidence = ['one', 'two', 'three'].map((template) => ({
  skill: 'level' as const,
  template,
  mark: 100,
  passMark: 80,
  gateFailed: false,
  at: masteredAt,
}));
const reviewAsOf = (now: string, timeZone = 'Europe/London') => {
  const at = new Date(now);
  return skillStanding('level', masteryOf(evidence, at), { timeZone, now: at }).review;
};

it('says when the next review is by the calendar, not by hours that are left', () => {
  expect(reviewAsOf('2026-12-08T23:00:00Z')).toBe('in 2 days');
  expect(reviewAsOf('2026-12-09T20:00:00Z')).toBe('tomorrow');
  expect(reviewAsOf('2026-12-10T00:30:00Z')).toBe('today');
});

it('goes by the calendar of the class: the same review is today in Denver', () => {
  expect(reviewAsOf('2026-12-09T20:00:00Z', 'America/Denver')).toBe('today');
});

it('has no review to tell of before mastery', () => {
  const now = new Date('2026-12-08T09:00:00Z');
  const { review } = skillStanding('level', masteryOf([], now), { timeZone: 'Europe/London', now });
  expect(review).toBeNull();
});
