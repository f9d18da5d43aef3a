'use client';

import { RadioGroup } from '@/components/ui/radio-group';
import type { BenchViewProps } from '../bench/bench-parts';
import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import { eyepieceName } from './field-words';

/** The eyepieces in their box; what stands on each is all that is known of it. */
export function EyepieceBox({
  variant,
  draft,
  change,
}: Pick<BenchViewProps<FieldVariant, FieldDraft>, 'variant' | 'draft' | 'change'>) {
  const { eyepieces, template, unlabelled } = variant;
  const options = [
    ...eyepieces.map((eyepiece) => ({
      value: eyepiece.id,
      label: `${String(eyepiece.focalLengthMm)} mm`,
      hint: `${String(eyepiece.apparentFieldDeg)}° apparent field`,
      said: unlabelled === null ? `In: the ${eyepieceName(eyepiece)}.` : 'Said: that one is in.',
    })),
    ...(template === 'split-the-double'
      ? [
          {
            value: 'none',
            label: 'None will do',
            hint: 'No eyepiece here can show two stars',
            said: 'Said: none will do.',
          },
        ]
      : []),
  ];
  return (
    <RadioGroup
      legend={unlabelled === null ? 'Put in' : 'The one that is in is'}
      name="eyepiece"
      inline
      value={draft.eyepieceId ?? ''}
      options={options}
      onValueChange={(eyepieceId) => {
        const said = options.find(({ value }) => value === eyepieceId)?.said ?? '';
        change({ ...draft, eyepieceId }, said);
      }}
    />
  );
}
