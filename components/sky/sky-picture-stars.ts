import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { placeCatalogue } from '@/lib/sky/star-places';
import { mergedStars } from '@/lib/pointing/merged-stars';

export type SkyPictureStar = { azimuthDeg: number; altitudeDeg: number; magnitude: number };

/** Stars and planets above the level horizon, bright enough to find one's way by on a picture. */
export function skyPictureStars(
  catalogue: StarCatalogue,
  frame: SkyFrame,
  faintestMagnitude = 3.6,
): SkyPictureStar[] {
  const places = placeCatalogue(catalogue, frame);
  const stars: SkyPictureStar[] = [];
  for (const star of mergedStars(catalogue)) {
    const azimuthDeg = places.azimuthDeg[star.index];
    const altitudeDeg = places.altitudeDeg[star.index];
    if (azimuthDeg === undefined || altitudeDeg === undefined) continue;
    if (altitudeDeg > 0 && star.magnitude <= faintestMagnitude) {
      stars.push({ azimuthDeg, altitudeDeg, magnitude: star.magnitude });
    }
  }
  for (const { azimuthDeg, altitudeDeg, magnitude } of frame.planets) {
    if (altitudeDeg > 0 && magnitude <= faintestMagnitude)
      stars.push({ azimuthDeg, altitudeDeg, magnitude });
  }
  return stars;
}
