import { capitalised } from '../../../wording/capital';
import type { SkyFrame } from '../../../sky/sky-frame';
import { placeCatalogue } from '../../../sky/star-places';
import { wrap180 } from '../../../units/angle';
import { duskStars } from './finder-dusk-stars';
import type { DuskLight } from './finder-variant';

/** Half the Moon's mean width, arcminutes (Meeus, *Astronomical Algorithms* 2nd ed., ch. 55: 15.5′). */
const moonRadiusArcmin = 15.5;
/** Lower, haze takes it; higher, a finder is awkward to look through (common practice, no source). */
const lowestDeg = 12;
const highestDeg = 58;
/** Fainter, it does not show by the end of civil dusk. */
const faintestMagnitude = 1.4;
/** A crescent thinner than this is gone in the glow. */
const thinnestMoon = 0.04;

/** What can be set on at dusk, brightest first: the Moon, planets, the first stars. */
export function lightsAtDusk(frame: SkyFrame): DuskLight[] {
  const { moon, planets } = frame;
  const places = placeCatalogue(duskStars, frame);
  const all: DuskLight[] = [
    ...(moon.illuminatedFraction < thinnestMoon
      ? []
      : [
          {
            id: 'moon',
            kind: 'moon' as const,
            name: 'the Moon',
            azimuthDeg: moon.azimuthDeg,
            altitudeDeg: moon.altitudeDeg,
            magnitude: moon.magnitude,
            radiusArcmin: moonRadiusArcmin,
          },
        ]),
    ...planets.map(({ body, azimuthDeg, altitudeDeg, magnitude }) => ({
      id: body,
      kind: 'planet' as const,
      name: capitalised(body),
      azimuthDeg,
      altitudeDeg,
      magnitude,
      radiusArcmin: 0,
    })),
    ...duskStars.stars.map(({ hip, name, magnitude }, i) => ({
      id: `hip-${String(hip)}`,
      kind: 'star' as const,
      name: name ?? '',
      azimuthDeg: places.azimuthDeg[i] ?? 0,
      altitudeDeg: places.altitudeDeg[i] ?? -90,
      magnitude,
      radiusArcmin: 0,
    })),
  ];
  return all
    .filter(
      ({ altitudeDeg, magnitude }) =>
        altitudeDeg >= lowestDeg && altitudeDeg <= highestDeg && magnitude <= faintestMagnitude,
    )
    .sort((one, other) => one.magnitude - other.magnitude);
}

/** Those within a scene, and no two of them in one place of it. */
export function lightsInScene(
  lights: readonly DuskLight[],
  middleAzimuthDeg: number,
  halfWidthDeg: number,
): DuskLight[] {
  const kept: DuskLight[] = [];
  for (const light of lights) {
    const inside = Math.abs(wrap180(light.azimuthDeg - middleAzimuthDeg)) <= halfWidthDeg;
    const crowded = kept.some(
      (one) =>
        Math.abs(wrap180(one.azimuthDeg - light.azimuthDeg)) < 9 &&
        Math.abs(one.altitudeDeg - light.altitudeDeg) < 9,
    );
    if (inside && !crowded && kept.length < 4) kept.push(light);
  }
  return kept;
}
