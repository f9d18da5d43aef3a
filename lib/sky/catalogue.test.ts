import { describe, expect, it } from 'vitest';
import { decodeCatalogue } from './catalogue';

const compact = {
  format: 1,
  version: 'abc',
  constellations: ['And', 'Cyg'],
  hip: [11, 22],
  hr: [7, 0],
  ra: [1012871554, 1],
  dec: [-167161159, 899999999],
  pmRa: [-54601, 0],
  pmDec: [-122308, 5],
  magnitude: [-144, 600],
  colourIndex: [1, null],
  constellation: [1, 0],
  bayer: 'α¹,',
  names: [[0, 'First']],
  variables: [1],
  figures: [[1, [[0, 1, 0]]]],
};

describe('the compact catalogue', () => {
  it('is read back in degrees, milliarcseconds and magnitudes', () => {
    expect(decodeCatalogue(compact)).toEqual({
      version: 'abc',
      stars: [
        {
          hip: 11,
          hr: 7,
          raDeg: 101.2871554,
          decDeg: -16.7161159,
          pmRaMasYr: -546.01,
          pmDecMasYr: -1223.08,
          magnitude: -1.44,
          colourIndex: 0.01,
          name: 'First',
          bayer: 'α¹',
          constellation: 'Cyg',
          largeAmplitudeVariable: false,
        },
        {
          hip: 22,
          hr: null,
          raDeg: 1e-7,
          decDeg: 89.9999999,
          pmRaMasYr: 0,
          pmDecMasYr: 0.05,
          magnitude: 6,
          colourIndex: null,
          name: null,
          bayer: '',
          constellation: 'And',
          largeAmplitudeVariable: true,
        },
      ],
      figures: [{ constellation: 'Cyg', lines: [[0, 1, 0]] }],
    });
  });

  it.each([
    ['no object', null, 'catalogue'],
    ['another format', { ...compact, format: 2 }, 'format 1'],
    ['a short column', { ...compact, dec: [1] }, 'dec: 1 entries, 2 expected'],
    ['a text among numbers', { ...compact, pmRa: [1, '2'] }, 'pmRa: not a whole number'],
    ['a fraction', { ...compact, magnitude: [1, 2.5] }, 'magnitude: not a whole number'],
    ['no version', { ...compact, version: undefined }, 'version: not a text'],
    ['a constellation out of range', { ...compact, constellation: [2, 0] }, 'constellation: 2'],
    ['a figure to nowhere', { ...compact, figures: [[0, [[0, 2]]]] }, 'figures: 2'],
    ['too few letters', { ...compact, bayer: 'α' }, 'bayer: 1 entries'],
    ['a colour that is none', { ...compact, colourIndex: [1, undefined] }, 'colourIndex'],
  ])('with %s is refused, and the column named', (_, json, message) => {
    expect(() => decodeCatalogue(json)).toThrow(TypeError);
    expect(() => decodeCatalogue(json)).toThrow(message);
  });
});
