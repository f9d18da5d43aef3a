import { directionFromAzAlt, type Vector3 } from '../units/vector';
import type { StarCatalogue } from '../sky/catalogue';
import { airmass } from '../sky/extinction';
import { nakedEyeLimit } from '../sky/naked-eye';
import type { NakedEyePlanet, SkyFrame } from '../sky/sky-frame';
import { placeCatalogue } from '../sky/star-places';
import { mergedStars, type MergedStar } from './merged-stars';
import type { Scenario } from './scenario';

/** Something that stands in the local sky. Directions and altitudes are refracted throughout. */
type Seen = {
  azimuthDeg: number;
  altitudeDeg: number;
  direction: Vector3;
  /** V + k X: how bright it looks to the eye at the site. */
  looksMagnitude: number;
};

export type SeenStar = MergedStar & Seen;
export type SeenPlanet = Seen & { body: NakedEyePlanet };

/** The sky of one scenario and instant, with all that decides what may serve. */
export type SeenSky = {
  /** The merged stars of the catalogue that were asked for, those below the horizon too. */
  stars: readonly SeenStar[];
  planets: readonly SeenPlanet[];
  moonDirection: Vector3;
  /** V of the faintest star seen at the zenith. */
  nakedEyeLimit: number;
};

/** Places stars and planets in the sky and finds how bright each looks through its air. */
export function seenSky({
  scenario,
  frame,
  catalogue,
  keep = () => true,
}: {
  scenario: Pick<Scenario, 'sky'>;
  frame: SkyFrame;
  catalogue: StarCatalogue;
  /** Which stars are placed; all unless told. */
  keep?: (star: MergedStar) => boolean;
}): SeenSky {
  const places = placeCatalogue(catalogue, frame);
  const { extinction } = scenario.sky;
  const looks = (magnitude: number, altitudeDeg: number) =>
    magnitude + extinction * airmass(altitudeDeg);
  return {
    stars: mergedStars(catalogue)
      .filter(keep)
      .map((star): SeenStar => {
        const azimuthDeg = places.azimuthDeg[star.index] ?? NaN;
        const altitudeDeg = places.altitudeDeg[star.index] ?? NaN;
        // Field by field: spreading thousands of objects costs more than all the astronomy.
        return {
          hip: star.hip,
          index: star.index,
          components: star.components,
          name: star.name,
          named: star.named,
          magnitude: star.magnitude,
          largeAmplitudeVariable: star.largeAmplitudeVariable,
          azimuthDeg,
          altitudeDeg,
          direction: directionFromAzAlt(azimuthDeg, altitudeDeg),
          looksMagnitude: looks(star.magnitude, altitudeDeg),
        };
      }),
    planets: frame.planets.map(({ body, azimuthDeg, altitudeDeg, magnitude }) => ({
      body,
      azimuthDeg,
      altitudeDeg,
      direction: directionFromAzAlt(azimuthDeg, altitudeDeg),
      looksMagnitude: looks(magnitude, altitudeDeg),
    })),
    moonDirection: directionFromAzAlt(frame.moon.azimuthDeg, frame.moon.altitudeDeg),
    nakedEyeLimit: nakedEyeLimitOf(scenario, frame),
  };
}

/** V of the faintest star that is seen at the zenith in this twilight and moonlight. */
export const nakedEyeLimitOf = (scenario: Pick<Scenario, 'sky'>, frame: SkyFrame): number =>
  nakedEyeLimit({
    darkestLimitMagnitude: scenario.sky.darkestLimitMagnitude,
    sunAltitudeDeg: frame.sun.trueAltitudeDeg,
    moonAltitudeDeg: frame.moon.trueAltitudeDeg,
    moonIlluminatedFraction: frame.moon.illuminatedFraction,
  });
