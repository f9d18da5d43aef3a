import type { Place } from '@/lib/data/places';
import type { DraftInput, DraftProblem } from './draft-input';

/** A wall-clock time looked up on the server, where the zone rules and the ephemeris are. */
export type MomentAnswer =
  | { ok: true; text: string; sunIsUp: boolean }
  /** Each candidate is a local time with its offset, accepted as it stands. */
  | { ok: false; message: string; candidates: readonly { localTime: string; label: string }[] };

export type MomentQuestion = {
  localTime: string;
  timeZone: string;
  /** With a place, the answer tells of the Sun and the Moon too. */
  place: { latitudeDeg: number; longitudeDeg: number; elevationM: number } | null;
};

export type DuskAnswer =
  { ok: true; localTime: string; text: string } | { ok: false; message: string };

/** The server's part of the form, handed down by the page. */
export type AssignmentFormActions = {
  searchPlaces: (query: string) => Promise<Place[]>;
  lookUpMoment: (question: MomentQuestion) => Promise<MomentAnswer>;
  duskTonight: (question: {
    latitudeDeg: number;
    longitudeDeg: number;
    timeZone: string;
  }) => Promise<DuskAnswer>;
  /** `href` is the page to go on to. */
  save: (
    input: DraftInput,
  ) => Promise<{ ok: true; href: string } | { ok: false; problems: DraftProblem[] }>;
};
