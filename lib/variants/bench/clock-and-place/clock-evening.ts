import { seenAt, type SkyInNumbers } from '../../../clock/believed-place';
import { brightStars } from '../../../clock/bright-stars';
import { rightSettings } from '../../../clock/entered-settings';
import { hourCircleOf } from '../../../clock/hour-angle';
import { placeFields, type MountForm } from '../../../clock/mount-form';
import type { StarCatalogue } from '../../../sky/catalogue';
import { skyFrameAt } from '../../../sky/frame-at';
import { placeCatalogue } from '../../../sky/star-places';
import { azAltFromDirection } from '../../../units/vector';
import type { CardDay } from './clock-card';
import type { SkyStar } from './clock-and-place-variant';

/** A place as it can stand on a card: whole arcminutes, north and east positive. */
export type CardPlace = {
  name: string;
  latitudeArcmin: number;
  longitudeArcmin: number;
  timeZone: string;
};

/** What is true at a card's place and moment. */
export type ClockEvening = {
  place: CardPlace;
  /** UTC, ISO 8601, to the minute. */
  instant: string;
  right: MountForm;
  summerTimeMinutes: number;
  sky: SkyInNumbers;
  stars: readonly SkyStar[];
};

const catalogue: StarCatalogue = { version: 'bright stars', stars: brightStars, figures: [] };

/** What is shown of a sky: high enough to see, and no more than can be told apart. */
const shownFromDeg = 5;
const shownStars = 18;
/** What is slewn to: clear of the haze, and not where azimuth means next to nothing. */
const judgedFromDeg = 15;
const judgedUpToDeg = 75;
const judgedStars = 5;

/** The sky of a place at an instant, in numbers that need no ephemeris any more. */
export function clockEvening(place: CardPlace, instant: string): ClockEvening {
  const latitudeDeg = place.latitudeArcmin / 60;
  const longitudeDeg = place.longitudeArcmin / 60;
  const geographic = { latitudeDeg, longitudeDeg, elevationM: 0 };
  const frame = skyFrameAt({ instant, place: geographic });
  const settings = rightSettings(instant, geographic, place.timeZone);
  const sky = { latitudeDeg, refractionScale: frame.refractionScale };
  const { directions } = placeCatalogue(catalogue, frame);
  const stars = brightStars.flatMap(({ name, magnitude }, index) => {
    const [east = NaN, north = NaN, up = NaN] = directions.subarray(3 * index);
    const circle = hourCircleOf([east, north, up], latitudeDeg);
    const { altitudeDeg } = azAltFromDirection(seenAt(circle, sky));
    return altitudeDeg < shownFromDeg
      ? []
      : [{ ...circle, altitudeDeg, name: name ?? '', magnitude }];
  });
  const judged = stars
    .filter(({ altitudeDeg }) => altitudeDeg >= judgedFromDeg && altitudeDeg <= judgedUpToDeg)
    // A star at the pole moves with no clock: it would hide how far off a sky is.
    .filter(({ declinationDeg }) => Math.abs(declinationDeg) < 80)
    .slice(0, judgedStars);
  // Somewhere in every sky a few are up; should they all be low, they serve as they are.
  const serving = judged.length < 2 ? stars.slice(0, judgedStars) : judged;
  return {
    place,
    instant,
    sky,
    right: {
      ...wallClock(settings.localTime),
      zoneMinutes: settings.zoneOffsetMinutes,
      summerTime: settings.summerTime,
      ...placeFields(place.latitudeArcmin, place.longitudeArcmin),
    },
    summerTimeMinutes: settings.summerTimeMinutes,
    stars: stars
      .slice(0, shownStars)
      .map(({ name, magnitude, hourAngleDeg, declinationDeg }, index) => ({
        name,
        magnitude,
        hourAngleDeg,
        declinationDeg,
        judged: serving.some((star) => star === stars[index]),
      })),
  };
}

type WallClock = CardDay & { hour: number; minute: number };

/** "2026-12-05T19:30", in numbers; what stands behind the minutes is left out. */
export function wallClock(localTime: string): WallClock {
  const [year = NaN, month = NaN, day = NaN, hour = NaN, minute = NaN] = localTime
    .slice(0, 16)
    .split(/[-T:]/)
    .map(Number);
  return { year, month, day, hour, minute };
}
