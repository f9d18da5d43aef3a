import { nearestSignpost } from '@/components/sky/directions';
import { fistsInWords, nearlyZenithFists, toHalfFists } from '@/components/sky/position-words';
import { clockTime } from '@/lib/night/evening';
import type { LaterPair, NightPlan } from '@/lib/night/plan-night';

/** "three fists up in the north-west" */
export function whereInWords(star: { azimuthDeg: number; altitudeDeg: number }): string {
  const fistsUp = toHalfFists(star.altitudeDeg);
  return fistsUp >= nearlyZenithFists
    ? 'almost straight up'
    : `${fistsInWords(fistsUp)} up in the ${nearestSignpost(star.azimuthDeg).word}`;
}

/** "18:10–20:50" */
export const spanInWords = (from: string, until: string, timeZone: string): string =>
  from === until
    ? clockTime(from, timeZone)
    : `${clockTime(from, timeZone)}–${clockTime(until, timeZone)}`;

/** "5 December" */
export const dayInWords = (localDate: string): string =>
  new Intl.DateTimeFormat('en-GB', {
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  }).format(new Date(`${localDate}T12:00:00Z`));

export const noEveningText = {
  'sun-stays-up': {
    title: 'The Sun does not set on this day',
    text: 'Choose a date later in the year, or teach with the labs until then.',
  },
  'ends-before-sunset': {
    title: 'Packing up comes before sunset',
    text: 'Tubes stay capped until the Sun has set. Choose a later time to pack up, or an evening in winter.',
  },
  'no-such-time': {
    title: 'This date or time does not exist at the place',
    text: 'Check the day of the month, and the hour if the clocks change on that night.',
  },
} as const;

/** In the place of a sunset that is not there. */
export const noSunsetText = {
  'sun-stays-down': 'the Sun does not rise',
  'sun-stays-up': 'the Sun does not set',
  'ends-before-sunset': 'after packing up',
  'no-such-time': 'no such date',
} as const;

/** Whether the Moon that neither rises nor sets is up or down; null where it does one of them. */
export function moonAllNight({ moon }: NightPlan['evening']): string | null {
  if (moon.passages.length > 0) return null;
  return moon.up.length > 0 ? 'up all night' : 'down all night';
}

/** Of two weeks without darkness: why, and when it comes back. */
export function noDarkFortnightText(
  evenings: readonly { darkFrom: string | null }[],
  nextDark: string | null,
): string {
  const late = evenings.some(({ darkFrom }) => darkFrom !== null);
  const why = late
    ? 'On none of these evenings does it get dark before packing up. A later end would help.'
    : 'The nights are too short and too light now: the Sun stays less than 12° below the horizon. That is the season, not your planning.';
  if (nextDark === null) return why;
  return `${why} With the same end, dark evenings come from about ${dayInWords(nextDark)} on. Until then there are the labs, and the Moon by eye.`;
}

export type NightHint = { tone: 'go' | 'careful' | 'stop'; text: string; because: string };

/** A Moon as wide as this drowns the fainter stars while it is up; common practice, no source. */
const brightMoon = 0.6;

/** What speaks for and against the evening, each with what it rests on. */
export function nightHints(
  { evening, twoStarsFrom, hours, goodLater }: NightPlan,
  timeZone: string,
): NightHint[] {
  const { moon, to, times } = evening;
  const hints: NightHint[] = [];
  if (twoStarsFrom === null) {
    return [
      {
        tone: 'stop',
        text: 'No two stars can be used before packing up.',
        because: 'Computed for your skyline, twilight and Moon, by the rules for alignment stars.',
      },
    ];
  }
  const minutes = (Date.parse(to) - Date.parse(twoStarsFrom)) / 60_000;
  hints.push({
    tone: minutes >= 60 ? 'go' : 'careful',
    text: `Aligning can begin at ${clockTime(twoStarsFrom, timeZone)}: ${String(Math.round(minutes))} minutes before packing up.`,
    because: 'From then on two stars or more pass every test.',
  });
  if (times.nauticalDusk === null || times.nauticalDusk > to) {
    hints.push({
      tone: 'careful',
      text: 'It will not get properly dark.',
      because: 'The Sun stays less than 12° below the horizon until packing up.',
    });
  }
  if (hours.length > 0 && moon.up.length > 0 && moon.illuminatedFraction >= brightMoon) {
    hints.push({
      tone: 'careful',
      text: `A bright Moon (${percent(moon.illuminatedFraction)} lit) is ${moonAllNight(evening) ?? 'up'}: show it, and leave faint things for another night.`,
      because: 'How far it is lit is computed; what it drowns is common practice.',
    });
  }
  for (const late of goodLater) {
    const first = hours[0]?.pairs.find(({ kitId }) => kitId === late.kitId)?.pairs[0];
    hints.push({
      tone: 'careful',
      text: laterInWords(late, first?.hitRate ?? null, timeZone),
      because: 'The hit rates of the best pairs, every ten minutes; an approximation.',
    });
  }
  hints.push({
    tone: 'careful',
    text: 'Look at a weather forecast: cloud, wind, frost and dew are not in this plan.',
    because: 'Nothing here knows the weather.',
  });
  return hints;
}

/** What a telescope that begins poorly should do: wait for a good pair, or do without. */
function laterInWords(
  { kitName, later }: LaterPair,
  firstHitRate: number | null,
  timeZone: string,
): string {
  const begins =
    firstHitRate === null
      ? `${kitName} has no pair at the start`
      : `${kitName} begins with ${String(Math.round(100 * firstHitRate))} of 100 targets in the eyepiece`;
  if (later === null)
    return `${begins}, and has no better pair before packing up: centre twice as carefully, and check on a third star.`;
  const names = later.pair.stars.map(({ name }) => name).join(' and ');
  return `${begins}. Wait until ${clockTime(later.instant, timeZone)}: ${names} give ${String(Math.round(100 * later.pair.hitRate))}.`;
}

export const percent = (share: number): string => `${String(Math.round(100 * share))} %`;
