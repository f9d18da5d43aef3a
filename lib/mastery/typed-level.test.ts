import { expect, test } from 'vitest';
import { readTypedLevel } from './typed-level';

test.each([
  ['3', { kind: 'level', level: 3, gates: [] }],
  [' 4 ', { kind: 'level', level: 4, gates: [] }],
  ['2b', { kind: 'level', level: 2, gates: ['fingers-in-legs'] }],
  ['2BA', { kind: 'level', level: 2, gates: ['leg-left-open', 'fingers-in-legs'] }],
  ['', { kind: 'nothing' }],
  ['5', { kind: 'unclear' }],
  ['b', { kind: 'unclear' }],
  ['33', { kind: 'unclear' }],
  ['3c', { kind: 'unclear' }],
  ['3aa', { kind: 'unclear' }],
])('“%s” under levelling, which has two gates', (text, read) => {
  expect(readTypedLevel(text, 'level')).toEqual(read);
});
