import { z } from 'zod';
import { hazardMoments, sights } from '../../../assembly/hazards';
import { assemblySteps } from '../../../assembly/steps';
import type { PutItTogetherResult } from '../../../grading/bench/put-it-together/put-it-together-result';
import {
  putItTogetherTemplates,
  type PutItTogetherVariant,
} from '../../../variants/bench/put-it-together/put-it-together-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Put it together". */

const template = z.enum(putItTogetherTemplates);
const step = z.enum(assemblySteps);
const moment = z.enum(hazardMoments);
const sight = z.enum(sights);

export const putItTogetherVariantSchema: z.ZodType<PutItTogetherVariant> = z.object({
  lab: z.literal('put-it-together'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  kind: z.enum(['build', 'build-by-day', 'take-down']),
  done: z.array(step),
  cards: z.array(step),
  moments: z.array(z.object({ moment, seen: z.array(sight) })),
});

export const putItTogetherResultSchema: z.ZodType<PutItTogetherResult> = z.object({
  lab: z.literal('put-it-together'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(
    z.object({
      id: z.enum(['order', 'complete', 'unfolding', 'lifting', 'finishing']),
      earned: number,
      possible: number,
    }),
  ),
  gates: z.array(z.object({ id: z.enum(['tube-fell', 'tipped-over', 'caps-off-by-day']) })),
  slips: z.array(
    z.discriminatedUnion('code', [
      z.object({ code: z.literal('too-early'), before: step, after: step }),
      z.object({ code: z.literal('left-undone'), step }),
      z.object({ code: z.literal('missing'), step }),
      z.object({ code: z.literal('stray'), step }),
      z.object({ code: z.literal('hazard-missed'), moment, sight }),
      z.object({ code: z.literal('not-a-hazard'), moment, sight }),
    ]),
  ),
  order: z.array(step),
});
