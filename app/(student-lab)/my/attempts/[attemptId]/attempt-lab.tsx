'use client';

import { useRef, useState, type ReactNode } from 'react';
import type { SaveDraft } from '@/components/lab/shell/draft-saver';
import { forgetDraft } from '@/components/lab/shell/kept-draft';
import type { SubmitAnswer } from '@/components/lab/shell/submission-sender';
import { Button } from '@/components/ui/button';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import type { Problem, Result } from '@/lib/data/result';
import { routes } from '@/lib/routes';
import { NewestWork } from './newest-work';
import { noteHandedIn, noteSaved } from './saved-here';

/** What an attempt's page hands to its lab: the lab's own props, but for what is watched over here. */
export type AttemptProps<LabProps extends { onSave?: unknown; onSubmit: unknown }> = Omit<
  LabProps,
  'onSave' | 'onSubmit'
> & {
  save: NonNullable<LabProps['onSave']>;
  send: LabProps['onSubmit'];
  resultAddress: string;
};

type WatchedOver<Draft, Submission, Outcome> = {
  onSave: SaveDraft<Draft>;
  onSubmit: SubmitAnswer<Submission, Outcome>;
  /** For whatever else a lab asks of the server while it goes on. */
  watch: <T>(answer: Promise<Result<T>>) => Promise<Result<T>>;
};

/** What came back from the server that the learner has to act on, by its code. */
type Interruption = 'changed-meanwhile' | 'already-submitted' | 'not-found';

const interruptionOf = (problem: Problem): Interruption | null =>
  problem.code === 'changed-meanwhile' ||
  problem.code === 'already-submitted' ||
  problem.code === 'not-found'
    ? problem.code
    : null;

/**
 * The lab of one attempt. When the server refuses because of what happened elsewhere, it says what
 * happened and leads on; nothing is overwritten.
 */
export function AttemptLab<Draft, Submission, Outcome>({
  title,
  attemptKey,
  nextSequence = 1,
  save,
  send,
  resultAddress,
  children,
}: {
  /** Of the lab, for a page that no longer shows it. */
  title: string;
  attemptKey: string;
  /** The number the next saved draft carries; it tells how new the page is. */
  nextSequence?: number | undefined;
  save: SaveDraft<Draft>;
  send: SubmitAnswer<Submission, Outcome>;
  resultAddress: string;
  children: (watchedOver: WatchedOver<Draft, Submission, Outcome>) => ReactNode;
}) {
  const [interruption, setInterruption] = useState<Interruption | null>(null);

  /** Of an answer from here: taken, or on its way, perhaps for ever where the connection broke. */
  const sentFromHere = useRef<'no' | 'on-its-way' | 'taken'>('no');

  async function watched<T>(answer: Promise<Result<T>>): Promise<Result<T>> {
    const result = await answer;
    if (result.ok || sentFromHere.current === 'taken') return result;
    const interrupting = interruptionOf(result.problem);
    // A draft that comes in after its own answer is refused too. What came of the answer stays on the
    // screen, and where that was not heard, sending it again tells.
    if (sentFromHere.current === 'on-its-way' && interrupting === 'already-submitted')
      return result;
    setInterruption(interrupting);
    return result;
  }

  async function saved(input: Parameters<typeof save>[0]): ReturnType<typeof save> {
    const answer = await save(input);
    if (answer.ok) noteSaved(attemptKey, answer.value.sequence);
    return watched(Promise.resolve(answer));
  }

  async function submitted(
    input: Parameters<typeof send>[0],
  ): Promise<Awaited<ReturnType<typeof send>>> {
    sentFromHere.current = 'on-its-way';
    const answer = await send(input);
    sentFromHere.current = answer.ok ? 'taken' : 'no';
    if (answer.ok) noteHandedIn(attemptKey);
    return watched(Promise.resolve(answer));
  }

  const notice =
    interruption === null ? null : (
      <div className="mx-auto max-w-[44rem]">
        <InterruptionNotice
          interruption={interruption}
          resultAddress={resultAddress}
          onLoadNewest={() => {
            // What this window kept is older than what the server has.
            forgetDraft(attemptKey);
            window.location.reload();
          }}
        />
      </div>
    );
  // Nothing chosen here could be sent any more: a lab that still answers would be a pretence.
  if (interruption === 'already-submitted' || interruption === 'not-found')
    return (
      <div className="px-4 py-8 sm:px-6">
        <h1 className="sr-only">{title}</h1>
        {notice}
      </div>
    );

  return (
    <div className="relative">
      {notice === null ? null : (
        <div className="fixed inset-x-0 top-0 z-40 bg-page p-3 shadow-[0_2px_0_var(--line)] sm:p-4">
          {notice}
        </div>
      )}
      <NewestWork {...{ title, attemptKey, nextSequence }}>
        <Watched render={children} watch={watched} onSave={saved} onSubmit={submitted} />
      </NewestWork>
    </div>
  );
}

/** Lets the lab be drawn apart from this component's own rendering, which may touch no ref. */
function Watched<Draft, Submission, Outcome>({
  render,
  ...watchedOver
}: WatchedOver<Draft, Submission, Outcome> & {
  render: (watchedOver: WatchedOver<Draft, Submission, Outcome>) => ReactNode;
}): ReactNode {
  return render(watchedOver);
}

function InterruptionNotice(props: {
  interruption: Interruption;
  resultAddress: string;
  onLoadNewest: () => void;
}): ReactNode {
  switch (props.interruption) {
    case 'changed-meanwhile':
      return (
        <Notice tone="caution" title="You went on in another window" live="alert">
          <p>What you chose there is newer, so this window was not saved over it.</p>
          <Button variant="primary" onClick={props.onLoadNewest}>
            Load the newest here
          </Button>
        </Notice>
      );
    case 'already-submitted':
      return (
        <Notice tone="caution" title="This attempt has been handed in" live="alert">
          <p>It was sent before, perhaps from another window. That answer counts.</p>
          <LinkButton href={props.resultAddress} variant="primary">
            See how it came out
          </LinkButton>
        </Notice>
      );
    case 'not-found':
      return (
        <Notice tone="caution" title="This attempt cannot be reached any more" live="alert">
          <p>
            You may have been signed out, or a newer practice has taken its place. What was saved of
            a check is kept: sign in again and go on from there.
          </p>
          <LinkButton href={routes.student.myWork()} variant="primary">
            To my work
          </LinkButton>
        </Notice>
      );
  }
}
