import { ActionForm, type FormActionFunction } from './action-form';
import { CommentForm, type CommentPlace } from './comment-form';
import { ConfirmAction } from './confirm-action';
import { Notice } from '@/components/ui/notice';
import { TextLink } from '@/components/ui/text-link';
import type { AttemptComments } from '@/lib/data/comments';

export type CommentActions = {
  write: FormActionFunction;
  giveBack: FormActionFunction;
  takeBack: FormActionFunction;
};

/** A teacher's words on an attempt, and giving it back for another try. */
export function CommentForms({
  written: { comments, returnedAt, newerStarted },
  names,
  actions,
  moreTimeAt,
}: {
  written: AttemptComments;
  names: readonly { id: string; name: string }[];
  actions: CommentActions;
  /** Where more time is given, once the due time is over and the student cannot start; null before. */
  moreTimeAt: string | null;
}) {
  const places = [{ id: '', name: 'On the whole' }, ...names].map(({ id, name }): CommentPlace => {
    const there = comments.find(({ criterion }) => criterion === id);
    return { id, name, text: there?.text ?? '', changedAt: there?.changedAt ?? '' };
  });
  const whole = places[0];
  return (
    <details className="no-print rounded-md border border-line bg-panel px-4 py-3">
      <summary className="font-semibold">Write a comment, give back for another try</summary>
      <div className="mt-4 grid gap-8 lg:grid-cols-2">
        <CommentForm places={places} action={actions.write} />
        {returnedAt !== null ? (
          newerStarted ? (
            <p className="text-soft">Given back, and taken up again.</p>
          ) : (
            <div className="space-y-2">
              <p>
                {moreTimeAt === null ? 'Given back: the student may try once more.' : 'Given back.'}
              </p>
              <NoTimeLeft moreTimeAt={moreTimeAt} />
              <ConfirmAction
                action={actions.takeBack}
                title="Take the giving back back?"
                description="The student keeps the attempts that were allowed before. The comment stays."
                confirmLabel="Take it back"
              >
                Take it back…
              </ConfirmAction>
            </div>
          )
        ) : newerStarted ? (
          <p className="text-soft">A newer attempt has been started: this one is not given back.</p>
        ) : (
          <div className="space-y-4">
            <NoTimeLeft moreTimeAt={moreTimeAt} />
            <ActionForm
              idPrefix="give-back"
              action={actions.giveBack}
              fields={[
                {
                  name: 'text',
                  label: 'Give back: what to do better',
                  hint: [
                    moreTimeAt === null
                      ? 'The student reads it at once and may try once more.'
                      : 'The student reads it at once.',
                    whole === undefined || whole.text === ''
                      ? 'It becomes the comment on the whole.'
                      : 'It is put below the comment on the whole, which stays.',
                  ].join(' '),
                  type: 'note',
                },
              ]}
              hidden={{ openedOn: whole?.changedAt ?? '' }}
              submitLabel="Give back for another try"
            />
          </div>
        )}
      </div>
    </details>
  );
}

/** Giving back does not move the due time: the teacher has to do that too. */
function NoTimeLeft({ moreTimeAt }: { moreTimeAt: string | null }) {
  if (moreTimeAt === null) return null;
  return (
    <Notice tone="caution" title="The due time is over">
      <p>
        Given back or not, the student cannot start before you{' '}
        <TextLink href={moreTimeAt}>give more time</TextLink>, under “Own mark, excuse, more time”.
      </p>
    </Notice>
  );
}
