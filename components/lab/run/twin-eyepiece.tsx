import { angleInWords } from '@/components/sky/angle-words';
import { fieldPlaceInWords } from '@/components/sky/clock-direction';
import { TableFrame } from '@/components/ui/table-frame';
import type { RunModel } from './run-model';
import { byBrightness, eyepieceBrightness, twinklingInWords, type Letters } from './twin-rows';

const views = {
  true: 'shows the sky as the eye sees it: what is to the right of the middle is to the right of the tube.',
  mirrored:
    'shows right and left exchanged: what is to the right of the middle is to the left of the tube. Up is up.',
  turned:
    'shows everything turned by half a circle: what is to the right of the middle is to the left of the tube, what is above is below.',
} as const;

/** The eyepiece by the clock: 12 at the top of the view, tenths of the way from its middle to its edge. */
export function TwinEyepiece({ model, letters }: { model: RunModel; letters: Letters }) {
  const { kit } = model.variant;
  const lights = byBrightness(model.lists.inEyepiece());
  const radius = model.lists.eyepieceRadiusArcmin;
  return (
    <section aria-labelledby="twin-eyepiece" className="space-y-2">
      <h2 id="twin-eyepiece" className="text-base font-semibold">
        In the eyepiece
      </h2>
      <p className="max-w-measure text-sm">
        The {String(kit.centringEyepiece.focalLengthMm)} mm eyepiece reaches {angleInWords(radius)}{' '}
        from its middle. {kit.name} {views[kit.orientation]}
      </p>
      {lights.length === 0 ? (
        <p>No bright star in the eyepiece.</p>
      ) : (
        <TableFrame caption="In the eyepiece, the brightest first" captionHidden tall>
          <thead>
            <tr>
              <th scope="col">Light</th>
              <th scope="col">Place in the field</th>
              <th scope="col">Looks</th>
            </tr>
          </thead>
          <tbody>
            {lights.map((light) => (
              <tr key={light.id}>
                <th scope="row">{letters.of(light.id)}</th>
                <td>{fieldPlaceInWords(light, radius)}</td>
                <td>
                  {eyepieceBrightness(light.seenAs)}, {twinklingInWords(light)}
                </td>
              </tr>
            ))}
          </tbody>
        </TableFrame>
      )}
    </section>
  );
}
