import { describe, expect, test } from 'vitest';
import {
  brightnessInWords,
  fistsInWords,
  handPosition,
  positionInWords,
  roundedAzimuthDeg,
} from './position-words';

describe('a direction as hand and fist tell it', () => {
  test.each([
    [180, 40, 'four fists up, above the south signpost'],
    [200, 20, 'two fists up, two fists right of the south signpost'],
    [125, 34, 'three and a half fists up, one fist left of the south-east signpost'],
    [359, 9, 'one fist up, above the north signpost'],
    [350, 3, 'half a fist up, one fist left of the north signpost'],
    [77, 88, 'almost straight up'],
  ])('azimuth %d°, altitude %d°', (azimuth, altitude, words) => {
    expect(positionInWords(azimuth, altitude)).toBe(words);
  });

  test('the nearest signpost is found across north', () => {
    expect(handPosition(340, 10).signpost.word).toBe('north');
    expect(handPosition(337, 10).signpost.word).toBe('north-west');
  });

  test('all directions are within two and a half fists of a signpost', () => {
    for (let azimuth = 0; azimuth < 360; azimuth += 1) {
      expect(Math.abs(handPosition(azimuth, 30).fistsRight)).toBeLessThanOrEqual(2.5);
    }
  });

  test('azimuths are rounded to 5° and 360° reads 0°', () => {
    expect(roundedAzimuthDeg(357.6)).toBe(0);
    expect(roundedAzimuthDeg(132.4)).toBe(130);
  });

  test('less than half a fist is said as such', () => {
    expect(fistsInWords(0)).toBe('less than half a fist');
    expect(fistsInWords(-1.5)).toBe('one and a half fists');
  });
});

test('brightness has a plain word at each half magnitude', () => {
  expect([-2, 0, 1, 2, 3, 4].map(brightnessInWords)).toEqual([
    'brighter than any star',
    'very bright',
    'bright',
    'medium bright',
    'faint',
    'very faint',
  ]);
});
