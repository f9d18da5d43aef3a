import { describe, expect, it } from 'vitest';
import { readNumber } from './read-number';

describe('a typed number', () => {
  it.each([
    ['12,5', 'degrees', 12.5],
    [' 12.5° ', 'degrees', 12.5],
    ['−3', 'degrees', -3],
    ['-3 °C', 'degrees Celsius', -3],
    ['8°', 'degrees Celsius', 8],
    ['35 degrees', 'degrees', 35],
    ['1 Degree', 'degrees', 1],
    ['+7', 'degrees', 7],
    ['56×', 'times', 56],
    ['56 x', 'times', 56],
    ['9 mm', 'millimetres', 9],
    ['9 millimetres', 'mm', 9],
    ['4 mm of bubble', 'millimetres of bubble', 4],
    ['4 millimetres', 'millimetres of bubble', 4],
    ['300 metres', 'm', 300],
    ['2.5 kilos', 'kg', 2.5],
    ['4 h', 'hours', 4],
    ['12 V', 'volts', 12],
    ['2 amps.', 'amperes', 2],
    ['18′', 'arcminutes', 18],
    ["18'", 'arcminutes', 18],
    ['25 min', 'minutes', 25],
    ['40 per  cent', 'per cent', 40],
    ['40%', 'per cent', 40],
    ['1 turn', 'turns', 1],
    ['2 mirrors', 'mirrors', 2],
    ['80 of 100', 'targets of 100', 80],
    ['80 targets', 'targets of 100', 80],
    ['0,125', 'degrees', 0.125],
    ['5625', 'times', 5625],
    ['5.625', 'times', 5.625],
    ['1234,5', 'times', 1234.5],
  ])('is read from %j in %s as %f', (typed, unit, value) => {
    expect(readNumber(typed, unit)).toBe(value);
  });

  it.each(['', 'about 35', '1e3', '0x10', '3 5', '--3', 'NaN', 'Infinity', '.', ',', '4 feet'])(
    'is not read from %j',
    (typed) => {
      expect(readNumber(typed, 'degrees')).toBeNull();
    },
  );

  it.each([
    ['35 m', 'millimetres'],
    ['35 mm', 'm'],
    ['35 cm', 'millimetres'],
    ['18°', 'arcminutes'],
    ['18′', 'minutes'],
    ['2 h', 'minutes'],
    ['12 A', 'volts'],
    ['12 °C', 'degrees'],
    ['5 %', 'degrees'],
    ['4 of bubbles', 'millimetres of bubble'],
  ])('is not read from %j, in another unit than %s', (typed, unit) => {
    expect(readNumber(typed, unit)).toBeNull();
  });

  it.each(['5,625', '−5,625', '+12,500×', '1,234,567', '5 625'])(
    'is not read from %j, which may be thousands',
    (typed) => {
      expect(readNumber(typed, 'times')).toBeNull();
    },
  );
});
