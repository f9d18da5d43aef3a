import { z } from 'zod';
import type { RunKit } from '../../alignment/setup';
import type { AlignmentOutcome } from '../../pointing/pointing-model';
import { number } from './stored-sky';

/* Parts of an attempt's JSON columns that tell of a telescope on its mount. */

export const runKitSchema: z.ZodType<RunKit> = z.object({
  name: z.string(),
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  orientation: z.enum(['true', 'mirrored', 'turned']),
  centringEyepiece: z.object({ focalLengthMm: number, apparentFieldDeg: number }),
});

const rowOfThree = [number, number, number] as const;
const matrixSchema = z.tuple([...rowOfThree, ...rowOfThree, ...rowOfThree]);

export const outcomeSchema: z.ZodType<AlignmentOutcome> = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('agree'),
    model: z.object({ base: matrixSchema, altitudeZeroDeg: number }),
    mismatchArcmin: number,
    baseTiltDeg: number,
  }),
  z.object({ kind: z.literal('disagree'), mismatchArcmin: number }),
  z.object({ kind: z.literal('absurd-zero'), altitudeZeroDeg: number.nullable() }),
  z.object({
    kind: z.literal('base-on-its-side'),
    baseTiltDeg: number,
    mismatchArcmin: number,
  }),
  z.object({ kind: z.literal('undetermined') }),
]);
