/** 128 random bits in hexadecimal; `randomUUID` is withheld where a school serves over plain http. */
export const newKey = (): string =>
  Array.from(window.crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
