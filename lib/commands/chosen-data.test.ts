import { expect, test } from 'vitest';
import { readCommandLine } from './chosen-data';

const backup = { command: 'npm run backup', flags: [], word: 'the folder to copy into' };
const purge = { command: 'npm run purge', flags: ['yes'], word: null };

test('the class’s data and a folder are read, in either order', () => {
  for (const args of [
    ['--school', 'safe place'],
    ['safe place', '--school'],
  ])
    expect(readCommandLine(args, backup)).toEqual({
      ok: true,
      value: { given: new Set(['school']), word: 'safe place' },
    });
  expect(readCommandLine([], backup)).toEqual({
    ok: true,
    value: { given: new Set(), word: null },
  });
});

test.each([
  [backup, ['--demo'], '--demo is no option of npm run backup: the demonstration is meant without'],
  [backup, ['--all'], '--all is no option of npm run backup: it knows --school.'],
  [backup, ['-x'], '-x is no option'],
  [purge, ['--demo', '--yes'], '--demo is no option of npm run purge'],
  [purge, ['yes'], 'can make nothing of “yes”'],
  [purge, ['--yes=no'], '--yes stands alone'],
  [backup, ['safe', 'place'], 'got “safe” and “place”'],
] as const)('%o with %o is refused in words, and nothing is done', (line, args, words) => {
  const read = readCommandLine(args, line);
  expect(read).toMatchObject({ ok: false, problem: { code: 'command-line' } });
  const message = read.ok ? '' : read.problem.message;
  expect(message).toContain(words);
  expect(message).toMatch(/^Nothing was done\. /);
});
