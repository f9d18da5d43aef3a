import { expect, it } from 'vitest';
import { endsWork } from './ends-work';

const now = new Date('2026-12-05T12:00:00Z');
const past = '2026-12-05T11:59:00.000Z';
const published = (dueAt: string | null) => ({ state: 'published' as const, policy: { dueAt } });

it('asks before a published due time moves into the past', () => {
  expect(endsWork(published('2026-12-06T12:00:00Z'), past, now)).toBe(true);
  expect(endsWork(published(null), past, now)).toBe(true);
});

it('does not ask of a time to come, of one that passed by itself, or of a draft', () => {
  expect(endsWork(published(past), '2026-12-05T12:01:00.000Z', now)).toBe(false);
  expect(endsWork(published('2026-12-05T11:59:00Z'), past, now)).toBe(false);
  expect(endsWork({ state: 'draft', policy: { dueAt: null } }, past, now)).toBe(false);
});
