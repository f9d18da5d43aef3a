import { hazardMoments } from '@/lib/assembly/hazards';
import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { AnswerLine } from '../bench/bench-parts';
import { momentName, sightName } from './sight-words';
import { stepName } from './step-words';

/** An answer at "Put it together" in words: for its student before it is sent, and for the teacher's answer key. */
export function putItTogetherReview(
  { order, hazards }: PutItTogetherDraft,
  { cards }: PutItTogetherVariant,
): readonly AnswerLine[] {
  const leftOut = cards.filter((step) => !order.includes(step));
  return [
    {
      asked: 'In this order',
      answer: order.map((step, index) => `${String(index + 1)}. ${stepName[step]}`).join(' · '),
    },
    ...(leftOut.length === 0
      ? []
      : [
          { asked: 'Left on the bench', answer: leftOut.map((step) => stepName[step]).join(' · ') },
        ]),
    ...hazardMoments.map((moment) => ({
      asked: `Dangerous ${momentName[moment].toLowerCase()}`,
      answer:
        (hazards[moment] ?? []).map((sight) => sightName[sight]).join(' · ') || 'nothing of it',
    })),
  ];
}
