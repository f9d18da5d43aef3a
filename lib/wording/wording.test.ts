import { describe, expect, test } from 'vitest';
import { capitalised, lowerFirst } from './capital';
import { compassPoint, windOf } from './compass-points';
import { countWord, counted } from './count-word';
import { inFists } from './fists';
import { groupWithTelescope, telescopeToName } from './group-name';

test('only the first letter changes', () => {
  expect(capitalised('the Moon')).toBe('The Moon');
  expect(lowerFirst('The Moon')).toBe('the Moon');
  expect([capitalised(''), lowerFirst('')]).toEqual(['', '']);
});

// The division of the compass card into 16 points of 22.5°: common practice, no source.
describe('points of the compass', () => {
  test.each([
    [0, 'north', 'north'],
    [359, 'north', 'north'],
    [-1, 'north', 'north'],
    [22.5, 'north-north-east', 'north-east'],
    [135, 'south-east', 'south-east'],
    [291, 'west-north-west', 'west'],
    [292.6, 'west-north-west', 'north-west'],
    [720 + 180, 'south', 'south'],
  ])('%s° is %s of sixteen and %s of eight', (azimuthDeg, ofSixteen, ofEight) => {
    expect(compassPoint(azimuthDeg)).toBe(ofSixteen);
    expect(windOf(azimuthDeg)).toBe(ofEight);
  });
});

test.each([
  [4, 'half a fist'],
  [10, '1 fist'],
  [15, '1½ fists'],
  [33, '3½ fists'],
  [40, '4 fists'],
])('%s° is %s', (angleDeg, words) => {
  expect(inFists(angleDeg)).toBe(words);
});

// English number words to twelve, figures beyond: a common rule of style, no source.
test('counts are told in English words to twelve, whatever the language of the computer', () => {
  expect([0, 1, 2, 12, 13, 2.5].map(countWord)).toEqual([
    'no',
    'one',
    'two',
    'twelve',
    '13',
    '2.5',
  ]);
  expect([1, 2, 40].map((count) => counted(count, 'attempt', 'attempts'))).toEqual([
    'one attempt',
    'two attempts',
    '40 attempts',
  ]);
});

test.each([
  ['Heron', 'Heron', 'Heron'],
  ['heron', 'Heron', 'heron'],
  ['Team Heron!', 'Heron', 'Team Heron!'],
  ['Red', 'Heron', 'Red (Heron)'],
  ['Night owls', 'Owl', 'Night owls (Owl)'],
  ['Red', null, 'Red'],
])('the group %s at the telescope %s is called %s', (group, telescope, name) => {
  expect(groupWithTelescope(group, telescope)).toBe(name);
  expect(telescopeToName(group, telescope)).toBe(name === group ? null : telescope);
});
