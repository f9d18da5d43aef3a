import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import type { PairResult } from '@/lib/grading/pair-result';
import { emptyPairDraft, type PairDraft, type PairSubmission } from '@/lib/grading/pair-submission';
import type { SubmitAnswer } from '@/components/lab/shell/submission-sender';
import { AttemptLab } from './attempt-lab';

type SubmitPair = SubmitAnswer<PairSubmission, PairResult>;

const refresh = vi.hoisted(() => vi.fn());
const router = vi.hoisted(() => ({ refresh }));
vi.mock('next/navigation', () => ({ useRouter: () => router }));

afterEach(() => {
  cleanup();
  refresh.mockReset();
});

const problem = (code: string) =>
  Promise.resolve({ ok: false as const, problem: { code, message: 'refused' } });

const taken: SubmitPair = () => Promise.resolve({ ok: true, value: { result: null, late: false } });

let opened = 0;
function open(code: string, send = taken) {
  opened += 1;
  render(
    <AttemptLab<PairDraft, PairSubmission, PairResult>
      title="Pick the pair"
      attemptKey={`attempt ${String(opened)}`}
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

/** An attempt's page as the server made it when this number came next. */
const pageMadeAt = (attemptKey: string, nextSequence: number) => (
  <AttemptLab<PairDraft, PairSubmission, PairResult>
    title="Pick the pair"
    {...{ attemptKey, nextSequence }}
    save={({ sequence }) => Promise.resolve({ ok: true, value: { sequence } })}
    send={taken}
    resultAddress="/my/attempts/attempt/result"
  >
    {({ onSave, onSubmit }) => (
      <>
        <p>drawn from {String(nextSequence)}</p>
        <button
          onClick={() =>
            void onSubmit({ submission: { kind: 'none-usable' }, idempotencyKey: 'key' })
          }
        >
          submit
        </button>
        <button onClick={() => void onSave({ sequence: nextSequence, draft: emptyPairDraft })}>
          save
        </button>
      </>
    )}
  </AttemptLab>
);

test('a page brought back as it was before something was saved waits for the newest', async () => {
  const user = userEvent.setup();
  const first = render(pageMadeAt('brought-back', 1));
  await user.click(screen.getByText('save'));
  first.rerender(pageMadeAt('brought-back', 1));
  expect(screen.getByText('drawn from 1'), 'saving takes no lab away').toBeTruthy();
  expect(refresh).not.toHaveBeenCalled();
  first.unmount();

  const back = render(pageMadeAt('brought-back', 1));
  expect(screen.getByRole('status').textContent).toBe('Fetching your work …');
  expect(screen.queryByText('save')).toBeNull();
  expect(refresh).toHaveBeenCalledTimes(1);

  back.rerender(pageMadeAt('brought-back', 2));
  expect(screen.getByText('drawn from 2')).toBeTruthy();
  expect(screen.queryByText('Fetching your work …')).toBeNull();
  await user.click(screen.getByText('save'));
  expect(screen.getByText('drawn from 2'), 'and it stays').toBeTruthy();
  expect(refresh).toHaveBeenCalledTimes(1);
});

test('a page brought back after handing in waits for the result, also where nothing was saved', async () => {
  const user = userEvent.setup();
  const first = render(pageMadeAt('handed-in', 7));
  await user.click(screen.getByText('submit'));
  first.rerender(pageMadeAt('handed-in', 7));
  expect(screen.getByText('drawn from 7'), 'what came of it stays').toBeTruthy();
  first.unmount();
  render(pageMadeAt('handed-in', 7));
  expect(screen.getByRole('status').textContent).toBe('Fetching your work …');
  expect(screen.queryByText('submit')).toBeNull();
  expect(refresh).toHaveBeenCalledTimes(1);
});

test('what was saved of one attempt holds up no other', async () => {
  const user = userEvent.setup();
  render(pageMadeAt('one', 1));
  await user.click(screen.getByText('save'));
  cleanup();
  render(pageMadeAt('another', 1));
  expect(screen.getByText('drawn from 1')).toBeTruthy();
  expect(refresh).not.toHaveBeenCalled();
});

test('without a connection a page brought back asks when there is one again', async () => {
  const user = userEvent.setup();
  render(pageMadeAt('offline', 1));
  await user.click(screen.getByText('save'));
  cleanup();
  const onLine = vi.spyOn(navigator, 'onLine', 'get').mockReturnValue(false);
  render(pageMadeAt('offline', 1));
  expect(refresh).not.toHaveBeenCalled();
  window.dispatchEvent(new Event('online'));
  expect(refresh).toHaveBeenCalledTimes(1);
  onLine.mockRestore();
});
