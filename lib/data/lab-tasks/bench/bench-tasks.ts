import 'server-only';
import type { BenchLab } from '../../../variants/bench/bench-labs';
import { balance } from './balance';
import { clockAndPlace } from './clock-and-place';
import { dressRehearsal } from './dress-rehearsal';
import { field } from './field';
import { finder } from './finder';
import { level } from './level';
import { power } from './power';
import { putItTogether } from './put-it-together';

/** Every bench lab's part in `labTasks`. */
export const benchTasks = {
  'put-it-together': putItTogether,
  level: level,
  balance: balance,
  power: power,
  finder: finder,
  field: field,
  'clock-and-place': clockAndPlace,
  'dress-rehearsal': dressRehearsal,
} satisfies Record<BenchLab, { lab: BenchLab }>;
