import { z } from 'zod';

/** Line breaks and control characters have no place in a name that is printed on cards and lists. */
const oneLine = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();

export const nameSchema = (what: string, longest: number) =>
  z
    .string()
    .max(1000)
    .transform(oneLine)
    .pipe(
      z
        .string()
        .min(1, `${what} is missing.`)
        .max(longest, `${what} is longer than ${longest} characters.`),
    );

export const firstMessage = (error: z.ZodError): string =>
  error.issues[0]?.message ?? 'This cannot be read.';

/** The field of the first issue, as a dotted path; undefined where the whole input is meant. */
export const firstField = (error: z.ZodError): string | undefined => {
  const path = error.issues[0]?.path.join('.');
  return path === '' ? undefined : path;
};

/** A teacher's new password. Length alone counts: no rule about the kinds of characters. */
export const newPasswordSchema = z
  .string()
  .min(12, 'Use at least 12 characters: a short sentence is easy to remember.')
  .max(512, 'Use at most 512 characters.');
