import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeCatalogue } from '../sky/catalogue';
import { brightStars } from './bright-stars';

const catalogue = decodeCatalogue(
  JSON.parse(readFileSync('content/stars/catalogue.json', 'utf8')) as unknown,
);

describe('the bright stars of the bench', () => {
  it('stand where the catalogue has them, to a few hundredths of an arcsecond', () => {
    for (const star of brightStars) {
      const listed = catalogue.stars.find(({ hip }) => hip === star.hip);
      expect(listed).toMatchObject({
        name: star.name,
        magnitude: star.magnitude,
        pmRaMasYr: star.pmRaMasYr,
        pmDecMasYr: star.pmDecMasYr,
      });
      expect(Math.abs((listed?.raDeg ?? NaN) - star.raDeg)).toBeLessThan(0.000_01);
      expect(Math.abs((listed?.decDeg ?? NaN) - star.decDeg)).toBeLessThan(0.000_01);
    }
    expect(brightStars).toHaveLength(52);
  });
});
