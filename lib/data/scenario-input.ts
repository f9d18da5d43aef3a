import { z } from 'zod';
import { scenarioSchema } from '../pointing/scenario';

/** A scenario with the name its place is shown under and the built-in kit and site it came from. */
export const assignmentScenarioSchema = z.strictObject({
  placeName: z.string().trim().min(1, 'Say which place this is.').max(120),
  scenario: scenarioSchema,
  kitId: z.string().max(60).nullable(),
  siteId: z.string().max(60).nullable(),
});
