import { balanceTemplates, type BalanceVariant } from './balance/balance-variant';
import {
  clockAndPlaceTemplates,
  type ClockAndPlaceVariant,
} from './clock-and-place/clock-and-place-variant';
import {
  dressRehearsalTemplates,
  type DressRehearsalVariant,
} from './dress-rehearsal/dress-rehearsal-variant';
import { fieldTemplates, type FieldVariant } from './field/field-variant';
import { finderTemplates, type FinderVariant } from './finder/finder-variant';
import { levelTemplates, type LevelVariant } from './level/level-variant';
import { powerTemplates, type PowerVariant } from './power/power-variant';
import {
  putItTogetherTemplates,
  type PutItTogetherVariant,
} from './put-it-together/put-it-together-variant';

/** Every lab that stands on a bench, with its kinds of task. */
export const benchTemplates = {
  'put-it-together': putItTogetherTemplates,
  level: levelTemplates,
  balance: balanceTemplates,
  power: powerTemplates,
  finder: finderTemplates,
  field: fieldTemplates,
  'clock-and-place': clockAndPlaceTemplates,
  'dress-rehearsal': dressRehearsalTemplates,
} as const;
export type BenchLab = keyof typeof benchTemplates;
export type BenchTemplate = (typeof benchTemplates)[BenchLab][number];

/** A task of any bench lab; told apart by `lab`. */
export type AnyBenchVariant =
  | PutItTogetherVariant
  | LevelVariant
  | BalanceVariant
  | PowerVariant
  | FinderVariant
  | FieldVariant
  | ClockAndPlaceVariant
  | DressRehearsalVariant;

export const isBenchLab = (lab: string): lab is BenchLab => Object.hasOwn(benchTemplates, lab);
