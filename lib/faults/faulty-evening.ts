import type { SkyLight } from '../alignment/lights';
import type { RunSetup } from '../alignment/setup';
import type { EnteredSettings } from '../clock/entered-settings';
import type { FieldOffset } from '../optics/image-orientation';
import type { Telescope } from '../pointing/scenario';
import type { GeographicPlace } from '../sky/astronomy';
import type { StarCatalogue } from '../sky/catalogue';
import type { SkyFrame } from '../sky/sky-frame';
import type { CureId, FaultId } from './fault-ids';

/** A star that the mount was sent to. */
export type Target = { hip: number; name: string };

/** Which way an axis went last before the button was pressed: +1 is right, or up. */
export type LastMove = { azimuth: 1 | -1; altitude: 1 | -1 };

/** What the person at the telescope does, and how well. */
export type Habits = {
  start: {
    /** True azimuth that was taken for north. */
    azimuthDeg: number;
    altitudeDeg: number;
    northBy: 'compass' | 'pole';
  };
  /** What was really brought to the middle for the first and for the second star. */
  centres: readonly [SkyLight, SkyLight];
  centresBy: 'eyepiece' | 'dot';
  /** Where the star was left, beside the middle. */
  centring: readonly [FieldOffset, FieldOffset];
  lastMoves: readonly [LastMove, LastMove];
};

/** What stands behind a disturbance, for somebody who looks. */
export type Surroundings = {
  clutches: 'firm' | 'loose';
  tripod: 'untouched' | 'touched';
  lamp: 'steady' | 'dims';
  cable: 'free' | 'taut';
};

/** What somebody may have paid attention to. */
export const topics = [
  'tube',
  'bubble',
  'north',
  'dot',
  'clutches',
  'tripod',
  'lamp',
  'last-moves',
  'cable',
] as const;
export type Topic = (typeof topics)[number];

/**
 * One evening with a telescope, whole: the sky, the hidden truth of the set-up, what was entered and
 * how it was worked. A fault is a change of it; nothing in it says which fault there is.
 */
export type Evening = {
  /** The true sky when the telescope is set to its start position. */
  frame: SkyFrame;
  place: GeographicPlace;
  catalogue: StarCatalogue;
  computer: Telescope['computer'];
  /** Standard deviation of one centring, per axis. */
  centringArcmin: number;
  centringFieldRadiusArcmin: number;
  setup: RunSetup;
  entered: EnteredSettings;
  habits: Habits;
  surroundings: Surroundings;
  first: Target;
  second: Target;
  /** Gone to after an alignment. */
  later: readonly Target[];
  /** One of them may be gone to as well. */
  test: readonly Target[];
  /** Other lights that could be taken for the first or for the second star, likeliest first. */
  mistakable: readonly [readonly SkyLight[], readonly SkyLight[]];
  noticed: readonly Topic[];
};

/** How large the faults of one evening are, whichever it is, so that no size gives one away. */
export type FaultSizes = {
  /** Of a base off level, and to the nearest degree of a wrong latitude. */
  tiltDeg: number;
  tiltTowardsDeg: number;
  startAltitudeDeg: number;
  /** By which a tube slips or is pushed, or a stand is turned. */
  push: { azimuthDeg: number; altitudeDeg: number };
  /** By which a kicked tripod leans more than before. */
  leanDeg: number;
  /** To what the finder was set on, metres, and on which side of the tube it sits. */
  finderDistanceM: number;
  finderSide: 1 | -1;
};

/** A set-up fault: every way in which it can happen on an evening that had none. */
export type Fault = {
  id: FaultId;
  /** Each puts it right. */
  cures: readonly CureId[];
  /** Empty where it cannot happen: no planet is up, or there is no other hour. */
  forms: (evening: Evening, sizes: FaultSizes) => readonly Evening[];
};
