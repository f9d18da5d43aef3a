'use client';

import { capitalised } from '@/lib/wording/capital';
import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { NumberAnswer } from '../bench/number-answer';
import { degreesInWords } from './field-words';
import { WayQuestion } from './way-question';

/** What is asked beside eyepiece and focus. */
export function FieldQuestions({
  variant,
  draft,
  change,
}: BenchViewProps<FieldVariant, FieldDraft>) {
  const { asks, target } = variant;
  const set = (part: Partial<FieldDraft>) => {
    change({ ...draft, ...part }, '', { merge: true });
  };
  return (
    <div className="space-y-4">
      {asks.includes('field') ? (
        <NumberAnswer
          label="How much sky does it show, from edge to edge?"
          hint="A degree is 60 arcminutes; the Moon is 31 across."
          unit="arcminutes"
          value={draft.fieldArcmin}
          least={0}
          most={6000}
          onChange={(fieldArcmin) => {
            set({ fieldArcmin });
          }}
        />
      ) : null}
      {asks.includes('drift') ? (
        <NumberAnswer
          label="With the mount off, how long does a star take from edge to edge?"
          hint={`${capitalised(target.name)}: declination ${degreesInWords(target.declinationDeg)}.`}
          unit="seconds"
          value={draft.driftSeconds}
          least={0}
          most={100_000}
          onChange={(driftSeconds) => {
            set({ driftSeconds });
          }}
        />
      ) : null}
      {asks.includes('limit') ? (
        <NumberAnswer
          label="How close may two equal stars stand for this telescope still to part them?"
          hint="An arcsecond is a sixtieth of an arcminute."
          unit="arcseconds"
          value={draft.limitArcsec}
          least={0}
          most={1000}
          onChange={(limitArcsec) => {
            set({ limitArcsec });
          }}
        />
      ) : null}
      {asks.includes('way') ? (
        <WayQuestion
          name="way"
          legend="Which way must the tube go to bring the ringed star to the middle?"
          along="Along the horizon"
          up="Up or down"
          value={draft.way}
          onChange={(way) => {
            change({ ...draft, way });
          }}
        />
      ) : null}
      {asks.includes('view') ? (
        <WayQuestion
          name="view"
          legend="Where in the eyepiece will the star appear?"
          along="Left or right of the middle"
          up="Above or below the middle"
          ends={['Above the middle', 'Below the middle']}
          value={draft.view}
          onChange={(view) => {
            change({ ...draft, view });
          }}
        />
      ) : null}
    </div>
  );
}
