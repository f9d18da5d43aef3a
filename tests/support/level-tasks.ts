import { generateLevel } from '@/lib/variants/bench/level/generate-level';
import {
  levelTemplates,
  type LevelTemplate,
  type LevelVariant,
} from '@/lib/variants/bench/level/level-variant';
import { manyBenchTasks } from './bench-tasks';

/** So many tasks of each kind, on the three telescopes in turn. */
export const manyLevelTasks = (ofEach: number): LevelVariant[] =>
  manyBenchTasks(generateLevel, levelTemplates, ofEach);

/** So many tasks of one kind. */
export const levelTasksOf = (template: LevelTemplate, count: number): LevelVariant[] =>
  manyBenchTasks(generateLevel, [template], count);

/** One task of a kind, always the same. */
export function levelTask(template: LevelTemplate): LevelVariant {
  const [task] = levelTasksOf(template, 1);
  if (task === undefined) throw new Error('one task was asked for');
  return task;
}
