/** 32 signs, none of which looks like another in print: no I, O, 0 or 1. Eight of them are 40 bits. */
export const classCodeAlphabet = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const codeLength = 8;

/** `bytes`: eight random ones. 256 is a multiple of 32, so every sign is equally likely. */
export function classCodeFrom(bytes: Uint8Array): string {
  if (bytes.length !== codeLength) throw new RangeError('a class code needs eight random bytes');
  return Array.from(bytes, (byte) => classCodeAlphabet.charAt(byte % 32)).join('');
}

/** As it is printed and read aloud: "ABCD-EFGH". */
export const formatClassCode = (code: string): string => `${code.slice(0, 4)}-${code.slice(4)}`;

/** What was typed, in the one form that is stored: capitals, no spaces or dashes. */
export const normaliseClassCode = (typed: string): string =>
  typed
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[\s\-–—_.]/g, '');

/** What was typed, in the one form that is hashed: "apple-river-stone". */
export const normaliseCardWords = (typed: string): string =>
  typed
    .normalize('NFKC')
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== '')
    .join('-');
