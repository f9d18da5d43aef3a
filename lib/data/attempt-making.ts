import 'server-only';
import { loadCatalogue } from '../content/sky-catalogue';
import { labOptions, type Lab } from '../variants/labs';
import type { TaskInput } from './lab-tasks/lab-task';
import { labTaskOf } from './lab-tasks/lab-tasks';

/**
 * What an attempt freezes at its start: its variant, the answer key, and the versions of everything
 * that made them. From here on neither the sky nor the rules are computed again.
 */
export function frozenTask({
  lab,
  templatesSeen,
  ...input
}: Omit<TaskInput, 'templates'> & {
  lab: Lab;
  templates: readonly string[];
  /** Kinds of task the student has had; others go first while there are any. */
  templatesSeen: readonly string[];
}) {
  const fresh = input.templates.filter((template) => !templatesSeen.includes(template));
  // Where an attempt is of all kinds at once, none of them is done with.
  const left = labOptions[lab].ofAllKinds === true ? [] : fresh;
  const { seed } = input;
  return {
    seed,
    ...labTaskOf(lab).freeze({ ...input, templates: left.length > 0 ? left : input.templates }),
    catalogueVersion: loadCatalogue().version,
    zoneRulesVersion: process.versions['tz'] ?? 'unknown',
  };
}
