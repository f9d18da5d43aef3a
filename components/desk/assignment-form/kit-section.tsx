'use client';

import { Field } from '@/components/ui/field';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { DecimalField } from '../decimal-field';
import {
  eyepieceText,
  telescopeText,
  type AssignmentDraft,
  type KitChoice,
} from './assignment-draft';
import { readNumber } from '../read-number';
import { fieldOfView, fieldOfViewText } from './field-of-view';
import { Fold } from './fold';
import type { SectionProps } from './section';
import { kitWords } from './set-words';

const asNumber = (text: string): number => {
  const value = readNumber(text);
  return typeof value === 'number' ? value : Number.NaN;
};

export function KitSection({
  draft,
  change,
  problemAt,
  kits,
}: SectionProps<AssignmentDraft> & { kits: readonly KitChoice[] }) {
  const kit = kits.find((choice) => choice.id === draft.kitId);
  const view = fieldOfView({
    telescopeFocalLengthMm: asNumber(draft.telescope.focalLengthMm),
    apertureMm: asNumber(draft.telescope.apertureMm),
    eyepieceFocalLengthMm: asNumber(draft.eyepiece.focalLengthMm),
    apparentFieldDeg: asNumber(draft.eyepiece.apparentFieldDeg),
  });

  function choose(id: string): void {
    const chosen = kits.find((choice) => choice.id === id);
    if (chosen === undefined) {
      // The numbers of the kit chosen last stay as a start.
      change({ kitId: null });
      return;
    }
    const eyepiece =
      chosen.eyepieces.find((piece) => piece.id === chosen.observingEyepieceId) ??
      chosen.eyepieces[0];
    change({
      kitId: chosen.id,
      telescope: telescopeText(chosen.telescope),
      ...(eyepiece === undefined ? {} : { eyepiece: eyepieceText(eyepiece) }),
    });
  }

  return (
    <Fold
      asSection
      id="section-kit"
      title="Telescope and eyepiece"
      now={kitWords(draft, kits)}
      hasProblem={ownNumberFields.some((field) => problemAt(field) !== null)}
    >
      <RadioGroup
        legend="Telescope"
        name="kit"
        value={draft.kitId ?? 'own'}
        options={[
          ...kits.map((choice) => ({
            value: choice.id,
            label: `${choice.name}: ${choice.telescope.apertureMm} mm, f/${Number((choice.telescope.focalLengthMm / choice.telescope.apertureMm).toFixed(2))}`,
            hint: choice.description,
          })),
          {
            value: 'own',
            label: 'Own numbers',
            hint: 'For a telescope of yours that none of these stands for.',
          },
        ]}
        onValueChange={choose}
      />
      {kit === undefined ? (
        <OwnNumbers draft={draft} change={change} problemAt={problemAt} />
      ) : (
        <Field
          label="Eyepiece the targets are looked at with"
          hint="The narrower its field, the better the pair must be."
        >
          {(control) => (
            <Select
              {...control}
              className="max-w-md"
              value={
                kit.eyepieces.find(
                  (piece) => String(piece.focalLengthMm) === draft.eyepiece.focalLengthMm,
                )?.id ?? kit.observingEyepieceId
              }
              onChange={(event) => {
                const piece = kit.eyepieces.find((choice) => choice.id === event.target.value);
                if (piece !== undefined) change({ eyepiece: eyepieceText(piece) });
              }}
            >
              {kit.eyepieces.map((piece) => (
                <option key={piece.id} value={piece.id}>
                  {piece.focalLengthMm} mm, apparent field {piece.apparentFieldDeg}°
                </option>
              ))}
            </Select>
          )}
        </Field>
      )}
      <p className="font-figures">
        <span className="font-semibold">Together: </span>
        {view === null
          ? 'fill in the numbers to see magnification and true field.'
          : fieldOfViewText(view)}
      </p>
    </Fold>
  );
}

const telescopeFields = [
  ['focalLengthMm', 'Focal length', 'mm', undefined],
  ['apertureMm', 'Aperture', 'mm', undefined],
  [
    'centringArcmin',
    'Centring error',
    '′',
    'How far off centre a star is left, one standard deviation. A tenth of the field radius of the centring eyepiece is usual.',
  ],
  [
    'altitudeZeroArcmin',
    'Altitude zero error',
    '′',
    'How far the mount’s idea of level is off. It does not matter where the computer solves for it.',
  ],
  [
    'coneArcmin',
    'Cone error',
    '′',
    'How far the tube’s axis leans out of square with the altitude axis.',
  ],
  ['axisSkewArcmin', 'Axis skew', '′', 'How far the two axes are from square.'],
] as const;

const ownNumberFields = [
  ...telescopeFields.map(([key]) => `scenario.telescope.${key}`),
  'scenario.eyepiece.focalLengthMm',
  'scenario.eyepiece.apparentFieldDeg',
];

function OwnNumbers({ draft, change, problemAt }: SectionProps<AssignmentDraft>) {
  return (
    <div className="space-y-4 rounded-md border border-line bg-panel p-4">
      <div className="grid gap-x-6 gap-y-4 sm:grid-cols-2">
        {telescopeFields.map(([key, label, unit, hint]) => (
          <DecimalField
            key={key}
            id={`scenario.telescope.${key}`}
            label={label}
            unit={unit}
            hint={hint}
            error={problemAt(`scenario.telescope.${key}`)}
            value={draft.telescope[key]}
            onChange={(value) => change({ telescope: { ...draft.telescope, [key]: value } })}
          />
        ))}
        <DecimalField
          id="scenario.eyepiece.focalLengthMm"
          label="Eyepiece, focal length"
          unit="mm"
          error={problemAt('scenario.eyepiece.focalLengthMm')}
          value={draft.eyepiece.focalLengthMm}
          onChange={(focalLengthMm) => change({ eyepiece: { ...draft.eyepiece, focalLengthMm } })}
        />
        <DecimalField
          id="scenario.eyepiece.apparentFieldDeg"
          label="Eyepiece, apparent field"
          unit="°"
          error={problemAt('scenario.eyepiece.apparentFieldDeg')}
          value={draft.eyepiece.apparentFieldDeg}
          onChange={(apparentFieldDeg) =>
            change({ eyepiece: { ...draft.eyepiece, apparentFieldDeg } })
          }
        />
      </div>
      <RadioGroup
        legend="The pointing computer"
        name="computer"
        value={draft.telescope.computer}
        options={[
          {
            value: 'solved-zero',
            label: 'solves for the altitude zero',
            hint: 'The tube may start at any height.',
          },
          {
            value: 'fixed-zero',
            label: 'takes the altitude zero as given',
            hint: 'The tube is levelled, or set on an index mark, before switching on.',
          },
        ]}
        onValueChange={(computer) => change({ telescope: { ...draft.telescope, computer } })}
      />
    </div>
  );
}
