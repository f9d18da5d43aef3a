'use client';

import { useSyncExternalStore } from 'react';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { TextLink } from '@/components/ui/text-link';
import { routes } from '@/lib/routes';
import { forgetQueue, type Owner } from './kept-on-device';

type Queue = Owner & { count: number };

const changed = new EventTarget();
function listen(onChange: () => void): () => void {
  window.addEventListener('storage', onChange);
  changed.addEventListener('change', onChange);
  return () => {
    window.removeEventListener('storage', onChange);
    changed.removeEventListener('change', onChange);
  };
}

const notes = (count: number): string => (count === 1 ? '1 note' : `${String(count)} notes`);

/** On the other pages of the desk: notes that wait, since a class's notes go from its own sign-off page. */
export function WaitingHere({ queues, path }: { queues: () => Queue[]; path: string }) {
  // As text: what is read anew each time is compared by what it says.
  const read = useSyncExternalStore(
    listen,
    () => JSON.stringify(queues()),
    () => '',
  );
  const elsewhere =
    read === ''
      ? []
      : queues().filter(({ classId }) => path !== routes.teacher.classSignOff(classId));
  if (elsewhere.length === 0) return null;
  return (
    <Notice
      tone="caution"
      title="Notes from the telescope wait on this device"
      className="no-print mb-4"
    >
      <ul>
        {elsewhere.map((queue) => (
          <li key={queue.classId} className="flex flex-wrap items-center gap-x-3">
            <span>{notes(queue.count)} not sent yet:</span>
            <TextLink href={routes.teacher.classSignOff(queue.classId)}>
              open the sign-off page of that class
            </TextLink>
          </li>
        ))}
      </ul>
    </Notice>
  );
}

/** Where the class takes nothing more: what waits is kept until somebody decides. */
export function CannotBeSent({ owner, queues }: { owner: Owner; queues: () => Queue[] }) {
  const count = useSyncExternalStore(
    listen,
    () => queues().find(({ classId }) => classId === owner.classId)?.count ?? 0,
    () => 0,
  );
  if (count === 0) return null;
  return (
    <Notice tone="caution" title={`${notes(count)} of yours cannot be sent now`}>
      <p>
        The class takes no notes from you: it is archived, or your part in it changed.{' '}
        {count === 1 ? 'It stays' : 'They stay'} on this device. When the owner has taken the class
        back, or made you a teacher of it, open this page again.
      </p>
      <p>
        <Button
          className="min-h-11"
          onClick={() => {
            if (!window.confirm(`Give up ${notes(count)} for good? Nobody else has them.`)) return;
            forgetQueue(owner);
            changed.dispatchEvent(new Event('change'));
          }}
        >
          Give {count === 1 ? 'it' : 'them'} up
        </Button>
      </p>
    </Notice>
  );
}
