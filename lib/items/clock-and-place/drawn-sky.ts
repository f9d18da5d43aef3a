import { seenAt } from '../../clock/believed-place';
import { brightStars } from '../../clock/bright-stars';
import { hourCircleOf, type HourCircle } from '../../clock/hour-angle';
import type { StarCatalogue } from '../../sky/catalogue';
import { skyFrameAt } from '../../sky/frame-at';
import { placeCatalogue } from '../../sky/star-places';
import { siderealDegPerSecond } from '../../sky/turned-frame';
import { sunAltitudeDeg } from '../../sky/twilight';
import { azAltFromDirection } from '../../units/vector';
import type { Random } from '../../variants/random';

export type SkyStar = HourCircle & { name: string; magnitude: number };
export type Position = { azimuthDeg: number; altitudeDeg: number };

/** A dark evening at a place in the middle of its zone, whose clocks show the Sun's own mean time. */
export type DrawnSky = {
  latitudeDeg: number;
  /** "At 52° north". */
  where: string;
  /** "5 December, 20:00". */
  when: string;
  /** Minutes after midnight, by the clock. */
  clockMinutes: number;
  /** UTC, milliseconds of the Unix epoch. */
  ms: number;
  /** The bright stars, up or not, brightest first. */
  stars: readonly SkyStar[];
  /** Where a star is seen, so many hours on (or back); refracted. */
  at: (star: HourCircle, hours?: number) => Position;
};

export const siderealDegPerHour = 3600 * siderealDegPerSecond;

const catalogue: StarCatalogue = { version: 'bright stars', stars: brightStars, figures: [] };

const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
] as const;

/** "5 December", of UTC. */
export const dayInWords = (ms: number): string =>
  `${String(new Date(ms).getUTCDate())} ${monthName(new Date(ms).getUTCMonth())}`;
export const monthName = (index: number): string => months[((index % 12) + 12) % 12] ?? '';

/** Every star of the bright list over a place at longitude 0°. */
export function skyOver(ms: number, latitudeDeg: number): Pick<DrawnSky, 'stars' | 'at'> {
  const place = { latitudeDeg, longitudeDeg: 0, elevationM: 0 };
  const frame = skyFrameAt({ instant: new Date(ms), place });
  const { directions } = placeCatalogue(catalogue, frame);
  const stars = brightStars.map(({ name, magnitude }, index) => {
    const [east = NaN, north = NaN, up = NaN] = directions.subarray(3 * index);
    return { ...hourCircleOf([east, north, up], latitudeDeg), name: name ?? '', magnitude };
  });
  const seen = { latitudeDeg, refractionScale: frame.refractionScale };
  const at = (star: HourCircle, hours = 0): Position =>
    azAltFromDirection(
      seenAt({ ...star, hourAngleDeg: star.hourAngleDeg + hours * siderealDegPerHour }, seen),
    );
  return { stars, at };
}

/** The Sun's altitude below which an evening counts as dark. */
const darkDeg = -10;

const sunDeg = (ms: number, latitudeDeg: number): number =>
  sunAltitudeDeg({ latitudeDeg, longitudeDeg: 0, elevationM: 0 }, new Date(ms));

/** A sky that stays dark for so many hours, north or south of the equator. */
export function drawSky(
  random: Random,
  { hours = 0, side }: { hours?: number; side?: 'north' | 'south' } = {},
): DrawnSky {
  for (;;) {
    const south = side === undefined ? random.integer(0, 3) === 0 : side === 'south';
    const latitudeDeg = south ? -random.integer(28, 42) : random.integer(34, 56);
    const clockMinutes = 30 * random.integer(36, 44);
    const day = random.integer(0, 729);
    const ms = Date.UTC(2026, 0, 1 + day, 0, clockMinutes);
    const dark = [0, hours].every((hour) => sunDeg(ms + hour * 3_600_000, latitudeDeg) < darkDeg);
    // Every winter evening is dark enough, so that this ends.
    if (!dark) continue;
    const clock = `${String(Math.floor(clockMinutes / 60))}:${String(clockMinutes % 60).padStart(2, '0')}`;
    return {
      latitudeDeg,
      clockMinutes,
      ms,
      where: `At ${String(Math.abs(latitudeDeg))}° ${south ? 'south' : 'north'}`,
      when: `${dayInWords(ms)}, ${clock}`,
      ...skyOver(ms, latitudeDeg),
    };
  }
}
