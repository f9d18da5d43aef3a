import type { SlipWords } from '@/components/grading/bench-result-view';
import type { DressRehearsalResult } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-result';
import type { BenchStage } from '@/lib/rehearsal/stages';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import * as balance from '../balance/balance-result-words';
import { clockSlipWords } from '../clock-and-place/clock-result-words';
import { finderSlipWords } from '../finder/finder-result-words';
import { hazardInWords } from '../finder/finder-words';
import * as level from '../level/level-result-words';
import * as power from '../power/power-result-words';
import * as build from '../put-it-together/slip-words';

const noWords: SlipWords = {
  what: 'Something was lost here.',
  why: '',
  next: 'Its own result below says more.',
};
const noGate = { title: 'something dangerous', text: 'Its own result below says more.' };

/** What cost most at a bench, in its own lab's words. */
export function benchSlipWords(
  stage: BenchStage,
  { benches }: DressRehearsalResult,
  { benches: variants }: DressRehearsalVariant,
): SlipWords {
  const first = <Slip>(slips: readonly Slip[] | undefined, say: (slip: Slip) => SlipWords) => {
    const slip = slips?.[0];
    return slip === undefined ? noWords : say(slip);
  };
  switch (stage) {
    case 'put-it-together':
      return first(benches[stage]?.slips, build.slipWords);
    case 'level':
      return first(benches.level?.slips, (slip) => level.slipWords(variants.level, slip));
    case 'balance':
      return first(benches.balance?.slips, (slip) => balance.slipWords(variants.balance, slip));
    case 'finder':
      return first(benches.finder?.slips, (slip) => finderSlipWords(slip, variants.finder));
    case 'power':
      return first(benches.power?.slips, power.slipWords);
    case 'clock-and-place': {
      const result = benches[stage];
      return result === null
        ? noWords
        : first(result.slips, (slip) => clockSlipWords(variants[stage], result, slip));
    }
  }
}

/** A bench's failed gate, in its own lab's words. */
export function benchGateWords(
  stage: BenchStage,
  gate: string,
  { benches }: DressRehearsalResult,
): { title: string; text: string } {
  const the = <Gate extends { id: string }>(
    gates: readonly Gate[] | undefined,
    say: (gate: Gate) => { title: string; text: string },
  ) => {
    const found = gates?.find(({ id }) => id === gate);
    return found === undefined ? noGate : say(found);
  };
  switch (stage) {
    case 'put-it-together':
      return the(benches[stage]?.gates, ({ id }) => build.gateWords[id]);
    case 'level':
      return the(benches.level?.gates, level.gateWords);
    case 'balance':
      return the(benches.balance?.gates, balance.gateWords);
    case 'finder':
      return the(benches.finder?.gates, hazardInWords);
    case 'power':
      return the(benches.power?.gates, power.gateWords);
    case 'clock-and-place':
      return noGate;
  }
}
