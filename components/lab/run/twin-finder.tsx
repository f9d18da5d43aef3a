import { arcminuteInWords } from '@/components/sky/angle-words';
import { brightnessInWords } from '@/components/sky/position-words';
import { TableFrame } from '@/components/ui/table-frame';
import type { RunModel } from './run-model';
import { finderRadiusDeg } from './run-sky-lists';
import { byBrightness, finderPlaceInWords, twinklingInWords, type Letters } from './twin-rows';

/** The finder's window, the dot in its middle. */
export function TwinFinder({ model, letters }: { model: RunModel; letters: Letters }) {
  const lights = byBrightness(model.lists.inFinder());
  return (
    <section aria-labelledby="twin-finder" className="space-y-2">
      <h2 id="twin-finder" className="text-base font-semibold">
        In the finder
      </h2>
      <p className="max-w-measure text-sm">
        Its window reaches {finderRadiusDeg}° from the red dot, upright and not mirrored. The dot
        may point a little beside the tube. {arcminuteInWords}
      </p>
      {lights.length === 0 ? (
        <p>No star in the finder.</p>
      ) : (
        <TableFrame caption="In the finder, the brightest first" captionHidden tall>
          <thead>
            <tr>
              <th scope="col">Light</th>
              <th scope="col">From the dot</th>
              <th scope="col">Looks</th>
            </tr>
          </thead>
          <tbody>
            {lights.map((light) => (
              <tr key={light.id}>
                <th scope="row">{letters.of(light.id)}</th>
                <td>{finderPlaceInWords(light)}</td>
                <td>
                  {brightnessInWords(light.seenAs)}, {twinklingInWords(light)}
                </td>
              </tr>
            ))}
          </tbody>
        </TableFrame>
      )}
    </section>
  );
}
