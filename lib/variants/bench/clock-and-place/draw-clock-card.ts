import { nextClockChange } from '../../../clock/clock-change';
import type { FormEntry } from '../../../clock/mount-form';
import { localTimeOfInstant } from '../../../sky/local-time';
import { zoneOffsetAt } from '../../../sky/zone-offset';
import type { Random } from '../../random';
import {
  dateStyles,
  placeStyles,
  timeStyles,
  zoneStyles,
  type CardDay,
  type ClockCard,
} from './clock-card';
import { wallClock, type ClockEvening } from './clock-evening';

/** How a card is written, and what of it is left out or told by another clock. */
type CardWishes = {
  smudged?: readonly FormEntry[];
  /** The zone in which the watch still runs. */
  watchZone?: string;
  /** Whether summer time is on is to be found out from the dates of the changes, where there are any. */
  summerByDates?: boolean;
};

/** The card of an evening, in a way of writing that is drawn. */
export function drawClockCard(
  random: Random,
  { place, instant, right }: ClockEvening,
  { smudged = [], watchZone, summerByDates = false }: CardWishes = {},
): ClockCard {
  const draw = <T>(styles: readonly [T, ...T[]]): T => random.pick(styles) ?? styles[0];
  const shown = watchZone === undefined ? right : wallClock(localTimeOfInstant(instant, watchZone));
  const { year, month, day, hour, minute } = shown;
  const spoken = minute % 5 === 0 ? draw(timeStyles) : 'twelve-hour';
  const dates = summerByDates ? changesOf(instant, place.timeZone) : null;
  return {
    placeName: place.name,
    date: { year, month, day, style: draw(dateStyles) },
    time: { hour, minute, style: spoken },
    watch: watchZone === undefined ? null : { aheadMinutes: aheadMinutesAt(instant, watchZone) },
    zone: { minutes: right.zoneMinutes, style: draw(zoneStyles) },
    summer: dates ?? saidOf(instant, place.timeZone, right.summerTime),
    place: {
      latitudeArcmin: place.latitudeArcmin,
      longitudeArcmin: place.longitudeArcmin,
      style: draw(placeStyles),
      longitudeFirst: random.next() < 0.4,
    },
    smudged,
  };
}

const saidOf = (instant: string, timeZone: string, on: boolean): ClockCard['summer'] =>
  !on && nextClockChange(instant, timeZone) === null ? { style: 'none' } : { style: 'said', on };

/** The days of the year's two changes; null where the zone has none, or rules of its own. */
function changesOf(instant: string, timeZone: string): ClockCard['summer'] | null {
  const year = localTimeOfInstant(instant, timeZone).slice(0, 4);
  const first = nextClockChange(`${year}-01-02T00:00:00Z`, timeZone);
  const second = first === null ? null : nextClockChange(first.instant, timeZone);
  if (first === null || second === null || !second.instant.startsWith(year)) return null;
  const [forward, back] =
    first.afterMinutes > first.beforeMinutes ? [first, second] : [second, first];
  const dayOf = (change: { instant: string }): CardDay => {
    const local = wallClock(localTimeOfInstant(change.instant, timeZone));
    return { year: local.year, month: local.month, day: local.day };
  };
  return { style: 'dates', forward: dayOf(forward), back: dayOf(back) };
}

/** All told, summer time and all. */
export function aheadMinutesAt(instant: string, timeZone: string): number {
  const zone = zoneOffsetAt(instant, timeZone);
  return zone.standardMinutes + (zone.summerTime ? zone.summerTimeMinutes : 0);
}
