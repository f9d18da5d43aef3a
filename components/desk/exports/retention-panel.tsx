import { Panel } from '@/components/ui/panel';
import { TextLink } from '@/components/ui/text-link';

/** Until when the class is kept, what goes then, and what whoever runs the server enters once. */
export function RetentionPanel({
  keptUntil,
  settingsHref,
  rosterHref,
  mayOwn,
}: {
  /** On the class's calendar. */
  keptUntil: string;
  settingsHref: string;
  rosterHref: string;
  mayOwn: boolean;
}) {
  return (
    <Panel title="When it is deleted" level={3}>
      <div className="max-w-measure space-y-3">
        <p>
          This class is kept until <strong>{keptUntil}</strong>. After that the clean-up command
          deletes it for good: students, attempts, marks, comments, notes from the telescope,
          groups, cover links and the record of changes. Backups and files that somebody took away
          are not reached by it.
        </p>
        <p>
          {mayOwn ? (
            <>
              You can choose another day, or delete the class now, in the{' '}
              <TextLink href={settingsHref}>settings</TextLink>; one student is removed in the{' '}
              <TextLink href={rosterHref}>roster</TextLink>.
            </>
          ) : (
            <>
              The owner of the class sets the day; one student is removed in the{' '}
              <TextLink href={rosterHref}>roster</TextLink>.
            </>
          )}
        </p>
        <p>
          The command runs only where somebody has set it to. Whoever looks after the server enters
          this line in its scheduler (<code>crontab -e</code>), with the folder of the product; it
          then cleans up each night at ten past three:
        </p>
        <pre className="rounded-md border border-line bg-sunken px-3 py-2 text-sm break-words whitespace-pre-wrap">
          <code>{'10 3 * * * cd /srv/duskbench && npm run purge -- --school --yes'}</code>
        </pre>
        <p className="text-sm text-soft">
          Without <code>--yes</code> the command only says what it would delete.
        </p>
      </div>
    </Panel>
  );
}
