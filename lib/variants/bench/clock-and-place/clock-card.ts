import type { FormEntry } from '../../../clock/mount-form';

/** A day as it is written on a card. */
export type CardDay = { year: number; month: number; day: number };

/** How a place is written: with letters, with signs (north and east plus), or in decimals of a degree. */
export const placeStyles = ['letters', 'signs', 'decimals'] as const;
export const dateStyles = ['in-words', 'day-first', 'month-first'] as const;
export const timeStyles = ['twelve-hour', 'spoken'] as const;
export const zoneStyles = ['ahead-or-behind', 'from-utc'] as const;

/**
 * Place, date and time as a person would have them. Numbers and a way of writing: the words are the
 * page's.
 */
export type ClockCard = {
  placeName: string;
  /** The day that the clock of `time` had. */
  date: CardDay & { style: (typeof dateStyles)[number] };
  /** What the clock showed, 0 to 23 h; the card writes it in twelve hours. */
  time: { hour: number; minute: number; style: (typeof timeStyles)[number] };
  /** A wristwatch that still shows another zone's time; null where the clock is the place's own. */
  watch: { aheadMinutes: number } | null;
  zone: { minutes: number; style: (typeof zoneStyles)[number] };
  summer:
    | { style: 'said'; on: boolean }
    | { style: 'none' }
    /** In the order of the year: from the one to the other it is on, in the south over New Year. */
    | { style: 'dates'; forward: CardDay; back: CardDay };
  place: {
    latitudeArcmin: number;
    longitudeArcmin: number;
    style: (typeof placeStyles)[number];
    longitudeFirst: boolean;
  };
  /** Rows that the dew has washed out. */
  smudged: readonly FormEntry[];
};
