/** An expected failure, told so that a person can act on it. `field` names the input it belongs to. */
export type Problem = { code: string; message: string; field?: string };
export type Result<T> = { ok: true; value: T } | { ok: false; problem: Problem };

export const success = <T>(value: T): Result<T> => ({ ok: true, value });

export function failure(
  code: string,
  message: string,
  field?: string,
): { ok: false; problem: Problem } {
  return { ok: false, problem: field === undefined ? { code, message } : { code, message, field } };
}

export const alreadySubmitted = (): { ok: false; problem: Problem } =>
  failure('already-submitted', 'This attempt was submitted before. The first answer counts.');

/** What is not there and what is not yours look the same, so that asking tells nothing. */
export const notFound = (): { ok: false; problem: Problem } =>
  failure('not-found', 'There is nothing here that you may see or change.');
