import type { z } from 'zod';
import { firstField } from './names';
import { stillOpen } from './lab-tasks/still-open';
import { failure, type Problem } from './result';

/** Says which field was not expected or does not fit; a score from outside is refused here. */
export function unreadableAnswer(error: z.ZodError): { ok: false; problem: Problem } {
  const stranger = error.issues.find((issue) => issue.code === 'unrecognized_keys');
  if (stranger !== undefined) {
    const field = [...stranger.path, ...stranger.keys.slice(0, 1)].join('.');
    return failure('unexpected-field', `"${field}" is not part of an answer. ${stillOpen}`, field);
  }
  return failure('bad-input', `This answer cannot be read. ${stillOpen}`, firstField(error));
}
