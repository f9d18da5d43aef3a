import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { StatusLine } from '@/components/ui/status-line';
import { TextLink } from '@/components/ui/text-link';
import { skillTitles } from '@/lib/course/skills';
import { failedGatesText } from '@/lib/mastery/sign-off-gates';
import type { KnownNote, OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { Waiting } from '@/lib/mastery/sign-off-queue';
import { routes } from '@/lib/routes';
import type { Connection, SignOffState, SignOffStore } from './sign-off-store';

const notesText = (count: number): string =>
  count === 1 ? '1 note waits' : `${String(count)} notes wait`;

/** What becomes of the notes: how many wait, why, and those that need the teacher's word. */
export function QueueLine({
  state,
  store,
  nameOf,
  isHere,
  others,
}: {
  state: SignOffState;
  store: SignOffStore;
  nameOf: (studentId: string) => string;
  /** False for a student who has left since. */
  isHere: (studentId: string) => boolean;
  /** Notes of other teachers that wait on this device. */
  others: number;
}) {
  const { ledger, connection, kept, unread, views } = state;
  // The server's sheet is of those who are here: these were sent in this visit.
  const ofLeavers = ledger.known.filter(({ studentId }) => !isHere(studentId)).length;
  const queued = ledger.waiting.filter((one) => one.state.kind === 'queued').length;
  return (
    <div className="space-y-3">
      <div className="flex flex-wrap items-center gap-x-4 gap-y-1">
        <StatusLine>{statusText(connection, queued)}</StatusLine>
        {queued > 0 && connection === 'no-answer' ? (
          <Button className="min-h-11" onClick={store.sendNow}>
            Send now
          </Button>
        ) : null}
      </div>
      {kept ? null : (
        <Notice tone="caution" live="status" title="This browser keeps nothing">
          <p>What waits is lost if this page is closed. Leave it open until all is sent.</p>
        </Notice>
      )}
      {unread === 0 ? null : (
        <Notice
          tone="caution"
          live="status"
          title={unread === 1 ? '1 note cannot be read' : `${String(unread)} notes cannot be read`}
        >
          <p>
            Another version of this page wrote {unread === 1 ? 'it' : 'them'}.{' '}
            {unread === 1 ? 'It stays' : 'They stay'} on this device and{' '}
            {unread === 1 ? 'is' : 'are'} not sent. Look in the grid for what is missing, and note
            it once more.
          </p>
        </Notice>
      )}
      {connection === 'signed-out' && queued > 0 ? (
        <Notice tone="caution" live="alert" title="Sign in again; nothing is lost">
          <p>
            {notesText(queued)} on this device until you, who wrote {queued === 1 ? 'it' : 'them'},
            are signed in here and open this page.
          </p>
          <p>
            <TextLink href={routes.signIn.teacher()}>Sign in</TextLink>
          </p>
        </Notice>
      ) : null}
      {connection === 'not-allowed' && queued > 0 ? (
        <Notice tone="caution" live="alert" title="The class takes no notes from you now">
          <p>
            It is archived, or you no longer teach it. {notesText(queued)} on this device. Ask the
            owner of the class, then open this page again.
          </p>
        </Notice>
      ) : null}
      {others === 0 ? null : (
        <p className="text-sm text-soft">
          {others === 1
            ? '1 note of another teacher waits on this device; it is sent when they sign in here.'
            : `${String(others)} notes of other teachers wait on this device; they are sent when those sign in here.`}
        </p>
      )}
      {ofLeavers === 0 ? null : (
        <Notice live="status" title="Of somebody who has left the class">
          <p>
            {ofLeavers === 1 ? '1 note was' : `${String(ofLeavers)} notes were`} sent of a student
            who has left since. {ofLeavers === 1 ? 'It is' : 'They are'} kept with the student’s
            work.
          </p>
        </Notice>
      )}
      {views.length === 0 ? null : (
        <Notice live="status" title="A colleague saw it otherwise">
          <ul>
            {views.map(({ mine, theirs }) => (
              <li key={`${mine.key} ${theirs.key}`}>
                {nameOf(mine.studentId)}, {skillTitles[mine.skill]}: you {saidText(mine)}; a
                colleague {saidText(theirs)}.
              </li>
            ))}
          </ul>
          <p>
            Both stand, as one evening: the better level counts, and a failed gate counts against it
            whoever saw it.
          </p>
        </Notice>
      )}
      <NeedsYourWord waiting={ledger.waiting} store={store} nameOf={nameOf} />
    </div>
  );
}

function statusText(connection: Connection, queued: number): string {
  if (queued === 0) return 'Everything noted here has been sent.';
  switch (connection) {
    case 'sending':
      return `Sending. ${notesText(queued)} on this device.`;
    case 'no-answer':
      return `No connection to the server. ${notesText(queued)} on this device, sent by itself when it is back.`;
    default:
      return `${notesText(queued)} on this device.`;
  }
}

function NeedsYourWord({
  waiting,
  store,
  nameOf,
}: {
  waiting: readonly Waiting[];
  store: SignOffStore;
  nameOf: (studentId: string) => string;
}) {
  const open = waiting.flatMap(({ item, state }) =>
    state.kind === 'queued' || item.kind !== 'note' ? [] : [{ item, state }],
  );
  if (open.length === 0) return null;
  const conflicts = open.filter(({ state }) => state.kind === 'conflict');
  const settleAll = (choice: 'keep-old' | 'take-new') => {
    for (const { item } of conflicts) store.settle(item.key, choice);
  };
  return (
    <section aria-labelledby="needs-your-word" className="rounded-md border-2 border-caution p-3">
      <h3 id="needs-your-word" className="font-semibold text-caution">
        Needs your word
      </h3>
      {conflicts.length > 1 ? (
        <div className="flex flex-wrap items-center gap-2 py-2">
          <span>All {conflicts.length} of which something was there already:</span>
          <Choose onPress={() => settleAll('keep-old')}>Keep all the old</Choose>
          <Choose onPress={() => settleAll('take-new')}>Take all the new</Choose>
        </div>
      ) : null}
      <ul className="divide-y divide-line">
        {open.map(({ item, state }) => (
          <li key={item.key} className="space-y-2 py-2">
            <p className="font-semibold">
              {nameOf(item.studentId)}: {skillTitles[item.skill]}
            </p>
            {state.kind === 'conflict' ? (
              <>
                <p>
                  There already: {state.existing.map(saidText).join('; ')}. Now: {saidText(item)}.
                  Both are yours, of one evening.
                </p>
                <div className="flex flex-wrap gap-2">
                  <Choose onPress={() => store.settle(item.key, 'keep-old')}>Keep the old</Choose>
                  <Choose onPress={() => store.settle(item.key, 'take-new')}>Take the new</Choose>
                  <Choose onPress={() => store.settle(item.key, 'keep-both')}>Keep both</Choose>
                </div>
              </>
            ) : (
              <>
                <p>
                  {saidText(item)} was not taken. {state.message}
                </p>
                <div className="flex flex-wrap gap-2">
                  <Choose onPress={() => store.retry(item.key)}>Send again</Choose>
                  <Choose onPress={() => store.drop(item.key)}>Give it up</Choose>
                </div>
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Choose({ onPress, children }: { onPress: () => void; children: string }) {
  return (
    <Button className="min-h-11" onClick={onPress}>
      {children}
    </Button>
  );
}

const saidText = ({ level, gates, prompts, note }: KnownNote | OutgoingNote): string => {
  const failed = failedGatesText(gates);
  return [
    `level ${String(level)}`,
    failed === null ? '' : `gate failed: ${failed}`,
    prompts === 0 ? '' : `${String(prompts)} ${prompts === 1 ? 'prompt' : 'prompts'}`,
    note === '' ? '' : `“${note}”`,
  ]
    .filter((part) => part !== '')
    .join(', ');
};
