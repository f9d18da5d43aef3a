'use client';

import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { FieldQuestions } from './field-questions';
import { orientationInWords, taskInWords } from './field-words';

/** The task, what is known of the telescope, and the questions. */
export function FieldPanel(props: BenchViewProps<FieldVariant, FieldDraft>) {
  const { variant } = props;
  const { telescope, kitName, orientation } = variant;
  return (
    <div className="space-y-4">
      <p>{taskInWords(variant)}</p>
      <dl className="grid grid-cols-[auto_1fr] gap-x-4 text-sm">
        <dt className="text-soft">Telescope</dt>
        <dd>{kitName}</dd>
        <dt className="text-soft">Focal length</dt>
        <dd className="font-figures">{telescope.focalLengthMm} mm</dd>
        <dt className="text-soft">Aperture</dt>
        <dd className="font-figures">{telescope.apertureMm} mm</dd>
        <dt className="text-soft">Its view</dt>
        <dd>{orientationInWords[orientation]}</dd>
      </dl>
      <FieldQuestions {...props} />
    </div>
  );
}
