import type { SkyLight } from '../alignment/lights';
import type { FieldOffset } from '../optics/image-orientation';
import type { Telescope } from '../pointing/scenario';
import type { StarCatalogue } from '../sky/catalogue';
import type { SkyFrame } from '../sky/sky-frame';
import type { OwnTelescope } from './evening-setup';
import type { Slips } from './slips';

/** What the hand did at one of the two stars, up to "This is the star". */
export type HandAtStar = {
  /** The star that was asked for. */
  hip: number;
  /** What was really brought to the middle. */
  light: SkyLight;
  /** Brought to the middle of the eyepiece, or only under the finder's dot. */
  by: 'eyepiece' | 'dot';
  /** Where it was left beside that middle: right along the horizon, and up. */
  left: FieldOffset;
  /** Play that was still in the readings: tube less reading on each axis. */
  lagArcmin: { azimuth: number; altitude: number };
  /** Sky time from the run's first instant. */
  atMs: number;
  /** How many confirms the run had seen before this one. */
  confirmsBefore: number;
};

/** One evening with all that can go wrong in it, each by itself: what a miss is traced through. */
export type RehearsedEvening = {
  /** The true sky at the run's first instant. */
  frame: SkyFrame;
  catalogue: StarCatalogue;
  latitudeDeg: number;
  computer: Telescope['computer'];
  telescope: OwnTelescope;
  slips: Slips;
  /** The start position counts from when it was last set: after so many confirms, 0 as a rule. */
  startedAfterConfirms: number;
  /** At the stars that the alignment rests on; none or one of them before there is one. */
  hands: readonly HandAtStar[];
};

/** A drive to a star, and when it has ended. */
export type GoTo = {
  hip: number;
  atMs: number;
  /** How many confirms the run had seen before it. */
  confirmsBefore: number;
};
