import { expect, test } from 'vitest';
import { readTypedLevel } from './typed-level';

test.each([
  ['3', { kind: 'level', level: 3, gates: [], prompts: 0 }],
  [' 4 ', { kind: 'level', level: 4, gates: [], prompts: 0 }],
  ['2b', { kind: 'level', level: 2, gates: ['fingers-in-legs'], prompts: 0 }],
  ['2BA', { kind: 'level', level: 2, gates: ['leg-left-open', 'fingers-in-legs'], prompts: 0 }],
  ['3//', { kind: 'level', level: 3, gates: [], prompts: 2 }],
  ['1 b ///', { kind: 'level', level: 1, gates: ['fingers-in-legs'], prompts: 3 }],
  ['', { kind: 'nothing' }],
  ['5', { kind: 'unclear' }],
  ['b', { kind: 'unclear' }],
  ['33', { kind: 'unclear' }],
  ['3c', { kind: 'unclear' }],
  ['3aa', { kind: 'unclear' }],
  ['3/b', { kind: 'unclear' }],
  ['/', { kind: 'unclear' }],
])('“%s” under levelling, which has two gates', (text, read) => {
  expect(readTypedLevel(text, 'level')).toEqual(read);
});
