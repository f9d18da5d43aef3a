import 'server-only';
import { Prisma } from './generated/client';

/** Whether the database refused a row because its unique key is taken (Prisma's P2002). */
export const isUniqueViolation = (error: unknown): boolean =>
  error instanceof Prisma.PrismaClientKnownRequestError && error.code === 'P2002';
