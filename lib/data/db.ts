import 'server-only';
import { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3';
import { mkdirSync } from 'node:fs';
import { databaseFile, env } from './env';
import { PrismaClient } from './generated/client';
import { oneAtATime } from './one-at-a-time';

/**
 * Sets what SQLite forgets from one connection to the next. WAL lets pages be read while an attempt
 * is saved; NORMAL is safe with WAL (a power cut may lose the last commits, never the file).
 */
class TunedSqlite extends PrismaBetterSQLite3 {
  override async connect() {
    const connection = await super.connect();
    await connection.executeScript(
      'PRAGMA journal_mode = WAL; PRAGMA foreign_keys = ON; PRAGMA busy_timeout = 5000; PRAGMA synchronous = NORMAL;',
    );
    return oneAtATime(connection);
  }
}

export const openDatabase = (file: string): PrismaClient =>
  new PrismaClient({
    adapter: new TunedSqlite({ url: `file:${file}` }),
    // A class that submits together waits in line rather than being turned away.
    transactionOptions: { maxWait: 15_000, timeout: 15_000 },
  });

declare global {
  // A development server reloads modules; the connection outlives them.
  var duskbenchDatabase: PrismaClient | undefined;
}

/** The one client of this process. */
export function db(): PrismaClient {
  if (globalThis.duskbenchDatabase === undefined) {
    const { dataFolder } = env();
    mkdirSync(dataFolder, { recursive: true });
    globalThis.duskbenchDatabase = openDatabase(databaseFile(dataFolder));
  }
  return globalThis.duskbenchDatabase;
}

/** A client or the inside of a transaction. */
export type Transaction = Parameters<Parameters<PrismaClient['$transaction']>[0]>[0];
