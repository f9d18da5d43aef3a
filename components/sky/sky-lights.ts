import { seenAsMagnitude } from '@/lib/sky/extinction';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { NakedEyePlanet, SkyFrame } from '@/lib/sky/sky-frame';
import { placeCatalogue } from '@/lib/sky/star-places';
import type { CloudPatch, HorizonPoint } from '@/lib/pointing/scenario';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import type { MergedStar } from '@/lib/pointing/merged-stars';
import { mergedStars } from '@/lib/pointing/merged-stars';
import { cloudDimming } from './cloud-dimming';

/** A star or planet that can be seen. To the learner both are lights. */
export type SkyLight = {
  id: SkyObjectId;
  azimuthDeg: number;
  /** Refracted. */
  altitudeDeg: number;
  /** The magnitude it looks, through the air and any cloud. */
  seenAs: number;
  /** 1 clearly seen, falling to 0 at the naked-eye limit. */
  clarity: number;
  /** B−V, null where unknown. */
  colourIndex: number | null;
  veiled: boolean;
  /** Stars twinkle, planets hardly do. */
  twinkles: boolean;
  /** Components that the eye cannot part are one star. */
  star: MergedStar | null;
  planet: NakedEyePlanet | null;
};

export type SkyLightsInput = {
  catalogue: StarCatalogue;
  frame: SkyFrame;
  horizon: readonly HorizonPoint[];
  clouds: readonly CloudPatch[];
  nakedEyeLimit: number;
  extinction: number;
};

/** The last magnitudes above the naked-eye limit fade out instead of vanishing at a line. */
const fadeMagnitudes = 0.9;

/** Every star and planet that the eye can make out above the skyline, brightest first. */
export function skyLights(input: SkyLightsInput): SkyLight[] {
  const { catalogue, frame, horizon, clouds, nakedEyeLimit, extinction } = input;
  const places = placeCatalogue(catalogue, frame);
  const lights: SkyLight[] = [];

  const add = (
    light: Pick<SkyLight, 'id' | 'colourIndex' | 'star' | 'planet'>,
    azimuthDeg: number,
    altitudeDeg: number,
    magnitude: number,
  ): void => {
    if (altitudeDeg <= 0 || altitudeDeg <= horizonAltitudeDeg(horizon, azimuthDeg)) return;
    const throughAir = seenAsMagnitude(magnitude, extinction, altitudeDeg);
    if (throughAir > nakedEyeLimit) return;
    const dimming = cloudDimming(clouds, azimuthDeg, altitudeDeg);
    const seenAs = throughAir + dimming;
    if (seenAs > nakedEyeLimit) return;
    lights.push({
      ...light,
      azimuthDeg,
      altitudeDeg,
      seenAs,
      clarity: Math.min(1, (nakedEyeLimit - seenAs) / fadeMagnitudes),
      veiled: dimming > 0,
      twinkles: light.star !== null,
    });
  };

  for (const star of mergedStars(catalogue)) {
    const azimuthDeg = places.azimuthDeg[star.index];
    const altitudeDeg = places.altitudeDeg[star.index];
    if (azimuthDeg === undefined || altitudeDeg === undefined) continue;
    const colourIndex = catalogue.stars[star.index]?.colourIndex ?? null;
    add(
      { id: `hip-${star.hip}`, colourIndex, star, planet: null },
      azimuthDeg,
      altitudeDeg,
      star.magnitude,
    );
  }
  for (const planet of frame.planets) {
    add(
      {
        id: planet.body,
        colourIndex: planetColourIndex[planet.body],
        star: null,
        planet: planet.body,
      },
      planet.azimuthDeg,
      planet.altitudeDeg,
      planet.magnitude,
    );
  }
  return lights.sort((a, b) => a.seenAs - b.seenAs);
}

/** Johnson B−V of the planets; Mallama et al. 2017, Icarus 282, rounded, from memory. */
export const planetColourIndex: Readonly<Record<NakedEyePlanet, number>> = {
  mercury: 0.97,
  venus: 0.81,
  mars: 1.43,
  jupiter: 0.87,
  saturn: 1.09,
};
