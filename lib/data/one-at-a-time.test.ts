import type { PrismaBetterSQLite3 } from '@prisma/adapter-better-sqlite3';
import { setImmediate } from 'node:timers/promises';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { oneAtATime } from './one-at-a-time';

type Connection = Awaited<ReturnType<PrismaBetterSQLite3['connect']>>;
type Query = Parameters<Connection['queryRaw']>[0];

/** A connection that notes what is asked of it; every query takes no time by the clock unless told. */
function noted({ begins = true }: { begins?: boolean } = {}) {
  const asked: string[] = [];
  const end = (word: string) => () => {
    asked.push(word);
    return Promise.resolve();
  };
  const connection = {
    provider: 'sqlite',
    adapterName: 'noted',
    queryRaw: ({ sql }: Query) => {
      asked.push(sql);
      return Promise.resolve({ columnNames: [], columnTypes: [], rows: [] });
    },
    startTransaction: () => {
      if (!begins) return Promise.reject(new Error('no more room'));
      asked.push('begin');
      return Promise.resolve({ commit: end('commit'), rollback: end('rollback') });
    },
  } as unknown as Connection;
  return { asked, line: oneAtATime(connection) };
}
const query = (sql: string): Query => ({ sql, args: [], argTypes: [] });

afterEach(() => {
  vi.restoreAllMocks();
});

describe('what is sent over the one connection', () => {
  test.each(['commit', 'rollback'] as const)(
    'waits while a transaction is open, until its %s',
    async (word) => {
      const { asked, line } = noted();
      const transaction = await line.startTransaction();
      const waiting = line.queryRaw(query('select'));
      await setImmediate();
      await setImmediate();
      expect(asked).toEqual(['begin']);
      await transaction[word]();
      await waiting;
      expect(asked).toEqual(['begin', word, 'select']);
    },
  );

  test('goes on after a transaction that could not begin', async () => {
    const { asked, line } = noted({ begins: false });
    await expect(line.startTransaction()).rejects.toThrow('no more room');
    await line.queryRaw(query('select'));
    expect(asked).toEqual(['select']);
  });

  test('keeps its order, and lets others have their turn in between when it takes long', async () => {
    // A millisecond a query.
    const clock = vi.spyOn(performance, 'now').mockReturnValue(0);
    const { asked, line } = noted();
    clock.mockImplementation(() => asked.length);
    const turns: number[] = [];
    const other = (async () => {
      for (let turn = 0; turn < 5; turn += 1) {
        await setImmediate();
        turns.push(asked.length);
      }
    })();
    const sql = Array.from({ length: 60 }, (_, index) => `select ${index}`);
    await Promise.all(sql.map((one) => line.queryRaw(query(one))));
    await other;
    expect(asked).toEqual(sql);
    expect(turns.some((at) => at > 0 && at < sql.length)).toBe(true);
    // Not at each of sixty: nobody waits sixty turns for one page.
    expect(new Set(turns.filter((at) => at < sql.length)).size).toBeLessThan(6);
  });
});
