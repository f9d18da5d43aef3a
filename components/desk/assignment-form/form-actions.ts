import type { Place } from '@/lib/data/places';
import type { DraftInput, DraftProblem } from './draft-input';

/** A wall-clock time looked up on the server, where the zone rules and the ephemeris are. */
export type MomentAnswer =
  /** `isOver`: it lies in the past, by the server's clock. */
  | { ok: true; text: string; sunIsUp: boolean; isOver: boolean }
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
  /** `confirmed`: the question that an earlier answer asked was answered with yes. */
  save: (input: DraftInput, confirmed: boolean) => Promise<SaveAnswer>;
};

export type SaveAnswer =
  /** `href` is the page to go on to. */
  | { ok: true; href: string }
  | { ok: false; problems: DraftProblem[] }
  /** Nothing is saved until the teacher has said yes to this. */
  | { ok: false; question: SaveQuestion };

export type SaveQuestion = { title: string; text: string; confirmLabel: string };
