import type { BalanceResult } from './balance/balance-result';
import type { ClockAndPlaceResult } from './clock-and-place/clock-and-place-result';
import type { DressRehearsalResult } from './dress-rehearsal/dress-rehearsal-result';
import type { FieldResult } from './field/field-result';
import type { FinderResult } from './finder/finder-result';
import type { LevelResult } from './level/level-result';
import type { PowerResult } from './power/power-result';
import type { PutItTogetherResult } from './put-it-together/put-it-together-result';

/** What came of a task of any bench lab; told apart by `lab`. */
export type AnyBenchResult =
  | PutItTogetherResult
  | LevelResult
  | BalanceResult
  | PowerResult
  | FinderResult
  | FieldResult
  | ClockAndPlaceResult
  | DressRehearsalResult;
