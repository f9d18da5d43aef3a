/** Colours by what they are for; the themes give them their values (app/globals.css). */
export type Tone =
  | 'ink'
  | 'soft'
  | 'line'
  | 'strong'
  | 'panel'
  | 'sunken'
  | 'accent'
  | 'lamp'
  | 'good'
  | 'caution'
  | 'danger'
  | 'sky'
  | 'sky-line'
  | 'on-sky'
  | 'on-sky-soft'
  | 'sky-lamp'
  | 'land';

type Stroke = { stroke?: Tone; width?: number; dashed?: boolean };
type Paint = Stroke & { fill?: Tone };

/** One stroke of a drawing; lengths in the drawing's own units, y downwards, angles clockwise. */
export type Shape =
  | ({ kind: 'line'; x1: number; y1: number; x2: number; y2: number } & Stroke)
  | ({ kind: 'circle'; cx: number; cy: number; r: number } & Paint)
  | ({
      kind: 'rect';
      x: number;
      y: number;
      w: number;
      h: number;
      round?: number;
      /** About its own middle. */
      turnDeg?: number;
    } & Paint)
  | ({ kind: 'path'; d: string } & Paint)
  | {
      kind: 'text';
      x: number;
      y: number;
      text: string;
      /** 14 unless said; below 12 nobody reads it on a phone, where a drawing of 320 is 320 px wide. */
      size?: number;
      tone?: Tone;
      anchor?: 'start' | 'middle' | 'end';
      bold?: boolean;
    };

/**
 * What a question shows: an instrument to read, parts to point at, what happens. Plain data, so that it is
 * made by the engine, kept with the question and drawn anywhere.
 */
export type ItemDrawing = {
  /** 320 as a rule; the drawing spans 0…width and 0…height. */
  width: number;
  height: number;
  /** What the drawing shows, in words, so that the question can be answered without seeing it. */
  alternative: string;
  shapes: readonly Shape[];
};
