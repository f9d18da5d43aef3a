import { positionInWords } from '@/components/sky/position-words';
import type { Landing } from '@/lib/faults/evidence';
import type { FaultView } from '../fault-view';
import { LandingPicture } from './landing-picture';
import { landingParts, seenInWords } from './landing-words';

/** One slew: the picture of where it landed and, beside it, the same in the trade's units. */
export function LandingBlock({ landing, view }: { landing: Landing; view: FaultView }) {
  const place = view.places[landing.hip];
  const parts = landingParts(landing);
  return (
    <figure className="@container">
      <div className="grid gap-x-5 gap-y-3 @lg:grid-cols-[minmax(0,17rem)_minmax(0,1fr)]">
        <LandingPicture
          landing={landing}
          fieldRadiusArcmin={view.fieldRadiusArcmin}
          altitudeDeg={place?.altitudeDeg ?? null}
        />
        <figcaption className="self-center">
          <p>
            Sent to <strong className="font-semibold">{landing.name}</strong>
            {place === undefined ? null : (
              <span className="block text-sm text-soft">
                It stands {positionInWords(place.azimuthDeg, place.altitudeDeg)}.
              </span>
            )}
          </p>
          <p className="mt-2 text-sm text-soft">The tube landed</p>
          <ul className="font-figures text-lg leading-snug font-semibold">
            {parts.length === 0 ? <li>right on the star</li> : null}
            {parts.map((part) => (
              <li key={part}>{part}</li>
            ))}
          </ul>
          <p className="mt-2 text-sm">{seenInWords(landing, view.fieldRadiusArcmin)}</p>
        </figcaption>
      </div>
    </figure>
  );
}
