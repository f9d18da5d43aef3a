/** A supply as the evening meets it, in plain numbers: whatever reckons cells or packs gives them. */
export type EveningSupply = {
  /** Without a load, and what it loses to one. */
  openV: number;
  resistanceOhm: number;
  /** What it gives at tonight's temperature and drain; Infinity where nothing is known of an end. */
  usableAh: number;
};

/** What the telescope draws. */
export type EveningDrain = {
  /** Tracking, lamps and computer. */
  trackingA: number;
  /** At the peak of a slew, both motors running. */
  slewingA: number;
  /** Below this at its terminals the computer begins anew and has forgotten everything. */
  resetBelowV: number;
};

/** One slew of the evening: when it begins after the switching on, and for how long it lasts. */
export type Slew = { atMinutes: number; minutes: number };

export type HowLong = {
  /** Until all is taken, at the drain of tracking with the evening's slews in it. */
  hours: number;
  /** At the terminals at the end of each slew; nothing once all is taken. */
  slewVolts: readonly number[];
  /** The first slew, counted from 1, that takes the computer below its reset; null for none. */
  resetsAtSlew: number | null;
};

/**
 * How long a supply carries an evening, and at which slew the computer loses it: at the first where the
 * load is too much for it (V − I·R, Ohm's law), or at the one by which all it can give has been taken.
 * That volts fall as cells empty is left out, as where their run time is reckoned. `slews` in order of
 * time, none into the next.
 */
export function howLongItLasts(
  { openV, resistanceOhm, usableAh }: EveningSupply,
  { trackingA, slewingA, resetBelowV }: EveningDrain,
  slews: readonly Slew[],
): HowLong {
  let extraAh = 0;
  const slewVolts = slews.map(({ atMinutes, minutes }) => {
    extraAh += ((slewingA - trackingA) * minutes) / 60;
    const drawnAh = (trackingA * (atMinutes + minutes)) / 60 + extraAh;
    return drawnAh > usableAh ? 0 : openV - slewingA * resistanceOhm;
  });
  const failing = slewVolts.findIndex((volts) => volts < resetBelowV);
  return {
    hours: Math.max(0, (usableAh - extraAh) / trackingA),
    slewVolts,
    resetsAtSlew: failing < 0 ? null : failing + 1,
  };
}
