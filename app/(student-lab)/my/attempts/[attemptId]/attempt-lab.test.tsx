import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test } from 'vitest';
import type { PairResult } from '@/lib/grading/pair-result';
import { emptyPairDraft, type PairDraft, type PairSubmission } from '@/lib/grading/pair-submission';
import type { SubmitAnswer } from '@/components/lab/shell/submission-sender';
import { AttemptLab } from './attempt-lab';

type SubmitPair = SubmitAnswer<PairSubmission, PairResult>;

afterEach(cleanup);

const problem = (code: string) =>
  Promise.resolve({ ok: false as const, problem: { code, message: 'refused' } });

const taken: SubmitPair = () => Promise.resolve({ ok: true, value: { result: null, late: false } });

function open(code: string, send = taken) {
  render(
    <AttemptLab<PairDraft, PairSubmission, PairResult>
      title="Pick the pair"
      attemptKey="attempt"
      save={() => problem(code)}
      send={send}
      resultAddress="/my/attempts/attempt/result"
    >
      {/* The labs themselves have tests of their own; here it is two buttons that send. */}
      {({ onSave, onSubmit }) => (
        <>
          <button onClick={() => void onSave({ sequence: 1, draft: emptyPairDraft })}>save</button>
          <button
            onClick={() =>
              void onSubmit({ submission: { kind: 'none-usable' }, idempotencyKey: 'key' }).catch(
                () => null,
              )
            }
          >
            submit
          </button>
        </>
      )}
    </AttemptLab>,
  );
  return userEvent.setup();
}

test('what has been handed in elsewhere leaves no live lab, but the way to the result', async () => {
  const user = open('already-submitted');
  await user.click(screen.getByText('save'));
  expect(await screen.findByText('This attempt has been handed in')).toBeTruthy();
  expect(screen.queryByText('submit')).toBeNull();
  expect(screen.getByRole('link').getAttribute('href')).toBe('/my/attempts/attempt/result');
});

test('an attempt that is gone leaves no live lab', async () => {
  const user = open('not-found');
  await user.click(screen.getByText('save'));
  expect(await screen.findByText('This attempt cannot be reached any more')).toBeTruthy();
  expect(screen.queryByText('submit')).toBeNull();
});

test('newer work elsewhere is told beside the lab', async () => {
  const user = open('changed-meanwhile');
  await user.click(screen.getByText('save'));
  expect(await screen.findByText('You went on in another window')).toBeTruthy();
  expect(screen.getByText('submit')).toBeTruthy();
});

test('a draft refused after its own answer does not hide what came of it', async () => {
  const user = open('already-submitted');
  await user.click(screen.getByText('submit'));
  await user.click(screen.getByText('save'));
  expect(screen.queryByText('This attempt has been handed in')).toBeNull();
  expect(screen.getByText('submit')).toBeTruthy();
});

test('a draft refused after an answer whose receipt was lost leaves the way to send it again', async () => {
  const user = open('already-submitted', () => Promise.reject(new Error('the connection broke')));
  await user.click(screen.getByText('submit'));
  await user.click(screen.getByText('save'));
  expect(screen.queryByText('This attempt has been handed in')).toBeNull();
  expect(screen.getByText('submit')).toBeTruthy();
});

test('an answer that another window came before leads to what counts', async () => {
  const user = open('none', () => problem('already-submitted'));
  await user.click(screen.getByText('submit'));
  expect(await screen.findByText('This attempt has been handed in')).toBeTruthy();
});

test('an answer that was refused keeps no later notice back', async () => {
  const user = open('already-submitted', () => problem('does-not-add-up'));
  await user.click(screen.getByText('submit'));
  await user.click(screen.getByText('save'));
  expect(await screen.findByText('This attempt has been handed in')).toBeTruthy();
});
