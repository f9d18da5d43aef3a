import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { PairDraft } from '@/lib/grading/pair-submission';
import { emptyPairDraft } from '@/lib/grading/pair-submission';
import { readPairDraft } from '../pair/read-pair-draft';
import type { SaveDraft } from './draft-saver';
import { DraftSaver } from './draft-saver';
import { keptDraft } from './kept-draft';
import { draftLeftBehind } from './use-draft-saving';

const draftWith = (...hips: number[]): PairDraft => ({
  ...emptyPairDraft,
  picks: hips.map((hip) => ({ hip, lookAlike: null })),
});

/** Answers as `saveDraft` of lib/data does: a number that is taken is refused to another draft. */
function serverLike() {
  const saved: Parameters<SaveDraft<PairDraft>>[0][] = [];
  let losing: 'request' | 'answer' | null = null;
  const save: SaveDraft<PairDraft> = ({ sequence, draft }) => {
    const lost = losing;
    losing = null;
    if (lost === 'request') return Promise.reject(new TypeError('Failed to fetch'));
    const taken = saved.find((entry) => entry.sequence === sequence);
    const overtaken = sequence <= (saved.at(-1)?.sequence ?? 0);
    const problem = { code: 'changed-meanwhile', message: 'Changed in another window.' };
    if (overtaken && JSON.stringify(taken?.draft) !== JSON.stringify(draft))
      return Promise.resolve({ ok: false, problem });
    if (!overtaken) saved.push({ sequence, draft });
    return lost === 'answer'
      ? Promise.reject(new TypeError('Failed to fetch'))
      : Promise.resolve({ ok: true, value: { sequence } });
  };
  return {
    save,
    newest: () => saved.at(-1),
    loseNextRequest: () => {
      losing = 'request';
    },
    loseNextAnswer: () => {
      losing = 'answer';
    },
  };
}

beforeEach(() => {
  vi.useFakeTimers();
  window.sessionStorage.clear();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('saving a draft', () => {
  test('sends the latest of several quick changes, once, with the next number', async () => {
    const save = vi.fn<SaveDraft<PairDraft>>(({ sequence }) =>
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
    expect(keptDraft('a', readPairDraft)).toBeNull();
  });

  test('without a connection keeps it on the device, says so, and sends it when it can', async () => {
    const save = vi.fn<SaveDraft<PairDraft>>(({ sequence }) =>
      Promise.resolve({ ok: true, value: { sequence } }),
    );
    save.mockRejectedValueOnce(new TypeError('Failed to fetch'));
    const saver = new DraftSaver({ attemptKey: 'b', nextSequence: 1, save });
    saver.push(draftWith(7));
    await vi.advanceTimersByTimeAsync(1000);
    expect(saver.state()).toEqual({ state: 'kept' });
    expect(saver.unsaved()).toBe(true);
    expect(keptDraft('b', readPairDraft)).toEqual({ sequence: 1, draft: draftWith(7) });
    await vi.advanceTimersByTimeAsync(6000);
    expect(save).toHaveBeenCalledTimes(2);
    expect(saver.state()).toEqual({ state: 'saved' });
    expect(saver.unsaved()).toBe(false);
  });

  test('a change made while another is on its way follows it', async () => {
    const save = vi.fn<SaveDraft<PairDraft>>(
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

  test('an answer that is lost does not cost the change made while waiting for it', async () => {
    const server = serverLike();
    let lost = false;
    const saver = new DraftSaver<PairDraft>({
      attemptKey: 'g',
      nextSequence: 1,
      save: async (input) => {
        const answer = await server.save(input);
        if (lost) return answer;
        lost = true;
        // The first one arrives; while its receipt is on the way, the learner goes on.
        saver.push(draftWith(1, 2));
        throw new TypeError('Failed to fetch');
      },
    });
    saver.push(draftWith(1));
    await vi.runAllTimersAsync();
    expect(saver.state()).toEqual({ state: 'saved' });
    expect(server.newest()?.draft).toEqual(draftWith(1, 2));
  });

  test('after a lost answer the same is sent under the same number, then the newer choice', async () => {
    const server = serverLike();
    const saver = new DraftSaver({ attemptKey: 'g', nextSequence: 1, save: server.save });
    server.loseNextAnswer();
    saver.push(draftWith(1));
    await vi.advanceTimersByTimeAsync(1000);
    expect(saver.state()).toEqual({ state: 'kept' });
    saver.push(draftWith(1, 2));
    await vi.runAllTimersAsync();
    expect(saver.state()).toEqual({ state: 'saved' });
    expect(server.newest()).toEqual({ sequence: 2, draft: draftWith(1, 2) });
    expect(keptDraft('g', readPairDraft)).toBeNull();
  });

  test('after a lost answer, what another window saved meanwhile is not saved over', async () => {
    const server = serverLike();
    const saver = new DraftSaver({ attemptKey: 'h', nextSequence: 1, save: server.save });
    server.loseNextRequest();
    saver.push(draftWith(1));
    await vi.advanceTimersByTimeAsync(1000);
    await server.save({ sequence: 1, draft: draftWith(8) });
    await vi.runAllTimersAsync();
    expect(saver.state()).toMatchObject({ state: 'refused' });
    expect(server.newest()).toEqual({ sequence: 1, draft: draftWith(8) });
  });

  test('a choice made while another was on its way outlives a reload', async () => {
    const server = serverLike();
    const saver = new DraftSaver({ attemptKey: 'i', nextSequence: 1, save: server.save });
    server.loseNextAnswer();
    saver.push(draftWith(1));
    vi.advanceTimersByTime(700);
    expect(server.newest()).toEqual({ sequence: 1, draft: draftWith(1) });
    saver.push(draftWith(1, 2));
    // The page is loaded again: the server, which holds the first, expects the second.
    expect(draftLeftBehind('i', 2, readPairDraft)).toEqual(draftWith(1, 2));
    // Had the first not arrived, it would expect that one still.
    expect(draftLeftBehind('i', 1, readPairDraft)).toEqual(draftWith(1, 2));
    await vi.advanceTimersByTimeAsync(0);
    saver.push(draftWith(1, 3));
    expect(draftLeftBehind('i', 2, readPairDraft), 'pushed after the answer was lost').toEqual(
      draftWith(1, 3),
    );
  });

  test('once stopped it sends nothing more, whatever was on its way', async () => {
    const save = vi.fn<SaveDraft<PairDraft>>(() =>
      Promise.reject(new TypeError('Failed to fetch')),
    );
    const saver = new DraftSaver({ attemptKey: 'j', nextSequence: 1, save });
    saver.push(draftWith(1));
    vi.advanceTimersByTime(700);
    saver.stop();
    await vi.runAllTimersAsync();
    expect(save).toHaveBeenCalledTimes(1);
    expect(saver.unsaved()).toBe(false);
    expect(keptDraft('j', readPairDraft)).toBeNull();
  });

  test('what the server refuses is told and not sent again', async () => {
    const save = vi.fn<SaveDraft<PairDraft>>(() =>
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
  expect(draftLeftBehind('e', 3, readPairDraft)).toEqual(draftWith(9));
  expect(draftLeftBehind('e', 4, readPairDraft)).toBeNull();
});

test('storage that holds nonsense is as good as empty', () => {
  window.sessionStorage.setItem('duskbench-draft-f', '{"sequence":1,"draft":{"picks":"x"}}');
  expect(keptDraft('f', readPairDraft)).toBeNull();
  window.sessionStorage.setItem('duskbench-draft-f', '{');
  expect(keptDraft('f', readPairDraft)).toBeNull();
});
