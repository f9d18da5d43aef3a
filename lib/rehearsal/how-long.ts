/** A source of voltage as a load sees it: what it has without one, and what it loses to one. */
export type Source = { openV: number; resistanceOhm: number };

/** A supply as the evening meets it, in plain numbers: whatever reckons cells or packs gives them. */
export type EveningSupply = {
  /** As it is switched on, and when all it can give has been taken. */
  atFirst: Source;
  atLast: Source;
  /** What it gives at tonight's temperature and drain; Infinity for the mains. */
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
  /** At the terminals at the end of each slew, where they are lowest. */
  slewVolts: readonly number[];
  /** The first slew, counted from 1, that takes the computer below its reset; null for none. */
  resetsAtSlew: number | null;
};

/**
 * How long a supply carries an evening, and at which slew the computer loses it. Between first and last
 * both volts and ohms are taken to change straight with the charge that was drawn (our approximation, no
 * source); a load takes I·R off the volts (Ohm's law). `slews` in order of time, none into the next.
 */
export function howLongItLasts(
  supply: EveningSupply,
  drain: EveningDrain,
  slews: readonly Slew[],
): HowLong {
  const { trackingA, slewingA, resetBelowV } = drain;
  const extraAh = ({ minutes }: Slew): number => ((slewingA - trackingA) * minutes) / 60;
  let extra = 0;
  const slewVolts = slews.map((slew) => {
    extra += extraAh(slew);
    const drawn = (trackingA * (slew.atMinutes + slew.minutes)) / 60 + extra;
    const { openV, resistanceOhm } = after(supply, drawn);
    return openV - slewingA * resistanceOhm;
  });
  const failing = slewVolts.findIndex((volts) => volts < resetBelowV);
  return {
    hours: Math.max(0, (supply.usableAh - extra) / trackingA),
    slewVolts,
    resetsAtSlew: failing < 0 ? null : failing + 1,
  };
}

/** What a supply still is after so many ampere-hours; nothing is left beyond what it can give. */
function after({ atFirst, atLast, usableAh }: EveningSupply, drawnAh: number): Source {
  if (drawnAh > usableAh) return { openV: 0, resistanceOhm: atLast.resistanceOhm };
  const share = drawnAh / usableAh;
  const between = (first: number, last: number): number => first + (last - first) * share;
  return {
    openV: between(atFirst.openV, atLast.openV),
    resistanceOhm: between(atFirst.resistanceOhm, atLast.resistanceOhm),
  };
}
