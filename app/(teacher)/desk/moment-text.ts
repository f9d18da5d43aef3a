import type { DuskAnswer } from '@/components/desk/assignment-form/form-actions';
import type { Scenario } from '@/lib/pointing/scenario';
import { skyFrameAt } from '@/lib/sky/frame-at';
import {
  localTimeOfInstant,
  type LocalTimeProblem,
  type LocalTimeResult,
} from '@/lib/sky/local-time';
import { duskAndDawn } from '@/lib/sky/twilight';

type Place = Scenario['place'];

/** The calendar date on a zone's clock at an instant, YYYY-MM-DD. */
export const todayIn = (timeZone: string, now: Date): string =>
  localTimeOfInstant(now.toISOString(), timeZone).slice(0, 10);

/** "2026-11-01T01:30-05:00" → "01:30 (UTC −05:00)". */
const clockText = (localTime: string): string => {
  const parts = /T(\d{2}:\d{2})(?::\d{2})?([+-]\d{2}:\d{2})?/.exec(localTime);
  const offset = parts?.[2];
  return `${parts?.[1] ?? localTime}${offset === undefined ? '' : ` (UTC ${offset.replace('-', '−')})`}`;
};

const why: Readonly<Record<LocalTimeProblem, (localTime: string, timeZone: string) => string>> = {
  'bad-format': () => 'Give the date and the time, such as 5 December 2026, 19:30.',
  'no-such-date': () => 'There is no such date. Look at the day and the month.',
  'out-of-range': () =>
    'Choose a year from 1900 to 2100: beyond that the sky is not computed well enough.',
  'unknown-zone': (_, timeZone) =>
    `“${timeZone}” is not a known time zone. Choose one from the list, such as Europe/Oslo.`,
  'does-not-exist': (localTime, timeZone) =>
    `${clockText(localTime)} does not exist that day in ${timeZone}: the clocks jump over it. Did you mean one of these?`,
  'exists-twice': (localTime, timeZone) =>
    `${clockText(localTime)} comes twice that day in ${timeZone}: the clocks go back. Which one?`,
  'offset-does-not-fit': (localTime) =>
    `${clockText(localTime)}: this offset does not hold at that time. Did you mean one of these?`,
};

/** A refused wall-clock time as a question, with the times that may have been meant as answers. */
export function localTimeProblem(
  refused: Extract<LocalTimeResult, { ok: false }>,
  localTime: string,
  timeZone: string,
): { message: string; candidates: { localTime: string; label: string }[] } {
  const order = refused.reason === 'exists-twice' ? ['the first: ', 'the second: '] : [];
  return {
    message: why[refused.reason](localTime, timeZone),
    candidates: refused.candidates.map((candidate, index) => ({
      localTime: candidate,
      label: `${order[index] ?? ''}${clockText(candidate)}`,
    })),
  };
}

const utcText = (instant: string): string =>
  `${instant.slice(11, 16)} UTC on ${instant.slice(0, 10)}`;
const heightText = (altitudeDeg: number): string =>
  altitudeDeg < 0
    ? `${Math.abs(altitudeDeg).toFixed(0)}° below the horizon`
    : `${altitudeDeg.toFixed(0)}° up`;

/** What the Sun and the Moon do at an instant, for a teacher choosing it. */
export function describeSky(
  instant: string,
  place: Place | null,
): { text: string; sunIsUp: boolean } {
  if (place === null) return { text: `That is ${utcText(instant)}.`, sunIsUp: false };
  const { sun, moon } = skyFrameAt({ instant, place });
  const sunIsUp = sun.trueAltitudeDeg > -0.833;
  const twilight =
    sun.trueAltitudeDeg > -6
      ? 'bright twilight: hardly a star'
      : sun.trueAltitudeDeg > -12
        ? 'twilight: the brighter stars only'
        : sun.trueAltitudeDeg > -18
          ? 'dark enough for all alignment stars'
          : 'full night';
  const moonText =
    moon.trueAltitudeDeg < 0
      ? 'the Moon is down'
      : `the Moon is ${heightText(moon.trueAltitudeDeg)}, ${(moon.illuminatedFraction * 100).toFixed(0)} % lit`;
  return {
    text: `That is ${utcText(instant)}. The Sun is ${heightText(sun.trueAltitudeDeg)}${sunIsUp ? '' : ` (${twilight})`}; ${moonText}.`,
    sunIsUp,
  };
}

/** When the Sun reaches 12° below the horizon on the evening of a date, up to the next full minute. */
export function nauticalDuskOn(localDate: string, place: Place, timeZone: string): DuskAnswer {
  const { nauticalDusk, civilDusk, sunset } = duskAndDawn({ place, localDate, timeZone });
  if (nauticalDusk === null) {
    return {
      ok: false,
      message:
        sunset === null
          ? 'There is no dusk there tonight: the Sun neither sets nor rises as it does elsewhere. Choose another date or place.'
          : civilDusk === null
            ? 'There is no nautical dusk there tonight: the Sun sets but stays within 6° of the horizon. Choose a darker time of year.'
            : 'There is no nautical dusk there tonight: the Sun does not go 12° below the horizon. Type a time yourself, or choose a darker time of year.',
    };
  }
  // Rounded up, so that the Sun is no higher than promised.
  const minuteMs = 60_000;
  const instant = new Date(Math.ceil(Date.parse(nauticalDusk) / minuteMs) * minuteMs).toISOString();
  const localTime = localTimeOfInstant(instant, timeZone);
  return {
    ok: true,
    localTime,
    text: `Nautical dusk there tonight is at ${clockText(localTime)}: the Sun is 12° down.`,
  };
}
