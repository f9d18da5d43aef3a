import { believedSkyOf, seenAt, tubeSentTo, type BelievedSky } from '@/lib/clock/believed-place';
import { directionOnHourCircle } from '@/lib/clock/hour-angle';
import type { MountForm } from '@/lib/clock/mount-form';
import { startErrorDeg } from '@/lib/clock/needle';
import { rootMeanSquare } from '@/lib/clock/split-by-cause';
import { azAltFromDirection, separationDeg, type Vector3 } from '@/lib/units/vector';
import type {
  ClockAndPlaceVariant,
  SkyStar,
} from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';

type Placed = { azimuthDeg: number; altitudeDeg: number };

/** A star where it stands, and where a mount would point for it. */
export type OverlayStar = {
  name: string;
  magnitude: number;
  judged: boolean;
  real: Placed;
  tube: Placed;
  realDirection: Vector3;
  tubeDirection: Vector3;
  missDeg: number;
};

/** Two skies over each other: the real one, and the one that a mount believes in. */
export type Overlay = {
  stars: readonly OverlayStar[];
  /** Root mean square over the judged stars. */
  missDeg: number;
  believed: BelievedSky;
  /** The pole that is up, and where the mount takes it to be. */
  pole: { real: Placed; tube: Placed };
};

/** The sky that a form makes the mount believe in, beside the real one; null for a day that is none. */
export function overlayOf(
  variant: ClockAndPlaceVariant,
  form: MountForm,
  compassDeg: number | null,
): Overlay | null {
  const { right, summerTimeMinutes, declinationDeg, sky } = variant;
  const startDeg =
    compassDeg === null || declinationDeg === null ? 0 : startErrorDeg(compassDeg, declinationDeg);
  const believed = believedSkyOf(form, { right, summerTimeMinutes, startDeg });
  if (believed === null) return null;
  const placed = (star: SkyStar): OverlayStar => {
    const realDirection = seenAt(star, sky);
    const tubeDirection = tubeSentTo(star, believed, sky);
    const { name, magnitude, judged } = star;
    return {
      name,
      magnitude,
      judged,
      realDirection,
      tubeDirection,
      real: azAltFromDirection(realDirection),
      tube: azAltFromDirection(tubeDirection),
      missDeg: separationDeg(realDirection, tubeDirection),
    };
  };
  const stars = variant.stars.map(placed);
  const pole = { hourAngleDeg: 0, declinationDeg: sky.latitudeDeg < 0 ? -90 : 90 };
  return {
    stars,
    believed,
    missDeg: rootMeanSquare(stars.filter(({ judged }) => judged).map(({ missDeg }) => missDeg)),
    pole: {
      real: azAltFromDirection(directionOnHourCircle(pole, sky.latitudeDeg)),
      tube: azAltFromDirection(tubeSentTo(pole, believed, { ...sky, refractionScale: 0 })),
    },
  };
}
