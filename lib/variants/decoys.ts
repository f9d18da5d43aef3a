import type { SkyObjectId } from '../pointing/answer-key';
import { cautionsFor, isClearCaution, lookAlikesOf } from '../pointing/cautions';
import { seenSky } from '../pointing/seen-sky';
import type { StarCatalogue } from '../sky/catalogue';
import { refracted, unrefracted } from '../sky/refracted-direction';
import { siderealDegPerSecond, turnedDirection } from '../sky/turned-frame';
import { degreesToRadians } from '../units/angle';
import {
  azAltFromDirection,
  directionFromAzAlt,
  separationDeg,
  type Vector3,
} from '../units/vector';
import type { Night, WeighedStar } from './night';
import type { Bent } from './run-setup';

/** A star to be given, and the other light that a first slew to it is meant to land on. */
export type Decoy = {
  star: WeighedStar;
  decoy: { id: SkyObjectId; name: string; direction: Vector3 };
  bent: Bent;
};

/** Nearer than this the two are in one field of a finder, farther and no honest slip leads there. */
const nearestDeg = 1;
const farthestDeg = 7;
/** What a clock may tilt the base by, as the computer sees it, which believes in 5° at the most. */
const mostTiltDeg = 3.2;
/** Half an hour turns the sky by 7.5°, and nobody's clock is further off without their noticing. */
const mostClockSeconds = 1800;
const clockStepSeconds = 30;
const mostZeroDeg = { 'solved-zero': 1.2, 'fixed-zero': 0.25 };

/**
 * Usable stars with another light nearby that looks about as bright or brighter, for which a clock some
 * minutes off and an index off by a degree bring the first slew nearer to that light than to the star.
 * Both slips vanish in a two-star alignment on the right stars.
 */
export function decoysOf(night: Night, catalogue: StarCatalogue): Decoy[] {
  const { scenario, frame } = night;
  const sky = seenSky({
    scenario,
    frame,
    catalogue,
    keep: (star) => star.magnitude <= scenario.settings.faintestMagnitude + 2,
  });
  const lookAlikes = lookAlikesOf(sky, scenario);
  return night.usable
    .filter((star) => star.hasCaution)
    .flatMap((star) =>
      cautionsFor(star, lookAlikes)
        .filter(isClearCaution)
        .filter((one) => one.separationDeg >= nearestDeg && one.separationDeg <= farthestDeg)
        .flatMap(({ neighbour }): Decoy[] => {
          const entry = lookAlikes.entries.find((one) => one.neighbour === neighbour);
          const bent = entry === undefined ? null : bentTowards(night, star, entry.direction);
          if (entry === undefined || bent === null) return [];
          const decoy = { id: neighbour, name: entry.neighbourName, direction: entry.direction };
          return [{ star, decoy, bent }];
        }),
    );
}

/** The slips that bring a go-to for the star closest to the decoy; null when that is not close enough. */
function bentTowards({ scenario, frame }: Night, star: WeighedStar, decoy: Vector3): Bent | null {
  const most = mostZeroDeg[scenario.telescope.computer];
  const wanted = azAltFromDirection(decoy);
  const { latitudeDeg } = scenario.place;
  const tiltOfTurn = Math.cos(degreesToRadians(latitudeDeg));
  const mostSeconds = Math.min(
    mostClockSeconds,
    mostTiltDeg / (siderealDegPerSecond * Math.max(tiltOfTurn, 1e-6)),
  );
  const origin = unrefracted(star.direction, frame.refractionScale);
  let best: Bent | null = null;
  let leastDeg = Infinity;
  for (let seconds = -mostSeconds; seconds <= mostSeconds; seconds += clockStepSeconds) {
    const believed = azAltFromDirection(
      refracted(turnedDirection(origin, latitudeDeg, seconds), frame.refractionScale),
    );
    const altitudeZeroDeg = Math.min(
      most,
      Math.max(-most, wanted.altitudeDeg - believed.altitudeDeg),
    );
    const landing = directionFromAzAlt(believed.azimuthDeg, believed.altitudeDeg + altitudeZeroDeg);
    const offDeg = separationDeg(landing, decoy);
    // By so much nearer to it that a base half a degree off level does not decide.
    if (offDeg < leastDeg && offDeg < separationDeg(landing, star.direction) - 0.5) {
      leastDeg = offDeg;
      best = { clockSeconds: Math.round(seconds), altitudeZeroDeg };
    }
  }
  return best;
}
