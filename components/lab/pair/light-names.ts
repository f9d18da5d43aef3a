import type { SkyObjectId } from '@/lib/pointing/answer-key';
import { mergedStarOf } from '@/lib/pointing/merged-stars';
import type { StarCatalogue } from '@/lib/sky/catalogue';

const planetNames = {
  mercury: 'Mercury',
  venus: 'Venus',
  mars: 'Mars',
  jupiter: 'Jupiter',
  saturn: 'Saturn',
} as const;

/** A star's name, or letter and constellation; "HIP 12345" where it has neither. */
export const starName = (catalogue: StarCatalogue, hip: number): string =>
  mergedStarOf(catalogue, hip)?.name ?? `HIP ${hip}`;

export const hipOf = (id: SkyObjectId): number | null =>
  id.startsWith('hip-') ? Number(id.slice(4)) : null;

export function lightName(catalogue: StarCatalogue, id: SkyObjectId): string {
  for (const [planet, name] of Object.entries(planetNames)) if (planet === id) return name;
  const hip = hipOf(id);
  return hip === null ? id : starName(catalogue, hip);
}
