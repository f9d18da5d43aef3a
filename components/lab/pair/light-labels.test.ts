import { expect, test } from 'vitest';
import type { SkyLight } from '@/components/sky/sky-lights';
import { labelledLights } from './light-labels';

const light = (hip: number, seenAs: number, azimuthDeg: number): SkyLight => ({
  id: `hip-${hip}`,
  seenAs,
  azimuthDeg,
  altitudeDeg: 40,
  clarity: 1,
  colourIndex: null,
  veiled: false,
  twinkles: true,
  star: null,
  planet: null,
});

test('the faintest star that may serve is listed, and what could be taken for it beside it', () => {
  // As low as 20° the air takes half a magnitude; a look-alike is at most 0.7 fainter still.
  for (const faintest of [1, 2.5, 4.5]) {
    const star = light(1, faintest + 0.5, 90);
    const lookAlike = light(2, faintest + 0.5 + 0.7, 92);
    const listed = labelledLights([star, lookAlike], faintest);
    expect(listed.map(({ id, listed: where }) => [id, where])).toEqual([
      ['hip-1', 'first'],
      ['hip-2', 'neighbour'],
    ]);
  }
});

test('letters follow one another in the list that shows first', () => {
  const listed = labelledLights([light(1, 1, 200), light(2, 4, 90), light(3, 2, 10)], 2.5);
  expect(listed.map(({ id, letter }) => `${letter} ${id}`)).toEqual([
    'A hip-3',
    'B hip-1',
    'C hip-2',
  ]);
});
