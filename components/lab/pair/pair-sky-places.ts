import type { SkyLight } from '@/components/sky/sky-lights';
import { skyLights } from '@/components/sky/sky-lights';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import { mergedStarOf } from '@/lib/pointing/merged-stars';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { placeCatalogue } from '@/lib/sky/star-places';
import type { LabelledLight } from './light-labels';
import { labelledLights } from './light-labels';
import { hipOf } from './light-names';
import type { PairLabSky } from './pair-lab-sky';

export type Place = { azimuthDeg: number; altitudeDeg: number };

/** The lab's sky, placed: what can be seen, and where anything is, seen or not. */
export type PairSkyPlaces = {
  lights: readonly SkyLight[];
  labelled: readonly LabelledLight[];
  lightOf: (id: string) => LabelledLight | SkyLight | null;
  /** The mount may propose a star behind a wall: it has a place, though no light. */
  placeOf: (id: SkyObjectId) => Place | null;
};

export function pairSkyPlaces(sky: PairLabSky, catalogue: StarCatalogue): PairSkyPlaces {
  const lights = skyLights({ ...sky, catalogue });
  const given = sky.givenHip === null ? [] : [`hip-${sky.givenHip}` as const];
  const proposed = (sky.proposals ?? []).map((hip) => `hip-${hip}` as const);
  const labelled = labelledLights(lights, sky.settings.faintestMagnitude, [...given, ...proposed]);
  const byId = new Map<string, SkyLight>();
  for (const light of lights) byId.set(light.id, light);
  for (const light of labelled) byId.set(light.id, light);
  const places = placeCatalogue(catalogue, sky.frame);
  return {
    lights,
    labelled,
    lightOf: (id) => byId.get(id) ?? null,
    placeOf: (id) => {
      const planet = sky.frame.planets.find(({ body }) => body === id);
      if (planet !== undefined)
        return { azimuthDeg: planet.azimuthDeg, altitudeDeg: planet.altitudeDeg };
      const hip = hipOf(id);
      const star = hip === null ? undefined : mergedStarOf(catalogue, hip);
      if (star === undefined) return null;
      const azimuthDeg = places.azimuthDeg[star.index];
      const altitudeDeg = places.altitudeDeg[star.index];
      return azimuthDeg === undefined || altitudeDeg === undefined
        ? null
        : { azimuthDeg, altitudeDeg };
    },
  };
}
