'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { StatusLine } from '@/components/ui/status-line';
import { TextArea } from '@/components/ui/text-input';
import { rowsOfTable, type ColumnMapping } from '@/lib/roster/list-check';
import type { TableRow } from '@/lib/roster/read-table';
import {
  guessHeaderRow,
  guessIdColumn,
  guessNameColumn,
  rosterColumns,
} from '@/lib/roster/roster-columns';
import { ColumnChoice } from './column-choice';
import { FileInput } from './file-input';
import { RowTable } from './row-table';

/** A spreadsheet that was pasted or opened, and what was chosen about its columns. */
export type OpenTable = {
  source: string;
  rows: readonly TableRow[];
  /** Between the others, with nothing in them. */
  emptyRows: readonly number[];
  mapping: ColumnMapping;
  corrections: ReadonlyMap<number, string>;
  note: string | null;
};

/** Columns pasted from a spreadsheet or opened from a file. Everything is read in this page. */
export function TableWay({
  table,
  onTable,
  onRefuse,
}: {
  table: OpenTable | null;
  onTable: (table: OpenTable | null) => void;
  onRefuse: (message: string) => void;
}) {
  const [pasted, setPasted] = useState('');
  const [said, setSaid] = useState('');

  function refuse(message: string): void {
    onTable(null);
    onRefuse(message);
  }

  async function open(text: string, source: string, note: string | null): Promise<void> {
    const { readTable } = await import('@/lib/roster/read-table');
    const read = readTable(text);
    if (!read.ok) {
      refuse(`${source}: ${read.message}`);
      return;
    }
    const hasHeader = guessHeaderRow(read.rows);
    const columns = rosterColumns(read.rows, hasHeader);
    const nameColumn = guessNameColumn(columns);
    if (nameColumn === null) {
      refuse(
        `${source}: none of the columns looks like a name. Keep the column with the names, and nothing else.`,
      );
      return;
    }
    const idColumn = hasHeader ? guessIdColumn(read.rows, columns) : null;
    onTable({
      source,
      rows: read.rows,
      emptyRows: read.emptyRows,
      mapping: { hasHeader, nameColumn, joinColumn: null, idColumn },
      corrections: new Map(),
      note,
    });
    setSaid(`${read.rows.length} rows read.`);
  }

  async function openFile(file: File): Promise<void> {
    const { decodeTable, firstNotUtf8, largestTableBytes, looksLikeWorkbook } =
      await import('@/lib/roster/read-table');
    if (file.size > largestTableBytes) {
      refuse(
        `${file.name} is larger than a class list needs (over ${largestTableBytes / 1024 / 1024} MB). Save only the columns with the names.`,
      );
      return;
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (looksLikeWorkbook(bytes)) {
      refuse(
        `${file.name} is a spreadsheet’s own file or a zip. Save it as CSV first, or copy the columns and paste them here. A OneRoster zip has a place of its own.`,
      );
      return;
    }
    const { text, encoding } = decodeTable(bytes);
    const first = encoding === 'windows-1252' ? firstNotUtf8(bytes) : null;
    await open(
      text,
      file.name,
      encoding === 'windows-1252'
        ? `${file.name} is not in UTF-8${first === null ? '' : ` (first seen in row ${first.rowNumber}, column ${first.column})`}. It was read in the older Western code page: check names with accents, or save it as CSV in UTF-8.`
        : null,
    );
  }

  const columns = table === null ? [] : rosterColumns(table.rows, table.mapping.hasHeader);
  const nameLabel = columns.find((column) => column.index === table?.mapping.nameColumn)?.label;
  return (
    <div className="space-y-4">
      <Field
        id="roster-columns"
        label="Paste columns from a spreadsheet"
        hint="Or text with commas or semicolons. It is read on this computer; only names and ids that you confirm are sent."
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
        <Button onClick={() => void open(pasted, 'The pasted text', null)}>Read the columns</Button>
        <Field label="or open a CSV or TSV file">
          {(control) => (
            <FileInput
              control={control}
              accept=".csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain"
              onFile={(file) => void openFile(file)}
            />
          )}
        </Field>
        <StatusLine>{said}</StatusLine>
      </div>
      {table === null ? null : (
        <>
          {table.note === null ? null : <Notice tone="caution" title={table.note} />}
          <ColumnChoice
            columns={columns}
            mapping={table.mapping}
            onChange={(mapping) => onTable({ ...table, mapping })}
          />
          <RowTable
            rows={rowsOfTable(table.rows, table.mapping, table.corrections)}
            source={`${table.source}, column ${nameLabel ?? ''}`}
            onCorrect={(rowNumber, name) =>
              onTable({
                ...table,
                corrections: new Map(table.corrections).set(rowNumber, name),
              })
            }
          />
        </>
      )}
    </div>
  );
}
