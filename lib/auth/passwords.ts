import 'server-only';
import { hash, verify } from '@node-rs/argon2';
import { randomInt } from 'node:crypto';
import { cardWords } from './card-words';

/** OWASP Password Storage Cheat Sheet: argon2id (this library's default kind), 19 MiB, two passes, one lane. */
const cost = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

export const hashSecret = (secret: string): Promise<string> => hash(secret, cost);

let decoy: Promise<string> | undefined;

/**
 * Checks against a decoy where there is no hash, so that an unknown card takes as long as a wrong
 * word and the time tells nothing.
 */
export async function secretMatches(stored: string | null, typed: string): Promise<boolean> {
  decoy ??= hashSecret('a secret that nobody has');
  const matches = await verify(stored ?? (await decoy), typed);
  return stored !== null && matches;
}

function drawWord(): string {
  const word = cardWords[randomInt(cardWords.length)];
  if (word === undefined) throw new Error('the word list has a hole');
  return word;
}

/** Three words, each drawn evenly: "apple-river-stone". */
export const newCardWords = (): string => [drawWord(), drawWord(), drawWord()].join('-');
