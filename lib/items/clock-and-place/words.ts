import { compassPoint } from '../../wording/compass-points';
import { inFists } from '../../wording/fists';

/** "in the south-east, 3½ fists up"; the horizon and the ground by name. */
export function whereabouts(at: { azimuthDeg: number; altitudeDeg: number }): string {
  if (at.altitudeDeg < -2) return 'below the horizon';
  if (at.altitudeDeg < 2.5) return `on the horizon in the ${compassPoint(at.azimuthDeg)}`;
  if (at.altitudeDeg > 82) return 'almost overhead';
  return `in the ${compassPoint(at.azimuthDeg)}, ${inFists(at.altitudeDeg)} up`;
}

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
