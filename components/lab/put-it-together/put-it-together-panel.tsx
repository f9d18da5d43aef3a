'use client';

import { SunCaution } from '@/components/ui/sun-caution';
import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import type {
  PutItTogetherTemplate,
  PutItTogetherVariant,
} from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { HazardSpotting } from './hazard-spotting';
import { StepsDone } from './step-cards';

const task: Readonly<Record<PutItTogetherTemplate, (kit: string) => string>> = {
  'from-the-case': (kit) =>
    `${kit} lies in its case, and the Sun has set. Put it together, step by step. Several orders are right; not everything on the bench belongs to it.`,
  'half-built': (kit) =>
    `Somebody has begun with ${kit} and was called away. One thing was left out. Put that right first, then go on; the Sun has set.`,
  'mixed-case': (kit) =>
    `The stand is up. In the case are the parts of three telescopes: put on ${kit} what belongs to it, in an order that is safe; the Sun has set.`,
  'by-day': (kit) =>
    `It is afternoon and the Sun is up. Put ${kit} together for tonight, as far as that may be done now.`,
  'take-down': (kit) => `The evening is over. Take ${kit} down again, safely.`,
};

/** The task, what has been done, and three looks round for danger. */
export function PutItTogetherPanel(
  props: BenchViewProps<PutItTogetherVariant, PutItTogetherDraft>,
) {
  const { template, kitName } = props.variant;
  return (
    <div className="space-y-5">
      <p>{task[template](kitName)}</p>
      {template === 'by-day' ? <SunCaution short /> : null}
      <StepsDone {...props} />
      <HazardSpotting {...props} />
      {template === 'by-day' ? null : <SunCaution short />}
      <p className="text-sm">
        <strong className="font-semibold text-caution">With care:</strong> lift with two, keep
        fingers clear of folding legs, and leave the rest to the adult who knows the place.
      </p>
    </div>
  );
}
