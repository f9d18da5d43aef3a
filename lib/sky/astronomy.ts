/**
 * The one door to astronomy-engine. It sets ΔT (TT − UT) to one documented value, 69.184 s, as
 * observed in the years around 2020–2026, so that a stored instant gives the same sky whatever the
 * library's own forecast becomes. Never imported by the browser.
 */
import { Observer, SetDeltaTFunction } from 'astronomy-engine';

export const deltaTSeconds = 69.184;

SetDeltaTFunction(() => deltaTSeconds);

/** Geodetic latitude and longitude (east positive) in degrees, height above the sea in metres. */
export type GeographicPlace = {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
};

/** @throws {RangeError} outside ±90° or ±180°: parse first. */
export function observerAt(place: GeographicPlace): Observer {
  if (!(Math.abs(place.latitudeDeg) <= 90 && Math.abs(place.longitudeDeg) <= 180)) {
    throw new RangeError('a place needs a latitude within ±90° and a longitude within ±180°');
  }
  return new Observer(place.latitudeDeg, place.longitudeDeg, place.elevationM);
}

export {
  AstroTime,
  BaryState,
  Body,
  Equator,
  Horizon,
  Illumination,
  Rotation_EQD_HOR,
  Rotation_EQJ_EQD,
  SearchHourAngle,
  SearchRiseSet,
  type Observer,
} from 'astronomy-engine';
