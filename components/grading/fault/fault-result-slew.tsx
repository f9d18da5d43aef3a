import { ArrowSample } from '@/components/lab/fault/evidence/landing-arrows';
import { LandingPicture } from '@/components/lab/fault/evidence/landing-picture';
import { landingInWords, seenInWords } from '@/components/lab/fault/evidence/landing-words';
import type { WholeFaultView } from '@/components/lab/fault/fault-view';
import { positionInWords } from '@/components/sky/position-words';
import type { FaultResult } from '@/lib/grading/fault-result';
import { quoted, slewLessonInWords } from './fault-result-words';

/**
 * The learner's own test slew, or without one the first on offer: where the tube was sent, where it
 * landed, which is what the real fault makes of it, and where the named fault would have put it.
 */
export function FaultResultSlew({
  result,
  variant,
}: {
  result: FaultResult;
  variant: WholeFaultView;
}) {
  const own = variant.testSlews.find(({ hip }) => hip === result.testSlew);
  const landing = own ?? variant.testSlews[0];
  if (landing === undefined) return null;
  const place = variant.places[landing.hip];
  const { fault, named, namedSlew } = result;
  const lesson = slewLessonInWords(result, landing);
  return (
    <div className="space-y-3">
      {own === undefined ? <p>You made none. This is what one would have shown.</p> : null}
      <figure className="@container">
        <div className="grid gap-x-6 gap-y-3 @lg:grid-cols-[minmax(0,20rem)_minmax(0,1fr)]">
          <LandingPicture
            landing={landing}
            fieldRadiusArcmin={variant.fieldRadiusArcmin}
            altitudeDeg={place?.altitudeDeg ?? null}
            otherwise={namedSlew ?? null}
          />
          <figcaption className="self-center">
            <dl className="space-y-2">
              <div>
                <dt className="text-sm text-soft">In the middle: where it was sent</dt>
                <dd>
                  <strong className="font-semibold">{landing.name}</strong>
                  {place === undefined
                    ? null
                    : `, ${positionInWords(place.azimuthDeg, place.altitudeDeg)}`}
                </dd>
              </div>
              <div>
                <dt className="text-sm text-soft">
                  <ArrowSample broken={false} /> Where it landed: that is {quoted(fault)}
                </dt>
                <dd className="font-semibold">{landingInWords(landing)}</dd>
                <dd className="text-sm">{seenInWords(landing, variant.fieldRadiusArcmin)}</dd>
              </div>
              {named === fault || namedSlew === undefined ? null : (
                <div>
                  <dt className="text-sm text-soft">
                    <ArrowSample broken /> Where {quoted(named)} would have put it, in the form that
                    comes nearest to this evening
                  </dt>
                  <dd className="font-semibold">
                    {namedSlew === null
                      ? 'nowhere: the mount would have taken this star to be below the horizon'
                      : landingInWords(namedSlew)}
                  </dd>
                </div>
              )}
            </dl>
            {lesson === null ? null : (
              <p className="mt-3 border-s-2 border-accent ps-3">{lesson}</p>
            )}
          </figcaption>
        </div>
      </figure>
    </div>
  );
}
