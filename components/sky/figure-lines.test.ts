import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { mergedStars } from '@/lib/pointing/merged-stars';
import { decodeCatalogue } from '@/lib/sky/catalogue';
import { skyFrameAt } from '@/lib/sky/frame-at';
import { figureLines } from './figure-lines';
import { skyLights } from './sky-lights';

const catalogue = decodeCatalogue(
  JSON.parse(readFileSync(path.join(process.cwd(), 'content/stars/catalogue.json'), 'utf8')),
);
const frame = skyFrameAt({
  instant: '2026-12-05T19:30:00Z',
  place: { latitudeDeg: 51.5, longitudeDeg: -0.1, elevationM: 30 },
});
const lightsDownTo = (nakedEyeLimit: number) =>
  skyLights({ catalogue, frame, horizon: [], clouds: [], nakedEyeLimit, extinction: 0.2 });

test('the fewer stars show, the fewer lines are drawn, and without stars none', () => {
  const all = figureLines(
    catalogue,
    frame,
    mergedStars(catalogue).map((star) => ({ star })),
  );
  const dark = figureLines(catalogue, frame, lightsDownTo(6));
  const bright = figureLines(catalogue, frame, lightsDownTo(3));
  expect(dark.length).toBeLessThan(all.length);
  expect(bright.length).toBeLessThan(dark.length);
  expect(bright.length).toBeGreaterThan(0);
  expect(figureLines(catalogue, frame, [])).toEqual([]);
});

test('no line reaches below the horizon where only risen stars show', () => {
  const ends = figureLines(catalogue, frame, lightsDownTo(6));
  // The second of three coordinates points up.
  expect(ends.filter((_, index) => index % 3 === 1).every((up) => up > 0)).toBe(true);
});
