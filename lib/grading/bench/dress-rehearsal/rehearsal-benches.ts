import type { z } from 'zod';
import type { RehearsalBenches } from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { balanceSubmissionSchema } from '../balance/balance-submission';
import type { BenchGrading } from '../bench-result';
import { clockAndPlaceSubmissionSchema } from '../clock-and-place/clock-and-place-submission';
import type { BenchResults } from './dress-rehearsal-result';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';
import { finderSubmissionSchema } from '../finder/finder-submission';
import { formAsItStands } from '../clock-and-place/clock-and-place-work';
import { gradeBalance } from '../balance/grade-balance';
import { gradeClockAndPlace } from '../clock-and-place/grade-clock-and-place';
import { gradeFinder } from '../finder/grade-finder';
import { gradeLevel } from '../level/grade-level';
import { gradePower } from '../power/grade-power';
import { gradePutItTogether } from '../put-it-together/grade-put-it-together';
import { levelSubmissionSchema } from '../level/level-submission';
import { powerSubmissionSchema } from '../power/power-submission';
import { putItTogetherSubmissionSchema } from '../put-it-together/put-it-together-submission';

/** Marks by a lab's own grader; null for work that is not finished, or that the lab refuses. */
function marked<V, S, R>(
  schema: z.ZodType<S>,
  grade: (work: { variant: V; submission: S }) => BenchGrading<R>,
  variant: V,
  work: unknown,
): R | null {
  const submission = schema.safeParse(work);
  if (!submission.success) return null;
  const grading = grade({ variant, submission: submission.data });
  return grading.ok ? grading.result : null;
}

/** What each bench's own lab says of the work that was left on it. */
export function benchResults(
  variants: RehearsalBenches,
  work: DressRehearsalSubmission['benches'],
): BenchResults {
  const clock = work['clock-and-place'];
  return {
    'put-it-together': marked(
      putItTogetherSubmissionSchema,
      gradePutItTogether,
      variants['put-it-together'],
      work['put-it-together'],
    ),
    level: marked(levelSubmissionSchema, gradeLevel, variants.level, work.level),
    balance: marked(balanceSubmissionSchema, gradeBalance, variants.balance, work.balance),
    finder: marked(finderSubmissionSchema, gradeFinder, variants.finder, work.finder),
    power: marked(powerSubmissionSchema, gradePower, variants.power, work.power),
    'clock-and-place': marked(
      clockAndPlaceSubmissionSchema,
      gradeClockAndPlace,
      variants['clock-and-place'],
      { ...clock, form: formAsItStands(variants['clock-and-place'], clock) },
    ),
  };
}
