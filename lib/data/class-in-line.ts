import 'server-only';
import type { Transaction } from './db';

/**
 * Makes whoever else would change the class wait until this transaction is through: called first in one
 * that looks before it writes, so that what it saw still holds when it writes. By a write that changes
 * nothing, which locks the row on PostgreSQL and the file on SQLite, between processes too.
 */
export async function holdClass(transaction: Transaction, classId: string): Promise<void> {
  await transaction.class.updateMany({
    where: { id: classId },
    data: { nextCardNumber: { increment: 0 } },
  });
}
