import type { AlignmentOutcome } from '../pointing/pointing-model';

/** Where a go-to landed beside its target: along the horizon on the sky (right is positive), and up. */
export type Landing = { hip: number; name: string; rightDeg: number; upDeg: number };

/** What the settings card says was entered, as the learner reads it. */
export type SettingsCard = {
  /** "2026-12-05T19:30" */
  localTime: string;
  /** "+01:00", in winter: summer time comes on top of it. */
  timeZoneOffset: string;
  summerTime: boolean;
  latitudeText: string;
  longitudeText: string;
};

/** What someone could have noticed that evening; each a sentence's code, told only when asked for. */
export type Observation =
  | 'tube-stood-level'
  | 'tube-not-level'
  | 'bubble-in-the-ring'
  | 'bubble-off'
  | 'set-by-compass'
  | 'set-by-pole-star'
  | 'dot-agrees-with-eyepiece'
  | 'dot-beside-the-star-in-eyepiece'
  | 'clutches-firm'
  | 'clutch-loose'
  | 'tripod-was-touched'
  | 'tripod-untouched'
  | 'lamp-dimmed-while-slewing'
  | 'lamp-steady'
  | 'last-moves-right-and-up'
  | 'last-moves-any-way'
  | 'cable-free'
  | 'cable-taut';

/** Everything that one faulty evening shows, computed by running it. */
export type Evidence = {
  /** First slews, before the alignment: where the tube came to a stand. */
  first: Landing;
  second: Landing;
  outcome: AlignmentOutcome;
  /** Go-tos after the alignment; empty when there was none. */
  later: readonly Landing[];
  card: SettingsCard;
  observations: readonly Observation[];
};
