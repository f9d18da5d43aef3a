import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { PairSubmission } from '@/lib/grading/pair-submission';
import type { SubmitPair } from '../pair/pair-lab-props';
import { SubmissionSender } from './submission-sender';

const none: PairSubmission = { kind: 'none-usable' };
const pair: PairSubmission = {
  kind: 'pair',
  stars: [
    { hip: 24608, lookAlike: null },
    { hip: 91262, lookAlike: 'jupiter' },
  ],
};

const taking = () =>
  vi.fn<SubmitPair>(() => Promise.resolve({ ok: true, value: { result: null, late: false } }));
const losing = () => vi.fn<SubmitPair>(() => Promise.reject(new TypeError('Failed to fetch')));
const keys = (submit: ReturnType<typeof taking>): string[] =>
  submit.mock.calls.map(([{ idempotencyKey }]) => idempotencyKey);

beforeEach(() => {
  window.sessionStorage.clear();
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe('sending a submission', () => {
  test('works where the page is no secure context and the browser lacks half of crypto', async () => {
    const real = window.crypto;
    vi.stubGlobal('crypto', {
      getRandomValues: (array: Uint8Array<ArrayBuffer>) => real.getRandomValues(array),
    });
    const submit = taking();
    const sender = new SubmissionSender('a', submit);
    await sender.send(none);
    expect(sender.state()).toMatchObject({ state: 'done' });
    expect(keys(submit)).toEqual([expect.stringMatching(/^[0-9a-f]{32}$/)]);
  });

  test('after a lost connection sends under the same key, also from a page loaded again', async () => {
    const submit = losing();
    const sender = new SubmissionSender('b', submit);
    await sender.send(pair);
    expect(sender.state()).toEqual({ state: 'no-answer' });
    await sender.send(pair);
    const later = taking();
    await new SubmissionSender('b', later).send(pair);
    expect(new Set([...keys(submit), ...keys(later)]).size).toBe(1);
  });

  test('gives another answer, or another attempt, another key', async () => {
    const submit = losing();
    await new SubmissionSender('c', submit).send(pair);
    await new SubmissionSender('c', submit).send(none);
    await new SubmissionSender('d', submit).send(none);
    expect(new Set(keys(submit)).size).toBe(3);
  });

  test('where storage is refused, still sends again under the same key', async () => {
    vi.spyOn(Storage.prototype, 'getItem').mockImplementation(() => {
      throw new DOMException('The operation is insecure.', 'SecurityError');
    });
    const submit = losing();
    const sender = new SubmissionSender('e', submit);
    await sender.send(none);
    await sender.send(none);
    expect(submit).toHaveBeenCalledTimes(2);
    expect(new Set(keys(submit)).size).toBe(1);
  });
});
