import type { PutItTogetherSubmission } from '../grading/bench/put-it-together/put-it-together-submission';
import type { DemoSkill } from './demo-choice';

/**
 * Work at "Put it together" of that quality, from the model answer: as it stands; two neighbours of it
 * exchanged and one look round passed over; put together backwards with an eye for nothing.
 */
export function demoAssembly(
  { order, hazards }: PutItTogetherSubmission,
  skill: DemoSkill,
): PutItTogetherSubmission {
  const [first, second, ...rest] = order;
  if (first === undefined || second === undefined) throw new Error('a task takes several steps');
  switch (skill) {
    case 'best':
      return { order, hazards };
    case 'middling':
      return { order: [second, first, ...rest], hazards: { ...hazards, lifting: [] } };
    case 'poor':
      return { order: order.toReversed(), hazards: { unfolding: [], lifting: [], finishing: [] } };
  }
}

/** The first half of it, and no look round yet. */
export const demoAssemblyBegun = ({ order }: PutItTogetherSubmission) => ({
  order: order.slice(0, Math.ceil(order.length / 2)),
  hazards: { unfolding: null, lifting: null, finishing: null },
});
