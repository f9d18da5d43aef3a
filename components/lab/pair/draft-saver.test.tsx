import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { PairDraft } from '@/lib/grading/pair-submission';
import { emptyPairDraft } from '@/lib/grading/pair-submission';
import type { SaveDraft } from './draft-saver';
import { DraftSaver } from './draft-saver';
import { keptDraft } from './kept-draft';
import { draftLeftBehind } from './use-draft-saving';

const draftWith = (...hips: number[]): PairDraft => ({
  ...emptyPairDraft,
  picks: hips.map((hip) => ({ hip, lookAlike: null })),
});

beforeEach(() => {
  vi.useFakeTimers();
  window.sessionStorage.clear();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('saving a draft', () => {
  test('sends the latest of several quick changes, once, with the next number', async () => {
    const save = vi.fn<SaveDraft>(({ sequence }) =>
      Promise.resolve({ ok: true, value: { sequence } }),
    );
    const saver = new DraftSaver({ attemptKey: 'a', nextSequence: 4, save });
    saver.push(draftWith(1));
    saver.push(draftWith(1, 2));
    await vi.runAllTimersAsync();
    expect(save).toHaveBeenCalledTimes(1);
    expect(save).toHaveBeenCalledWith({ sequence: 4, draft: draftWith(1, 2) });
    expect(saver.state()).toEqual({ state: 'saved' });
    saver.push(draftWith(1, 3));
    await vi.runAllTimersAsync();
    expect(save).toHaveBeenLastCalledWith({ sequence: 5, draft: draftWith(1, 3) });
    expect(keptDraft('a')).toBeNull();
  });

  test('without a connection keeps it on the device, says so, and sends it when it can', async () => {
    const save = vi.fn<SaveDraft>(({ sequence }) =>
      Promise.resolve({ ok: true, value: { sequence } }),
    );
    save.mockRejectedValueOnce(new TypeError('Failed to fetch'));
    const saver = new DraftSaver({ attemptKey: 'b', nextSequence: 1, save });
    saver.push(draftWith(7));
    await vi.advanceTimersByTimeAsync(1000);
    expect(saver.state()).toEqual({ state: 'kept' });
    expect(saver.unsaved()).toBe(true);
    expect(keptDraft('b')).toEqual({ sequence: 1, draft: draftWith(7) });
    await vi.advanceTimersByTimeAsync(6000);
    expect(save).toHaveBeenCalledTimes(2);
    expect(saver.state()).toEqual({ state: 'saved' });
    expect(saver.unsaved()).toBe(false);
  });

  test('a change made while another is on its way follows it', async () => {
    const save = vi.fn<SaveDraft>(
      ({ sequence }) =>
        new Promise((resolve) => {
          setTimeout(() => {
            resolve({ ok: true, value: { sequence } });
          }, 2000);
        }),
    );
    const saver = new DraftSaver({ attemptKey: 'c', nextSequence: 1, save });
    saver.push(draftWith(1));
    await vi.advanceTimersByTimeAsync(1000);
    saver.push(draftWith(1, 2));
    await vi.runAllTimersAsync();
    expect(save.mock.calls.map(([input]) => input)).toEqual([
      { sequence: 1, draft: draftWith(1) },
      { sequence: 2, draft: draftWith(1, 2) },
    ]);
  });

  test('what the server refuses is told and not sent again', async () => {
    const save = vi.fn<SaveDraft>(() =>
      Promise.resolve({
        ok: false,
        problem: { code: 'closed', message: 'This attempt is closed.' },
      }),
    );
    const saver = new DraftSaver({ attemptKey: 'd', nextSequence: 1, save });
    saver.push(draftWith(1));
    await vi.runAllTimersAsync();
    expect(save).toHaveBeenCalledTimes(1);
    expect(saver.state()).toEqual({ state: 'refused', message: 'This attempt is closed.' });
  });
});

test('a draft left behind is taken up, unless the server is already further', () => {
  window.sessionStorage.setItem(
    'duskbench-draft-e',
    JSON.stringify({ sequence: 3, draft: draftWith(9) }),
  );
  expect(draftLeftBehind('e', 3)).toEqual(draftWith(9));
  expect(draftLeftBehind('e', 4)).toBeNull();
});

test('storage that holds nonsense is as good as empty', () => {
  window.sessionStorage.setItem('duskbench-draft-f', '{"sequence":1,"draft":{"picks":"x"}}');
  expect(keptDraft('f')).toBeNull();
  window.sessionStorage.setItem('duskbench-draft-f', '{');
  expect(keptDraft('f')).toBeNull();
});
