import { expect, it } from 'vitest';
import { loadCatalogue } from '../content/sky-catalogue';
import { skyFrameAt } from './frame-at';
import { starDirection } from './star-direction';
import { placeCatalogue } from './star-places';

const catalogue = loadCatalogue();
const frame = skyFrameAt({
  instant: '2026-12-06T00:30:00Z',
  place: { latitudeDeg: 45.4, longitudeDeg: -75.7, elevationM: 70 },
});

it('places one star exactly as the whole catalogue does', () => {
  const { directions } = placeCatalogue(catalogue, frame);
  for (const index of [0, 17, 400, catalogue.stars.length - 1]) {
    const hip = catalogue.stars[index]?.hip ?? 0;
    expect(starDirection(catalogue, frame, hip)).toEqual([
      ...directions.subarray(3 * index, 3 * index + 3),
    ]);
  }
});

it('knows no star that is not in the catalogue', () => {
  expect(starDirection(catalogue, frame, 999_999)).toBeNull();
});
