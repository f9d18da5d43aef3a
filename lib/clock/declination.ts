import geomagnetism from 'geomagnetism';
import type { GeographicPlace } from '../sky/astronomy';

export type Declination =
  | { ok: true; declinationDeg: number }
  | {
      ok: false;
      /** No model of the Earth's field reaches there: each serves five years, the last to 2029-11-13. */
      reason: 'outside-the-model';
      cause: unknown;
    };

/** When the oldest model that we trust begins; before it the package extends one backwards. */
const firstInstant = Date.UTC(2014, 11, 16);
const lastInstant = Date.UTC(2029, 10, 13);

/**
 * How far a compass needle points east (positive) of true north, degrees, by the World Magnetic Model
 * of that year (NOAA/NCEI and BGS; good to about 0.5° away from the magnetic poles). `instant` is UTC,
 * ISO 8601. The one door to the `geomagnetism` package, whose heights are kilometres.
 */
export function declinationAt(place: GeographicPlace, instant: string): Declination {
  const date = new Date(instant);
  const ms = date.getTime();
  if (Number.isNaN(ms)) throw new RangeError(`not an instant: ${instant}`);
  if (ms < firstInstant || ms > lastInstant) {
    return { ok: false, reason: 'outside-the-model', cause: null };
  }
  try {
    const point = geomagnetism
      .model(date)
      .point([place.latitudeDeg, place.longitudeDeg, place.elevationM / 1000]);
    return { ok: true, declinationDeg: point.decl };
  } catch (cause) {
    // The package has one error, for dates: anything else about a checked place would be a bug too.
    return { ok: false, reason: 'outside-the-model', cause };
  }
}
