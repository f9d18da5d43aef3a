import type { Scenario } from '../../../pointing/scenario';
import { instantOfLocalTime } from '../../../sky/local-time';
import type { Random } from '../../random';
import { awayPlaces, needlePlaces } from './away-places';
import { aheadMinutesAt } from './draw-clock-card';
import type { CardPlace } from './clock-evening';

const minuteMs = 60_000;

/** Invented spots round a scenario's place: each card has its own. */
const spots = [
  'the ford meadow',
  'the old quarry',
  'the sheepfold on the ridge',
  'the mill pond',
  'the hill above the orchard',
  'the end of the long lane',
  'the far pasture',
  'the clearing by the beeches',
];
/** About 45 km at most: near enough for the same clock. */
const spotWithinArcmin = 25;

/** A spot near the scenario's place. */
export function drawSpot(random: Random, { place, timeZone }: Scenario): CardPlace {
  const beside = () => random.integer(-spotWithinArcmin, spotWithinArcmin);
  const within = (arcmin: number, most: number) => Math.max(-most, Math.min(most, arcmin));
  return {
    name: random.pick(spots) ?? 'the ford meadow',
    latitudeArcmin: within(Math.round(place.latitudeDeg * 60) + beside(), 89 * 60),
    longitudeArcmin: within(Math.round(place.longitudeDeg * 60) + beside(), 179 * 60),
    timeZone,
  };
}

/**
 * The scenario's instant moved within its window, to the minute, UTC.
 *
 * @throws {RangeError} when the scenario's local time is none: `parseScenario` refuses those.
 */
export function drawInstant(random: Random, scenario: Scenario, windowMinutes: number): string {
  const window = Math.floor(windowMinutes);
  const moved = baseMs(scenario) + random.integer(-window, window) * minuteMs;
  return new Date(Math.round(moved / minuteMs) * minuteMs).toISOString();
}

/** @throws {RangeError} as {@link drawInstant}. */
export function baseMs({ localTime, timeZone }: Scenario): number {
  const time = instantOfLocalTime(localTime, timeZone);
  if (!time.ok) throw new RangeError(`not a local time: ${localTime}`);
  return Date.parse(time.instant);
}

/** Clocks this near to each other would be no trap. */
const clocksApartMinutes = 120;
const daysAround = 150;

/** A town far off, on an evening or past midnight there, with another clock than the scenario's. */
export function drawAway(
  random: Random,
  scenario: Scenario,
  from: readonly CardPlace[] = awayPlaces,
): { place: CardPlace; instant: string } {
  const days = random.integer(-daysAround, daysAround);
  const base = baseMs(scenario) + days * 1440 * minuteMs;
  const around = new Date(base).toISOString();
  const home = aheadMinutesAt(around, scenario.timeZone);
  const far = from.filter(
    ({ timeZone }) => Math.abs(aheadMinutesAt(around, timeZone) - home) >= clocksApartMinutes,
  );
  const place = random.pick(far) ?? random.pick(from);
  if (place === undefined) throw new Error('there is no place to go to');
  // One in four is past midnight: twelve o’clock and the date are traps of their own.
  const minuteOfDay = random.next() < 0.25 ? random.integer(1, 85) : random.integer(1170, 1435);
  const local = new Date(base).toISOString().slice(0, 10);
  const startOfDay =
    Date.parse(`${local}T00:00:00Z`) - aheadMinutesAt(around, place.timeZone) * minuteMs;
  return { place, instant: new Date(startOfDay + minuteOfDay * minuteMs).toISOString() };
}

/** The same where a compass errs by much. */
export const drawNeedlePlace = (
  random: Random,
  scenario: Scenario,
): { place: CardPlace; instant: string } => drawAway(random, scenario, needlePlaces);
