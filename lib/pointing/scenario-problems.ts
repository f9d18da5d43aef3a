import type { z } from 'zod';

/** What is wrong with one field, in a sentence that goes after its name, and what to do. */
export type ScenarioProblem = { field: string; message: string };

/** What a schema found wrong with the shape of a scenario, field by field. */
export const shapeProblems = (error: z.ZodError, json: unknown): ScenarioProblem[] =>
  error.issues.flatMap((issue) => inWords(issue, json));

function inWords(issue: z.core.$ZodIssue, json: unknown): ScenarioProblem[] {
  const field = fieldName(issue.path);
  const given = valueAt(json, issue.path);
  const shown = shownValue(given);
  const one = (message: string): ScenarioProblem[] => [{ field, message }];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        field: fieldName([...issue.path, key]),
        message: 'is not a field that a scenario has: check its spelling or take it out.',
      }));
    case 'invalid_type':
      return given === undefined
        ? one(`is missing: give ${kinds[issue.expected] ?? issue.expected}.`)
        : one(`is ${shown}, but must be ${kinds[issue.expected] ?? issue.expected}.`);
    case 'invalid_value': {
      const values = issue.values.map((value) => JSON.stringify(value)).join(' or ');
      return one(
        given === undefined ? `is missing: give ${values}.` : `is ${shown}, but must be ${values}.`,
      );
    }
    case 'too_small':
      return one(
        `is ${shown}, but must be ${issue.inclusive === false ? 'more than' : 'at least'} ${String(issue.minimum)}.`,
      );
    case 'too_big':
      return issue.origin === 'array'
        ? one(`has too many entries: at most ${String(issue.maximum)} are allowed.`)
        : one(
            `is ${shown}, but must be ${issue.inclusive === false ? 'less than' : 'at most'} ${String(issue.maximum)}.`,
          );
    default:
      return one(`cannot be read: ${issue.message}.`);
  }
}

const kinds: Record<string, string> = {
  number: 'a number',
  string: 'a text in quotes',
  object: 'a group of fields in { }',
  array: 'a list in [ ]',
};

function fieldName(path: readonly PropertyKey[]): string {
  const name = path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '');
  return name === '' ? 'scenario' : name;
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  let value = json;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = Reflect.get(value, key);
  }
  return value;
}

function shownValue(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of fields';
  const text = JSON.stringify(value) as string | undefined;
  if (text === undefined) return String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
