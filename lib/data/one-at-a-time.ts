import type { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3';
import { givesWay } from './in-turns';

type Connection = Awaited<ReturnType<PrismaBetterSQLite3['connect']>>;

/**
 * SQLite has one connection here, and what is sent over it while a transaction is open takes part in
 * that transaction: it would see what is not yet committed and be lost when it is rolled back. So
 * everything outside the transaction waits its turn. Inside `$transaction(async (transaction) => …)`
 * use `transaction` alone: a query through the client itself would wait for its own end.
 *
 * SQLite answers without ever leaving the thread, so a page of many queries would hold the process from
 * the first to the last. Between them the others get their turn, and what is ready of a page is sent.
 */
export function oneAtATime(connection: Connection): Connection {
  let last = Promise.resolve();
  const pause = givesWay();
  const turn = async (): Promise<() => void> => {
    const before = last;
    let end: () => void = () => undefined;
    last = new Promise<void>((resolve) => {
      end = resolve;
    });
    await before;
    await pause();
    return end;
  };
  const inTurn = async <T>(work: () => Promise<T>): Promise<T> => {
    const end = await turn();
    try {
      return await work();
    } finally {
      end();
    }
  };

  return {
    provider: connection.provider,
    adapterName: connection.adapterName,
    queryRaw: (query) => inTurn(() => connection.queryRaw(query)),
    executeRaw: (query) => inTurn(() => connection.executeRaw(query)),
    executeScript: (script) => inTurn(() => connection.executeScript(script)),
    dispose: () => connection.dispose(),
    async startTransaction(isolationLevel) {
      const end = await turn();
      try {
        const transaction = await connection.startTransaction(isolationLevel);
        const commit = transaction.commit.bind(transaction);
        const rollback = transaction.rollback.bind(transaction);
        transaction.commit = () => commit().finally(end);
        transaction.rollback = () => rollback().finally(end);
        return transaction;
      } catch (error) {
        end();
        throw error;
      }
    },
  };
}
