'use client';

import { magnification } from '@/lib/optics/magnification';
import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { EyepieceBox } from './eyepiece-box';
import { Focuser } from './focuser';
import { viewInWords } from './view-words';

/** The same bench in words: what is in view, the eyepieces, the focuser. */
export function FieldTable({ variant, draft, change }: BenchViewProps<FieldVariant, FieldDraft>) {
  const { telescope, eyepieces, kitName } = variant;
  return (
    <div className="max-w-measure space-y-6">
      <section aria-labelledby="in-view" className="space-y-1">
        <h2 id="in-view" className="text-lg font-semibold">
          In view
        </h2>
        <ul className="list-disc ps-5" aria-live="polite">
          {viewInWords(variant, draft).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <EyepieceBox {...{ variant, draft, change }} />
      <Focuser {...{ draft, change }} />
      <div className="table-frame overflow-x-auto">
        <table>
          <caption>
            {kitName}: focal length {telescope.focalLengthMm} mm, aperture {telescope.apertureMm} mm
          </caption>
          <thead>
            <tr>
              <th scope="col">Eyepiece</th>
              <th scope="col" className="number">
                Apparent field
              </th>
              <th scope="col" className="number">
                Magnifies
              </th>
            </tr>
          </thead>
          <tbody>
            {eyepieces.map((eyepiece) => (
              <tr key={eyepiece.id}>
                <th scope="row">{eyepiece.focalLengthMm} mm</th>
                <td className="number">{eyepiece.apparentFieldDeg}°</td>
                <td className="number">{magnification(telescope, eyepiece).toFixed(0)} times</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}
