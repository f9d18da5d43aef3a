import { act, cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LiveBoard } from './live-board';
import type { LiveBoardView, LiveTileView } from './live-message';

/** The browser's side of a stream, played by hand. */
class FakeStream extends EventTarget {
  static readonly CLOSED = 2;
  static opened: FakeStream[] = [];
  readyState = 1;
  constructor(readonly address: string) {
    super();
    FakeStream.opened.push(this);
  }
  close(): void {
    this.readyState = FakeStream.CLOSED;
  }
  says(name: string, data: object): void {
    act(() => {
      this.dispatchEvent(new MessageEvent(name, { data: JSON.stringify(data) }));
    });
  }
}

const tile = (change: Partial<LiveTileView> = {}): LiveTileView => ({
  cardNumber: 5,
  label: 'Card 5',
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
const board = (...tiles: LiveTileView[]): LiveBoardView => ({ tiles, leftOut: 0 });
const at = (second: number): string => new Date(Date.UTC(2026, 10, 30, 9, 0, second)).toISOString();
const stuck = tile({
  state: 'needs-help',
  need: { text: 'No new step', sinceAt: new Date(Date.UTC(2026, 10, 30, 8, 54)).toISOString() },
});

beforeEach(() => {
  vi.useFakeTimers();
  FakeStream.opened = [];
  vi.stubGlobal('EventSource', FakeStream);
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function shown(order: 'need' | 'card' = 'need', first: LiveBoardView = board(tile())) {
  const { container } = render(
    <LiveBoard
      streamHref="/stream"
      refreshHref="/live"
      first={{ at: at(0), board: first }}
      timeZone="Europe/London"
      large={false}
      order={order}
    />,
  );
  const stream = (): FakeStream => {
    const last = FakeStream.opened.at(-1);
    if (last === undefined) throw new Error('no stream was opened');
    return last;
  };
  return { stream, text: () => container.textContent };
}

test('shows a new board as it arrives, says that it is live, and calls out who may need the teacher', () => {
  const { stream, text } = shown();
  expect(text()).toContain('As of 09:00:00');
  stream().says('board', { at: at(2), board: board(stuck) });
  expect(text()).toContain('Live · last heard 09:00:02');
  expect(text()).toContain('No new step for 6 minutes');
  expect(screen.getByRole('status').textContent).toBe('Card 5: no new step.');
  stream().says('heard', { at: at(12) });
  expect(text()).toContain('last heard 09:00:12');
});

test('counts the minutes on by itself while nothing changes', () => {
  const { stream, text } = shown();
  stream().says('board', { at: at(0), board: board(stuck) });
  for (let tens = 1; tens <= 6; tens += 1) {
    act(() => {
      vi.advanceTimersByTime(10_000);
    });
    stream().says('heard', { at: at(10 * tens) });
  }
  expect(text()).toContain('No new step for 7 minutes');
});

test('says when the line is lost, and tries again where the browser will not', () => {
  const { stream, text } = shown();
  stream().says('board', { at: at(2), board: board(tile()) });
  stream().readyState = FakeStream.CLOSED;
  act(() => {
    stream().dispatchEvent(new Event('error'));
  });
  expect(text()).toContain('Connection lost, trying again · last heard 09:00:02');
  act(() => {
    vi.advanceTimersByTime(5000);
  });
  expect(FakeStream.opened).toHaveLength(2);
  stream().says('board', { at: at(9), board: board(tile()) });
  expect(text()).toContain('Live · last heard 09:00:09');
});

test('finds a line that broke without a word by its silence', () => {
  const { stream, text } = shown();
  stream().says('board', { at: at(2), board: board(tile()) });
  act(() => {
    vi.advanceTimersByTime(40_000);
  });
  expect(FakeStream.opened).toHaveLength(2);
  expect(text()).toContain('Connection lost, trying again');
});

test('stands still and says so once it was shown out', () => {
  const { stream, text } = shown();
  stream().says('signed-out', {});
  expect(screen.getByRole('alert').textContent).toContain('You are signed out');
  act(() => {
    vi.advanceTimersByTime(120_000);
  });
  expect(FakeStream.opened).toHaveLength(1);
  expect(text()).toContain('Level');
});

test('who is not here stands apart by need, and in place by card', () => {
  const three = board(
    tile({ cardNumber: 1, label: 'Ann', state: 'away', where: 'Signed out' }),
    tile({ cardNumber: 2, label: 'Ben' }),
    tile({ cardNumber: 3, label: 'Cy', state: 'away', where: null }),
  );
  const texts = (list: HTMLElement) =>
    within(list)
      .getAllByRole('listitem')
      .map(({ textContent }) => textContent);
  shown('need', three);
  const apart = screen.getByRole('region', { name: 'Not here' });
  expect(texts(apart)).toEqual(['Ann · signed out', 'Cy']);
  expect(texts(screen.getByRole('list', { name: 'In the lesson' }))).toEqual(['BenWorkingLevel']);
  cleanup();
  shown('card', three);
  expect(screen.queryByRole('region', { name: 'Not here' })).toBeNull();
  expect(screen.getByRole('list', { name: 'In the lesson' }).children).toHaveLength(3);
});
