import { expect, test } from 'vitest';
import { newCalls } from './live-changes';
import type { LiveBoardView, LiveTileView } from './live-message';

const tile = (cardNumber: number, change: Partial<LiveTileView> = {}): LiveTileView => ({
  cardNumber,
  label: `Card ${String(cardNumber)}`,
  href: null,
  state: 'working',
  where: 'Level',
  detail: null,
  sinceAt: null,
  need: null,
  gates: null,
  last: null,
  ...change,
});
const stuck: Partial<LiveTileView> = {
  state: 'needs-help',
  need: { text: 'No new step', sinceAt: '2026-11-30T09:00:00.000Z' },
};
const board = (...tiles: LiveTileView[]): LiveBoardView => ({ tiles, leftOut: 0 });

test('who may need the teacher now and did not before is called out', () => {
  const before = board(tile(1), tile(2, stuck), tile(3));
  const after = board(tile(3, stuck), tile(2, stuck), tile(1));
  expect(newCalls(before, after)).toBe('Card 3: no new step.');
});

test('a failed safety gate is called out by its name', () => {
  const gates = { text: 'the tube fell', href: null };
  expect(newCalls(board(tile(1)), board(tile(1, { gates })))).toBe(
    'Card 1: a safety gate failed: the tube fell.',
  );
});

test('going on, handing in, being helped and leaving are not', () => {
  const before = board(tile(1), tile(2, stuck), tile(3, stuck));
  const after = board(tile(1, { state: 'done', where: 'Power' }), tile(2));
  expect(newCalls(before, after)).toBe('');
});
