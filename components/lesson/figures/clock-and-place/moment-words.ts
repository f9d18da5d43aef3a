import { compassPoint } from '@/lib/wording/compass-points';
import { inFists } from '@/lib/wording/fists';
import { seenFrom, starsAt, sunAltitudeDeg } from './sky-of-a-moment';

const months = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
];

/** "5 December, 20:00". */
export function momentInWords(ms: number): string {
  const at = new Date(ms);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(at.getUTCDate())} ${months[at.getUTCMonth()] ?? ''}, ${two(at.getUTCHours())}:${two(at.getUTCMinutes())}`;
}

const hourMs = 3_600_000;

/** Where one star stands, what it has done in the last hour, and whether anyone can see it. */
export function momentWords(ms: number, latitudeDeg: number, starName: string): string {
  const at = (when: number) => {
    const star = starsAt(when, 0).find(({ name }) => name === starName);
    return star === undefined ? null : seenFrom(star, latitudeDeg);
  };
  const now = at(ms);
  const before = at(ms - hourMs);
  if (now === null || before === null) return momentInWords(ms);
  const altitude = Math.round(now.altitudeDeg);
  const where =
    now.altitudeDeg <= 0
      ? `${starName} is below the horizon`
      : `${starName} stands in the ${compassPoint(now.azimuthDeg)}, ${inFists(now.altitudeDeg)} up: azimuth ${String(Math.round(now.azimuthDeg) % 360)}°, altitude ${String(altitude)}°`;
  const change = Math.round(now.altitudeDeg - before.altitudeDeg);
  const moved =
    change === 0
      ? 'no higher and no lower than an hour ago'
      : `${String(Math.abs(change))}° ${change > 0 ? 'higher' : 'lower'} than an hour ago`;
  return `${momentInWords(ms)}. ${where}, ${moved}.${daylight(ms, latitudeDeg)}`;
}

function daylight(ms: number, latitudeDeg: number): string {
  const sun = sunAltitudeDeg(ms, latitudeDeg, 0);
  if (sun > -0.833) return ' The Sun is up: the stars are there, but nobody can see them.';
  return sun > -9 ? ' It is twilight: few of them can be seen yet.' : '';
}
