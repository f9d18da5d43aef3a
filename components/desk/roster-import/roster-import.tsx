'use client';

import { useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { ErrorSummary, type ShownProblem } from '@/components/ui/error-summary';
import { Notice } from '@/components/ui/notice';
import { StatusLine } from '@/components/ui/status-line';
import { Tabs } from '@/components/ui/tabs';
import type { ImportOutcome, RosterPreview } from '@/lib/data/roster-import';
import type { RosterList } from '@/lib/data/roster-import-input';
import type { Result } from '@/lib/data/result';
import { listOf, type Ways } from './chosen-list';
import type { ImportActions } from './import-actions';
import { ImportDone } from './import-done';
import { ImportPreview } from './import-preview';
import { OneRosterWay } from './one-roster-way';
import { TableWay } from './table-way';
import { TypedWay } from './typed-way';

type Shown =
  | { step: 'list' }
  | { step: 'preview'; list: RosterList; preview: RosterPreview }
  | { step: 'done'; outcome: ImportOutcome };

const nothing: Ways = { way: 'typed', typed: '', table: null, zip: null };

/**
 * Three ways to a list of students, and one way on: what would change is shown first, and only what was
 * shown is done. Whatever is read stays in this page; names and ids alone are sent.
 */
export function RosterImport({
  actions,
  className,
  rememberedId,
  today,
}: {
  actions: ImportActions;
  className: string;
  /** The class of the school's file that this one was last filled from. */
  rememberedId: string | null;
  /** The day in the class's zone: "2026-11-26". */
  today: string;
}) {
  const [ways, setWays] = useState(nothing);
  const [shown, setShown] = useState<Shown>({ step: 'list' });
  const [problems, setProblems] = useState<readonly ShownProblem[]>([]);
  const [said, setSaid] = useState('');
  const [busy, start] = useTransition();
  const chosen = listOf(ways);

  const refuse = (field: string) => (messages: readonly string[]) => {
    setSaid('');
    setProblems(messages.map((message) => ({ code: 'unreadable', message, field })));
  };
  function ask<T>(work: () => Promise<Result<T>>, then: (value: T) => void): void {
    start(async () => {
      try {
        const answer = await work();
        setProblems(answer.ok ? [] : [answer.problem]);
        if (answer.ok) then(answer.value);
      } catch {
        setProblems([
          {
            code: 'unreachable',
            message: 'The server did not answer. Your list is still here; try again.',
          },
        ]);
      }
    });
  }
  function preview(list: RosterList): void {
    setSaid('');
    ask(
      () => actions.preview(list),
      (value) => setShown({ step: 'preview', list, preview: value }),
    );
  }

  return (
    <div className="space-y-4">
      <ErrorSummary problems={problems} />
      {shown.step === 'done' ? (
        <ImportDone
          outcome={shown.outcome}
          busy={busy}
          onMore={() => setShown({ step: 'list' })}
          onTakeBack={() =>
            ask(
              () => actions.takeBack(shown.outcome.undo),
              () => {
                setShown({ step: 'list' });
                setSaid('The import was taken back. The roster is as it was.');
              },
            )
          }
        />
      ) : null}
      {shown.step === 'preview' ? (
        <ImportPreview
          preview={shown.preview}
          source={chosen.source}
          leftOut={chosen.leftOut}
          keepNames={shown.list.keepNames}
          busy={busy}
          onKeepNames={(keepNames) => preview({ ...shown.list, keepNames })}
          onBack={() => {
            setProblems([]);
            setShown({ step: 'list' });
          }}
          onCommit={() =>
            ask(
              () => actions.commit(shown.list, shown.preview.fingerprint),
              (outcome) => {
                setWays({ ...nothing, way: ways.way });
                setShown({ step: 'done', outcome });
              },
            )
          }
        />
      ) : null}
      {shown.step === 'list' ? (
        <>
          <Notice title="A pseudonym will do">
            <p>
              Students see their own name on their card and nowhere else is it needed. First names,
              initials or made-up names keep the class recognisable to you and to nobody else.
            </p>
          </Notice>
          <Tabs
            label="Ways to a class list"
            value={ways.way}
            onValueChange={(way) => {
              setWays({ ...ways, way });
              setProblems([]);
            }}
            tabs={[
              {
                id: 'typed',
                label: 'Type names',
                content: (
                  <TypedWay text={ways.typed} onChange={(typed) => setWays({ ...ways, typed })} />
                ),
              },
              {
                id: 'columns',
                label: 'Paste or open columns',
                content: (
                  <TableWay
                    table={ways.table}
                    onTable={(table) => {
                      setProblems([]);
                      setWays((now) => ({ ...now, table }));
                    }}
                    onRefuse={(message) => refuse('roster-columns')([message])}
                  />
                ),
              },
              {
                id: 'zip',
                label: 'OneRoster zip',
                content: (
                  <OneRosterWay
                    zip={ways.zip}
                    onZip={(zip) => setWays((now) => ({ ...now, zip }))}
                    onRefuse={refuse('roster-zip')}
                    rememberedId={rememberedId}
                    className={className}
                    today={today}
                  />
                ),
              },
            ]}
          />
          <div className="flex flex-wrap items-center gap-4">
            <Button
              variant="primary"
              busy={busy}
              disabled={chosen.list === null}
              onClick={() => {
                if (chosen.list !== null) preview(chosen.list);
              }}
            >
              Preview
            </Button>
            <StatusLine>{busy ? 'Looking at the roster…' : said}</StatusLine>
          </div>
        </>
      ) : null}
    </div>
  );
}
