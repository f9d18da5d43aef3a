/** A seeded source of randomness: the same seed gives the same numbers on every machine. */
export type Random = {
  /** Evenly in [0, 1). */
  next: () => number;
  between: (low: number, high: number) => number;
  /** Whole, both ends included. */
  integer: (low: number, high: number) => number;
  /** Undefined for an empty list only. */
  pick: <T>(items: readonly T[]) => T | undefined;
  /** A shuffled copy (Fisher–Yates). */
  shuffle: <T>(items: readonly T[]) => T[];
};

/**
 * Source of the generator: SFC32 by Chris Doty-Humphrey (PractRand), a small chaotic generator with a
 * counter, public domain; from memory. The seed text (hex from an HMAC, or any other) is spread over
 * its state by 32-bit FNV-1a with four starts and a final mix; bytes given as numbers do too.
 */
export function randomFrom(seed: string | Uint8Array): Random {
  const bytes =
    typeof seed === 'string' ? Array.from(seed, (c) => c.codePointAt(0) ?? 0) : [...seed];
  let [a, b, c] = [hash(bytes, 0x811c9dc5), hash(bytes, 0x9e3779b9), hash(bytes, 0x85ebca6b)];
  let counter = hash(bytes, 0xc2b2ae35) | 1;
  const word = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    c |= 0;
    return sum >>> 0;
  };
  for (let warmUp = 0; warmUp < 16; warmUp++) word();

  const next = () => word() / 2 ** 32;
  const integer = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  return {
    next,
    integer,
    between: (low, high) => low + next() * (high - low),
    pick: (items) => items[Math.floor(next() * items.length)],
    shuffle: (items) => {
      const left = [...items];
      const order: typeof left = [];
      while (left.length > 0) order.push(...left.splice(Math.floor(next() * left.length), 1));
      return order;
    },
  };
}

function hash(bytes: readonly number[], start: number): number {
  let h = start;
  for (const byte of bytes) h = Math.imul(h ^ byte, 0x01000193);
  h ^= h >>> 16;
  h = Math.imul(h, 0x85ebca6b);
  h ^= h >>> 13;
  h = Math.imul(h, 0xc2b2ae35);
  return h ^ (h >>> 16);
}
