import 'server-only';
import { createHash, randomBytes } from 'node:crypto';

/** 256 random bits, fit for an address or a cookie. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** What is stored of a token: whoever reads the database cannot sign in with it. */
export const tokenHashOf = (token: string): string =>
  createHash('sha256').update(token).digest('hex');
