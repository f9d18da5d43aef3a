import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { fingerprint } from './build.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'duskbench-sources-'));
const here = path.relative(root, folder);
const write = (name: string, text: string) => {
  writeFileSync(path.join(folder, name), text);
};
afterAll(() => {
  rmSync(folder, { recursive: true });
});

test('a change of text, of a name or of the set of files changes the fingerprint', () => {
  write('a.ts', 'one');
  const first = fingerprint([here]);
  expect(fingerprint([here])).toBe(first);
  write('a.ts', 'two');
  const second = fingerprint([here]);
  write('b.ts', '');
  const third = fingerprint([here]);
  expect(new Set([first, second, third]).size).toBe(3);
});

test('a test file beside the code is no source of the build', () => {
  const before = fingerprint([here]);
  write('a.test.ts', 'expect(1).toBe(1)');
  expect(fingerprint([here])).toBe(before);
});

test('what does not exist counts as nothing', () => {
  expect(fingerprint([path.join(here, 'nowhere')])).toBe(fingerprint([]));
});
