import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { tubeSizes } from './tube-size';

const mmPerUnit = 3;
const kitSchema = z.object({
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  telescope: z.object({ focalLengthMm: z.number(), apertureMm: z.number() }),
});
const kit = (id: string) => {
  const file = path.join(import.meta.dirname, '../../content/kits', `${id}.json`);
  const { tubeType, telescope } = kitSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  const { front, back, radius } = tubeSizes[tubeType];
  return {
    ...telescope,
    lengthMm: (front + back) * mmPerUnit,
    widthMm: 2 * radius * mmPerUnit,
  };
};

test.each(['wren', 'heron', 'owl'])('%s is drawn a little wider than its aperture', (id) => {
  const { widthMm, apertureMm } = kit(id);
  expect(widthMm).toBeGreaterThan(apertureMm);
  expect(widthMm).toBeLessThan(1.3 * apertureMm);
});

test('the open tubes are about as long as their focal length, the folded one far shorter', () => {
  for (const id of ['wren', 'heron']) {
    const { lengthMm, focalLengthMm } = kit(id);
    expect(lengthMm / focalLengthMm).toBeGreaterThan(0.85);
    expect(lengthMm / focalLengthMm).toBeLessThan(1.15);
  }
  const owl = kit('owl');
  expect(owl.lengthMm / owl.focalLengthMm).toBeLessThan(0.3);
});
