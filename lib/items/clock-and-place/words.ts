import type { Random } from '../../variants/random';

const sixteenPoints = [
  ...['north', 'north-north-east', 'north-east', 'east-north-east'],
  ...['east', 'east-south-east', 'south-east', 'south-south-east'],
  ...['south', 'south-south-west', 'south-west', 'west-south-west'],
  ...['west', 'west-north-west', 'north-west', 'north-north-west'],
] as const;

/** The nearest of the sixteen points of the compass: "west-north-west". */
export const compassPoint = (azimuthDeg: number): string =>
  sixteenPoints[((Math.round(azimuthDeg / 22.5) % 16) + 16) % 16] ?? 'north';

/** "3½ fists": an angle to half a fist of 10° at arm's length (common practice, no source). */
export function inFists(angleDeg: number): string {
  const halves = Math.round(angleDeg / 5);
  if (halves === 1) return 'half a fist';
  const whole = Math.floor(halves / 2);
  return `${String(whole)}${halves % 2 === 0 ? '' : '½'} ${halves === 2 ? 'fist' : 'fists'}`;
}

/** "in the south-east, 3½ fists up"; the horizon and the ground by name. */
export function whereabouts(at: { azimuthDeg: number; altitudeDeg: number }): string {
  if (at.altitudeDeg < -2) return 'below the horizon';
  if (at.altitudeDeg < 2.5) return `on the horizon in the ${compassPoint(at.azimuthDeg)}`;
  if (at.altitudeDeg > 82) return 'almost overhead';
  return `in the ${compassPoint(at.azimuthDeg)}, ${inFists(at.altitudeDeg)} up`;
}

/** The same with a capital. */
export const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** "21:05"; minutes after midnight, of the day before and after as well. */
export function clockTime(minutes: number): string {
  const inDay = ((Math.round(minutes) % 1440) + 1440) % 1440;
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
}

/** "1 hour", "2½ hours", "40 minutes". */
export function span(minutes: number): string {
  if (minutes < 60) return `${String(minutes)} minutes`;
  if (minutes % 60 === 0) return minutes === 60 ? '1 hour' : `${String(minutes / 60)} hours`;
  if (minutes % 60 === 30) return `${String(Math.floor(minutes / 60))}½ hours`;
  return `${String(Math.floor(minutes / 60))} h ${String(minutes % 60)} min`;
}

/** @throws {RangeError} for an empty list: a family that has nothing to choose from is a bug. */
export function pickOne<T>(random: Random, from: readonly T[]): T {
  const picked = random.pick(from);
  if (picked === undefined) throw new RangeError('there is nothing to choose from');
  return picked;
}

/** The first few of a shuffled list. */
export const pickSome = <T>(random: Random, from: readonly T[], count: number): T[] =>
  random.shuffle(from).slice(0, count);
