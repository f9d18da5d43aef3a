import { ActionForm, type FormActionFunction } from './action-form';
import { CommentForm, type CommentPlace } from './comment-form';
import { ConfirmAction } from './confirm-action';
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
  dueIsOver,
}: {
  written: AttemptComments;
  names: readonly { id: string; name: string }[];
  actions: CommentActions;
  /** Then the student needs more time as well, or cannot start. */
  dueIsOver: boolean;
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
              <p>Given back: the student may try once more.</p>
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
          <div className="space-y-2">
            <ActionForm
              idPrefix="give-back"
              action={actions.giveBack}
              fields={[
                {
                  name: 'text',
                  label: 'Give back: what to do better',
                  hint:
                    whole === undefined || whole.text === ''
                      ? 'The student reads it at once and may try once more. It becomes the comment on the whole.'
                      : 'The student reads it at once and may try once more. It is put below the comment on the whole, which stays.',
                  type: 'note',
                },
              ]}
              hidden={{ openedOn: whole?.changedAt ?? '' }}
              submitLabel="Give back for another try"
            />
            {dueIsOver ? (
              <p className="max-w-measure text-sm text-caution">
                The due time is over: give more time as well, or the student cannot start.
              </p>
            ) : null}
          </div>
        )}
      </div>
    </details>
  );
}
