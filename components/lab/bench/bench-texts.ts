import type { BenchLab } from '@/lib/variants/bench/bench-labs';
import type { BenchText } from './bench-text';
import { balanceText } from '../balance/balance-text';
import { clockAndPlaceText } from '../clock-and-place/clock-and-place-text';
import { dressRehearsalText } from '../dress-rehearsal/dress-rehearsal-text';
import { fieldText } from '../field/field-text';
import { finderText } from '../finder/finder-text';
import { levelText } from '../level/level-text';
import { powerText } from '../power/power-text';
import { putItTogetherText } from '../put-it-together/put-it-together-text';

export const benchTexts: Readonly<Record<BenchLab, BenchText>> = {
  'put-it-together': putItTogetherText,
  level: levelText,
  balance: balanceText,
  power: powerText,
  finder: finderText,
  field: fieldText,
  'clock-and-place': clockAndPlaceText,
  'dress-rehearsal': dressRehearsalText,
};
