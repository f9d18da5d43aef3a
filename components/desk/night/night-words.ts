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

/** "5 h 20", "40 min", "–" for none; kept on one line. */
export function hoursAndMinutes(minutes: number): string {
  if (minutes < 1) return '–';
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes % 60);
  return hours === 0
    ? `${String(rest)}\u00a0min`
    : `${String(hours)}\u00a0h\u00a0${String(rest).padStart(2, '0')}`;
}

/** "Sat 5 December" */
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
    text: `Aligning can begin at ${clockTime(twoStarsFrom, timeZone)}: ${hoursAndMinutes(Math.round(minutes))} before packing up.`,
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
  for (const text of laterInWords(goodLater, timeZone)) {
    hints.push({
      tone: 'careful',
      text,
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

/** What telescopes that begin poorly should do: wait for a good pair, or do without; those alike together. */
function laterInWords(goodLater: readonly LaterPair[], timeZone: string): string[] {
  const times = [...new Set(goodLater.map(({ later }) => later?.instant ?? null))];
  return times.map((time) => {
    const names = goodLater
      .filter(({ later }) => (later?.instant ?? null) === time)
      .map(({ kitName }) => kitName);
    const who = new Intl.ListFormat('en-GB').format(names);
    const [begin, have] = names.length === 1 ? ['begins', 'has'] : ['begin', 'have'];
    return time === null
      ? `${who} ${have} no good pair before packing up: centre twice as carefully, and check on a third star.`
      : `${who} ${begin} with a poor pair: wait until ${clockTime(time, timeZone)} for a good one.`;
  });
}

export const percent = (share: number): string => `${String(Math.round(100 * share))} %`;
