import type { ClampedTube } from '../balance/torque';
import type { FieldOffset } from '../optics/image-orientation';
import type { ClockAndPlaceSlip } from './believed-frame';
import { creepOver } from './creep-over';
import { kickThatBites, noSlips, type Kick, type Slips, type TripodStanding } from './slips';

/** What each stage has left behind when the alignment begins, in plain numbers. */
export type HandedOn = {
  tripod: TripodStanding;
  tilt: Slips['tilt'];
  tube: { clamped: ClampedTube; holdingTorqueNm: number };
  dot: FieldOffset;
  /** Null: the computer stays dark. `hours` null: a supply that says nothing of how long it lasts. */
  power: { resetsAtSlew: number | null; hours: number | null } | null;
  /** Null: the computer does not take what was entered. */
  clockAndPlace: ClockAndPlaceSlip | null;
  clutchesLocked: boolean;
};

/** What the evening holds ready, whatever the learner does. */
export type EveningEvents = {
  /** Somebody meets a leg in the dark, or the wind the tube. Null on a quiet evening. */
  kick: Kick | null;
  /** How far the tube would stay behind in a clutch that is not locked. */
  ifNotLocked: NonNullable<Slips['clutch']>;
};

export type NotReady = 'dark' | 'not-taken' | 'resets-at-once';

/** Between the two stars, and from the second to the third; an evening's usual minutes. */
const minutes = { betweenStars: 3, afterSecond: 2 };

export type SlipsHandedOn = { ok: true; slips: Slips } | { ok: false; reason: NotReady };

/**
 * Everything that the stages have left behind as slips of the run, but for the start position, with
 * which a run begins. `altitudesDeg` are of the two stars it is planned on. Not ready: a computer that
 * is dark, takes no such clock or place, or begins anew as soon as its motors turn.
 */
export function slipsHandedOn(
  { tripod, tilt, tube, dot, power, clockAndPlace, clutchesLocked }: HandedOn,
  { kick, ifNotLocked }: EveningEvents,
  altitudesDeg: readonly [first: number, second: number],
): SlipsHandedOn {
  if (power === null) return { ok: false, reason: 'dark' };
  if (clockAndPlace === null) return { ok: false, reason: 'not-taken' };
  if (power.resetsAtSlew === 1) return { ok: false, reason: 'resets-at-once' };
  const { clamped, holdingTorqueNm } = tube;
  const creeps = (altitudeDeg: number, during: number): number =>
    creepOver({ tube: clamped, holdingTorqueNm, altitudeDeg, minutes: during });
  return {
    ok: true,
    slips: {
      ...noSlips,
      tilt,
      clockAndPlace,
      dot,
      creep: {
        betweenStarsDeg: creeps(altitudesDeg[0], minutes.betweenStars),
        afterSecondDeg: creeps(altitudesDeg[1], minutes.afterSecond),
      },
      clutch: clutchesLocked ? null : ifNotLocked,
      kick: kickThatBites(kick, tripod),
      resetsAtSlew: power.resetsAtSlew,
    },
  };
}
