import { Unzip, UnzipInflate } from 'fflate';
import type { ProblemList } from './file-problem';

/**
 * What a class list could need, by far. The bytes are counted as they come out, never taken from what
 * the zip says of itself, so that a small file that swells is stopped (OWASP ASVS 5.0, 5.2.x).
 */
export const largestZipBytes = 10 * 1024 * 1024;
export const mostInflatedBytes = 20 * 1024 * 1024;
export const mostZipEntries = 200;
/** A step of deflate can swell a thousandfold: 4 kB at a time keep what is in memory small. */
const stepBytes = 4096;

/**
 * The wanted files at the root of a zip. Others, and any in a folder or with a path that leads out of
 * it, are never unpacked. null when the zip cannot be read; `problems` then say why.
 */
export function openZip(
  zipName: string,
  bytes: Uint8Array,
  wanted: ReadonlySet<string>,
  problems: ProblemList,
): { files: ReadonlyMap<string, Uint8Array>; folders: ReadonlySet<string> } | null {
  const refuse = (message: string): null => {
    problems.add(zipName, null, null, message);
    return null;
  };
  if (bytes.length > largestZipBytes) {
    return refuse(
      `${megabytes(bytes.length)} MB; at most ${megabytes(largestZipBytes)} MB are read. Ask for an export of fewer classes.`,
    );
  }
  if (!(bytes[0] === 0x50 && bytes[1] === 0x4b)) {
    return refuse(
      'this is not a zip file. Choose the zip as your school’s office exports it, without unpacking it.',
    );
  }

  const files = new Map<string, Uint8Array>();
  const folders = new Set<string>();
  const unfinished = new Set<string>();
  const damaged = new Set<string>();
  let entries = 0;
  let inflated = 0;
  const stop: { why: string | null } = { why: null };

  const unzip = new Unzip((entry) => {
    entries += 1;
    if (entries > mostZipEntries) {
      stop.why = `it holds more than ${String(mostZipEntries)} files. A OneRoster zip has about twenty; choose another.`;
    }
    const parts = entry.name.split('/');
    if (parts.length > 1 && wanted.has(parts.at(-1) ?? '')) folders.add(parts[0] ?? '');
    if (stop.why !== null || !wanted.has(entry.name)) return;
    if (files.has(entry.name) || unfinished.has(entry.name)) {
      stop.why = `${entry.name} is in it twice, and which one counts cannot be known. Export it again.`;
      return;
    }
    unfinished.add(entry.name);
    const chunks: Uint8Array[] = [];
    entry.ondata = (error, chunk, final) => {
      if (error !== null) {
        damaged.add(entry.name);
        return;
      }
      inflated += chunk.length;
      if (inflated > mostInflatedBytes) {
        stop.why = `unpacked it is larger than ${megabytes(mostInflatedBytes)} MB (reached in ${entry.name}), which no class list is. Nothing of it was kept. Ask for an export of fewer classes.`;
        return;
      }
      chunks.push(chunk);
      if (!final) return;
      files.set(entry.name, joined(chunks));
      unfinished.delete(entry.name);
    };
    entry.start();
  });
  unzip.register(UnzipInflate);

  try {
    for (let from = 0; from < bytes.length && stop.why === null; from += stepBytes) {
      unzip.push(bytes.subarray(from, from + stepBytes), from + stepBytes >= bytes.length);
    }
  } catch {
    // fflate throws on bytes that are no deflate, as a password or a broken download leaves them.
    return refuse(
      'the zip is damaged or locked with a password. Export it again, without a password.',
    );
  }
  if (stop.why !== null) return refuse(stop.why);
  const broken = [...damaged, ...unfinished][0];
  if (broken !== undefined) {
    return refuse(`${broken} in it is damaged or ends too early. Export the zip again.`);
  }
  return { files, folders };
}

const megabytes = (bytes: number): string => String(Math.ceil(bytes / (1024 * 1024)));

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
