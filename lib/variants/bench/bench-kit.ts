import { z } from 'zod';
import type { ImageOrientation, TubeType } from '../../optics/image-orientation';
import type { Eyepiece } from '../../pointing/scenario';

const mm = z.number().positive();

/** Everything that can sit on a tube and weighs something. */
export const tubePartIds = [
  'eyepiece-25',
  'eyepiece-9',
  'diagonal',
  'prism',
  'finder',
  'phone-adapter',
  'dew-shield',
] as const;
export type TubePartId = (typeof tubePartIds)[number];

/** What the bench needs to know of a telescope beyond its optics; in the kit's file. */
export const kitBenchSchema = z.strictObject({
  tube: z.strictObject({
    massKg: z.number().positive(),
    lengthMm: mm,
    diameterMm: mm,
    /** Of the bare tube, from its front end towards its back. */
    centreOfMassFromFrontMm: mm,
    dovetailLengthMm: mm,
    /** How far the centre of mass lies above the altitude axis when the tube is level. */
    centreAboveAxisMm: z.number(),
  }),
  /** From the tube's axis to the finder's. */
  finderBesideTubeMm: mm,
  parts: z.array(
    z.strictObject({
      id: z.enum(tubePartIds),
      name: z.string().min(1),
      massKg: z.number().positive(),
      /** Where its weight acts, from the tube's front end towards its back; negative before the front. */
      fromFrontMm: z.number(),
    }),
  ),
  tripod: z.strictObject({
    /** From the middle to each foot, on level ground. */
    footCircleRadiusMm: mm,
    /** Of a leg from the vertical. */
    splayDeg: z.number().positive().max(60),
    legMinMm: mm,
    legMaxMm: mm,
  }),
});
export type KitBench = z.infer<typeof kitBenchSchema>;

/** One telescope as the bench labs take it up. */
export type BenchKit = KitBench & {
  /** Null for a telescope of the teacher's own numbers: its bench is then a built-in kit's. */
  id: string | null;
  name: string;
  tubeType: TubeType;
  orientation: ImageOrientation;
  focalLengthMm: number;
  apertureMm: number;
  eyepieces: readonly (Eyepiece & { id: string })[];
  observingEyepieceId: string;
  centringEyepieceId: string;
};
