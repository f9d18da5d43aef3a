import 'server-only';
import Database from 'better-sqlite3';
import type { Result } from './result';

/** All that is done to the database as a file: what another database would do in its own way. */

/**
 * Copies the database, changes not yet folded into the main file included, while it may be in use,
 * and reads the copy through to see that it is whole.
 *
 * @param to A file that does not exist yet.
 */
export async function copyDatabase(file: string, to: string): Promise<Result<{ bytes: number }>> {
  const source = new Database(file, { readonly: true, fileMustExist: true });
  try {
    await source.backup(to);
  } finally {
    source.close();
  }
  const copy = new Database(to, { fileMustExist: true });
  try {
    // A backup is one file: without this it would open as two beside it.
    copy.pragma('journal_mode = DELETE');
    const verdict = copy.pragma('integrity_check', { simple: true });
    if (verdict !== 'ok') {
      return {
        ok: false,
        problem: { code: 'damaged', message: `The copy is damaged: ${String(verdict)}` },
      };
    }
    const pages = Number(copy.pragma('page_count', { simple: true }));
    return {
      ok: true,
      value: { bytes: pages * Number(copy.pragma('page_size', { simple: true })) },
    };
  } finally {
    copy.close();
  }
}

/** Writes the database anew without the space of deleted rows, in which their content still stands. */
export function compactDatabase(file: string): void {
  const database = new Database(file, { fileMustExist: true, timeout: 10_000 });
  try {
    database.exec('VACUUM');
    database.pragma('wal_checkpoint(TRUNCATE)');
  } finally {
    database.close();
  }
}
