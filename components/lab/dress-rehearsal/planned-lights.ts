import { skyLights } from '@/components/sky/sky-lights';
import { brightnessInWords, positionInWords } from '@/components/sky/position-words';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal-variant';

/** A star that one can see and name; good and poor choices stand side by side. */
export type PlannedStar = {
  hip: number;
  name: string;
  azimuthDeg: number;
  altitudeDeg: number;
  /** "four fists up, two fists right of the south-east signpost" */
  where: string;
  brightness: string;
};

/** Every star with a name that can be seen and that the mount may list, by name. */
export function starsToPlanWith(
  { scenario, frame, nakedEyeLimit }: DressRehearsalVariant,
  catalogue: StarCatalogue,
): PlannedStar[] {
  const { horizon, clouds, sky, settings } = scenario;
  return skyLights({
    ...{ catalogue, frame, horizon, clouds, nakedEyeLimit },
    extinction: sky.extinction,
  })
    .flatMap(({ star, azimuthDeg, altitudeDeg, seenAs }) => {
      if (star === null || star.magnitude > settings.faintestMagnitude) return [];
      if ((catalogue.stars[star.index]?.name ?? null) === null) return [];
      return [
        {
          ...{ hip: star.hip, name: star.name, azimuthDeg, altitudeDeg },
          where: positionInWords(azimuthDeg, altitudeDeg),
          brightness: brightnessInWords(seenAs),
        },
      ];
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}
