'use client';

import { useState, useTransition, type ChangeEvent } from 'react';
import { Button } from '@/components/ui/button';
import { ErrorSummary, type ShownProblem } from '@/components/ui/error-summary';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { StatusLine } from '@/components/ui/status-line';
import { Tabs } from '@/components/ui/tabs';
import { TextArea } from '@/components/ui/text-input';
import type { Result } from '@/lib/data/result';
import { ColumnChoice } from './column-choice';
import { RosterPreview } from './roster-preview-table';
import type { TableRow } from './read-table';
import { guessHeaderRow, guessNameColumn, rosterColumns } from './roster-columns';
import { namesToAdd, previewTable, previewTyped, type ColumnMapping } from './roster-preview';

/** A spreadsheet that was pasted or opened, and what was chosen about its columns. */
type OpenTable = { rows: readonly TableRow[]; mapping: ColumnMapping | null; note: string | null };

/**
 * Adds students: typed one to a line, or out of spreadsheet columns. Everything is read in this
 * page; only the names that the teacher has seen in the preview are sent.
 */
export function RosterImport({
  existingNames,
  addStudents,
}: {
  existingNames: readonly string[];
  addStudents: (names: string[]) => Promise<Result<{ added: number }>>;
}) {
  const [way, setWay] = useState('typed');
  const [typed, setTyped] = useState('');
  const [pasted, setPasted] = useState('');
  const [table, setTable] = useState<OpenTable | null>(null);
  const [corrections, setCorrections] = useState<ReadonlyMap<number, string>>(new Map());
  const [problems, setProblems] = useState<readonly ShownProblem[]>([]);
  const [said, setSaid] = useState('');
  const [adding, startAdding] = useTransition();

  const rows =
    way === 'typed'
      ? previewTyped(typed, existingNames)
      : table?.mapping
        ? previewTable(table.rows, table.mapping, existingNames, corrections)
        : [];
  const names = namesToAdd(rows);

  function startOver(): void {
    setTable(null);
    setCorrections(new Map());
    setProblems([]);
  }

  function refuse(message: string): void {
    startOver();
    setProblems([{ code: 'unreadable', message, field: 'roster-columns' }]);
  }

  async function open(text: string, note: string | null): Promise<void> {
    const { readTable } = await import('./read-table');
    const read = readTable(text);
    if (!read.ok) {
      refuse(read.message);
      return;
    }
    startOver();
    const hasHeader = guessHeaderRow(read.rows);
    const nameColumn = guessNameColumn(rosterColumns(read.rows, hasHeader));
    if (nameColumn === null) {
      refuse(
        'None of the columns looks like a name. Copy the column with the names, and nothing else.',
      );
      return;
    }
    setTable({ rows: read.rows, mapping: { hasHeader, nameColumn, joinColumn: null }, note });
    setSaid(`${read.rows.length} rows read.`);
  }

  async function openFile(event: ChangeEvent<HTMLInputElement>): Promise<void> {
    const file = event.target.files?.[0];
    // Lets the same file be chosen again after it was mended.
    event.target.value = '';
    if (file === undefined) return;
    const { decodeTable, largestTableBytes, looksLikeWorkbook } = await import('./read-table');
    if (file.size > largestTableBytes) {
      refuse(
        `That file is larger than a class list needs (over ${largestTableBytes / 1024} kB). Save only the columns with the names.`,
      );
      return;
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (looksLikeWorkbook(bytes)) {
      refuse(
        'That is a spreadsheet’s own file. Save it as CSV first, or copy the columns and paste them here.',
      );
      return;
    }
    const { text, encoding } = decodeTable(bytes);
    await open(
      text,
      encoding === 'windows-1252'
        ? 'The file is not in UTF-8; it was read in the older Western code page. Check names with accents.'
        : null,
    );
  }

  function add(): void {
    startAdding(async () => {
      try {
        const answer = await addStudents(names);
        if (!answer.ok) {
          setProblems([answer.problem]);
          return;
        }
        setSaid(
          `${answer.value.added} ${answer.value.added === 1 ? 'student' : 'students'} added. Their cards can be made on the Cards page.`,
        );
        setTyped('');
        setPasted('');
        startOver();
      } catch {
        setProblems([
          {
            code: 'unreachable',
            message:
              'They could not be added: the server did not answer. Nothing is lost; try again.',
          },
        ]);
      }
    });
  }

  return (
    <div className="space-y-4">
      <Notice title="A pseudonym will do">
        <p>
          Students see their own name on their card and nowhere else is it needed. First names,
          initials or made-up names keep the class recognisable to you and to nobody else.
        </p>
      </Notice>
      <ErrorSummary problems={problems} />
      <Tabs
        label="Ways to add students"
        value={way}
        onValueChange={(next) => {
          setWay(next);
          setProblems([]);
        }}
        tabs={[
          {
            id: 'typed',
            label: 'Type names',
            content: (
              <Field label="Names" hint="One to a line.">
                {(control) => (
                  <TextArea
                    {...control}
                    rows={8}
                    className="max-w-md"
                    value={typed}
                    onChange={(event) => setTyped(event.target.value)}
                  />
                )}
              </Field>
            ),
          },
          {
            id: 'columns',
            label: 'Paste or open columns',
            content: (
              <div className="space-y-4">
                <Field
                  id="roster-columns"
                  label="Paste columns from a spreadsheet"
                  hint="Or text with commas or semicolons. It is read on this computer; only the names you confirm are sent."
                >
                  {(control) => (
                    <TextArea
                      {...control}
                      rows={6}
                      className="max-w-2xl font-figures"
                      value={pasted}
                      onChange={(event) => setPasted(event.target.value)}
                    />
                  )}
                </Field>
                <div className="flex flex-wrap items-end gap-x-6 gap-y-3">
                  <Button onClick={() => void open(pasted, null)}>Read the columns</Button>
                  <Field label="or open a CSV or TSV file">
                    {(control) => (
                      <input
                        {...control}
                        type="file"
                        accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
                        className="block min-h-(--target) text-sm file:me-3 file:min-h-(--target) file:rounded-md file:border file:border-strong file:bg-panel file:px-4 file:font-semibold"
                        onChange={(event) => void openFile(event)}
                      />
                    )}
                  </Field>
                </div>
                {table?.mapping ? (
                  <>
                    {table.note === null ? null : <Notice tone="caution" title={table.note} />}
                    <ColumnChoice
                      columns={rosterColumns(table.rows, table.mapping.hasHeader)}
                      mapping={table.mapping}
                      onChange={(mapping) => setTable({ ...table, mapping })}
                    />
                  </>
                ) : null}
              </div>
            ),
          },
        ]}
      />
      {rows.length === 0 ? null : (
        <RosterPreview
          rows={rows}
          onCorrect={
            way === 'typed'
              ? null
              : (rowNumber, name) => setCorrections(new Map(corrections).set(rowNumber, name))
          }
        />
      )}
      <div className="flex flex-wrap items-center gap-4">
        <Button variant="primary" busy={adding} disabled={names.length === 0} onClick={add}>
          {names.length === 0
            ? 'Add students'
            : `Add ${names.length} ${names.length === 1 ? 'student' : 'students'}`}
        </Button>
        <StatusLine>{adding ? 'Adding…' : said}</StatusLine>
      </div>
    </div>
  );
}
