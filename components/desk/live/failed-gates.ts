import * as balance from '@/components/lab/balance/balance-result-words';
import { gateWords as rehearsalGateWords } from '@/components/lab/dress-rehearsal/result-words';
import { stageWords } from '@/components/lab/dress-rehearsal/stage-words';
import { hazardInWords } from '@/components/lab/finder/finder-words';
import * as level from '@/components/lab/level/level-result-words';
import * as power from '@/components/lab/power/power-result-words';
import * as build from '@/components/lab/put-it-together/slip-words';
import type { LabResult } from '@/lib/data/lab-tasks/lab-tasks';

/** What a result's failed safety gates are called, each in its own lab's words. */
export function failedGates(result: LabResult): string[] {
  switch (result.lab) {
    case 'put-it-together':
      return result.gates.map(({ id }) => build.gateWords[id].title);
    case 'level':
      return result.gates.map((gate) => level.gateWords(gate).title);
    case 'balance':
      return result.gates.map((gate) => balance.gateWords(gate).title);
    case 'power':
      return result.gates.map((gate) => power.gateWords(gate).title);
    case 'finder':
      return result.gates.map((gate) => hazardInWords(gate).title);
    case 'alignment-run':
      return result.gates.map(() => 'too close to the Sun');
    case 'dress-rehearsal':
      return result.gates.map(
        (gate) => `${stageWords[gate.id].title}: ${rehearsalGateWords(gate, result).title}`,
      );
    // Nothing can be hurt in these.
    case 'field':
    case 'clock-and-place':
    case 'pick-the-pair':
    case 'what-went-wrong':
    case 'lesson-questions':
      return [];
  }
}
