import { cloudsInWords } from './clouds-in-words';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import { signpostDirections } from '@/components/sky/directions';
import { fistsInWords, positionInWords, toHalfFists } from '@/components/sky/position-words';
import type { PairLabModel } from './use-pair-lab';

/** "first quarter"-like words for how much of the Moon is lit. */
function moonInWords(illuminatedFraction: number): string {
  if (illuminatedFraction < 0.04) return 'a hair-thin Moon';
  if (illuminatedFraction < 0.35) return 'a crescent Moon';
  if (illuminatedFraction < 0.65) return 'a half Moon';
  if (illuminatedFraction < 0.96) return 'a Moon past half';
  return 'a full Moon';
}

/** How high the skyline reaches in the eighth of the circle round a signpost. */
function highestSkylineDeg(horizon: PairLabModel['sky']['horizon'], azimuthDeg: number): number {
  let highest = 0;
  for (let offset = -22; offset <= 22; offset += 2) {
    highest = Math.max(highest, horizonAltitudeDeg(horizon, azimuthDeg + offset));
  }
  return highest;
}

/** What else is in the sky: twilight, Moon, clouds and the skyline, as directions. */
export function SkyInWords({ lab }: { lab: PairLabModel }) {
  const { frame, clouds, horizon, nakedEyeLimit } = lab.sky;
  const { moon, sun } = frame;
  return (
    <section aria-labelledby="sky-in-words" className="space-y-2 text-sm">
      <h2 id="sky-in-words" className="text-base font-semibold">
        The sky in words
      </h2>
      <ul className="list-disc space-y-1 ps-5">
        <li>
          {sun.trueAltitudeDeg < -18
            ? 'The sky is fully dark.'
            : sun.trueAltitudeDeg < -12
              ? 'The last of the twilight.'
              : sun.trueAltitudeDeg < -6
                ? 'Deep twilight: only brighter stars show.'
                : 'Bright twilight: hardly any star shows.'}{' '}
          Overhead the faintest star to be seen is of magnitude {nakedEyeLimit.toFixed(1)} (our own
          approximation).
        </li>
        <li>
          {moon.altitudeDeg > 0
            ? `The Moon is up: ${moonInWords(moon.illuminatedFraction)}, ${positionInWords(moon.azimuthDeg, moon.altitudeDeg)}.`
            : 'The Moon is below the horizon.'}
        </li>
        <li>{cloudsInWords(clouds)}</li>
        <li>
          The skyline reaches up to:{' '}
          {signpostDirections
            .map(({ azimuthDeg, word }) => {
              const up = toHalfFists(highestSkylineDeg(horizon, azimuthDeg));
              return `${word} ${up === 0 ? 'hardly anything' : fistsInWords(up)}`;
            })
            .join(', ')}
          .
        </li>
      </ul>
    </section>
  );
}
