import { onDisc } from '@/components/sky/all-sky';
import { skyLights } from '@/components/sky/sky-lights';
import { brightnessInWords, positionInWords } from '@/components/sky/position-words';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';

/** A star that one can see and name; good and poor choices stand side by side. */
export type PlannedStar = {
  hip: number;
  name: string;
  azimuthDeg: number;
  altitudeDeg: number;
  /** "four fists up, two fists right of the south-east signpost" */
  where: string;
  brightness: string;
  seenAs: number;
};

/** Every star with a name that can be seen and that the mount may list, by name. */
export function starsToPlanWith(
  { scenario, frame, nakedEyeLimit }: DressRehearsalVariant,
  catalogue: StarCatalogue,
): PlannedStar[] {
  const { horizon, clouds, sky, settings } = scenario;
  return skyLights({
    catalogue,
    frame,
    horizon,
    clouds,
    nakedEyeLimit,
    extinction: sky.extinction,
  })
    .flatMap(({ star, azimuthDeg, altitudeDeg, seenAs }) => {
      if (star === null || star.magnitude > settings.faintestMagnitude) return [];
      if ((catalogue.stars[star.index]?.name ?? null) === null) return [];
      return [
        {
          hip: star.hip,
          name: star.name,
          azimuthDeg,
          altitudeDeg,
          where: positionInWords(azimuthDeg, altitudeDeg),
          brightness: brightnessInWords(seenAs),
          seenAs,
        },
      ];
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** What a name takes of a disc of this radius, with room about it. */
const disc = 200;
const nameSize = { width: 84, height: 19 };

/** The stars whose names have room on a picture of the sky: the brighter one first. */
export function namedOnPaper(
  stars: readonly PlannedStar[],
  always: readonly (PlannedStar | null)[],
): PlannedStar[] {
  const kept = always.filter((star) => star !== null);
  for (const star of [...stars].sort((a, b) => a.seenAs - b.seenAs)) {
    const here = onDisc(star, disc);
    const free = kept.every((one) => {
      const there = onDisc(one, disc);
      return (
        Math.abs(there.x - here.x) > nameSize.width || Math.abs(there.y - here.y) > nameSize.height
      );
    });
    if (free) kept.push(star);
  }
  return kept;
}
