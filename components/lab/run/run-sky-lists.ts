import type { SkyLight } from '@/components/sky/sky-lights';
import { skyLights } from '@/components/sky/sky-lights';
import { believedSky, starSeenAt } from '@/lib/alignment/run-sky';
import type { TubePose } from '@/lib/alignment/tube-pose';
import { asSeen } from '@/lib/optics/image-orientation';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import { mergedStarOf, mergedStars } from '@/lib/pointing/merged-stars';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { turnedDirection, turnedFrame } from '@/lib/sky/turned-frame';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import {
  azAltFromDirection,
  dot,
  directionFromAzAlt,
  normalise,
  separationDeg,
  type Vector3,
} from '@/lib/units/vector';
import type { FieldOfView } from './field-sky';
import { FieldSky } from './field-sky';
import type { RunLabVariant } from './run-lab-variant';

/** The finder's window is a circle of this radius. */
export const finderRadiusDeg = 4;
/** A dark-adapted eye's pupil: what the tube's width is compared with. Common practice, no source. */
const pupilMm = 6;
/** Below this the mount's list leaves a star out: haze and houses. */
const lowestListedDeg = 5;
/** The Sun counts as up from here: upper limb on the horizon with refraction (USNO). */
const sunIsUpDeg = -0.833;

/** A light in the finder's window or in the eyepiece, where it appears there. */
export type FieldLight = {
  id: SkyObjectId;
  /** From the middle of the view, to its right and to its top. */
  rightArcmin: number;
  upArcmin: number;
  /** The magnitude it looks, through the air and any cloud. */
  seenAs: number;
  /** Stars twinkle, planets hardly do. */
  twinkles: boolean;
};

type Moment = { readonly atMs: number; readonly pose: TubePose };
type Owner = Moment & { readonly variant: RunLabVariant; readonly catalogue: StarCatalogue };

/** What can be seen, and what the mount has in its list, at a run's present moment. */
export class RunSkyLists {
  readonly field: FieldSky;
  /** Of the centring eyepiece, in minutes of arc. */
  readonly eyepieceRadiusArcmin: number;
  /** Of stars in the eyepiece: the eye's limit, and what a wider opening than the eye's adds. */
  readonly eyepieceLimit: number;

  constructor(private readonly owner: Owner) {
    const { scenario, frame, kit, nakedEyeLimit } = owner.variant;
    const { telescope } = scenario;
    this.field = new FieldSky({
      catalogue: owner.catalogue,
      frame,
      latitudeDeg: scenario.place.latitudeDeg,
      horizon: scenario.horizon,
      clouds: scenario.clouds,
      extinction: scenario.sky.extinction,
    });
    this.eyepieceRadiusArcmin = fieldRadiusArcmin(telescope, kit.centringEyepiece);
    this.eyepieceLimit = nakedEyeLimit + 5 * Math.log10(telescope.apertureMm / pupilMm);
  }

  /** The sky as it has turned until now. */
  frameNow(): SkyFrame {
    const { variant, atMs } = this.owner;
    return turnedFrame(variant.frame, variant.scenario.place.latitudeDeg, atMs / 1000);
  }

  /** Every light that the eye can make out now, brightest first. */
  lights(): SkyLight[] {
    const { variant, catalogue } = this.owner;
    const { scenario, nakedEyeLimit } = variant;
    return skyLights({
      catalogue,
      frame: this.frameNow(),
      horizon: scenario.horizon,
      clouds: scenario.clouds,
      nakedEyeLimit,
      extinction: scenario.sky.extinction,
    });
  }

  /** In the finder's window, the dot in its middle; upright and not mirrored. */
  inFinder(): FieldLight[] {
    this.field.look(this.finderView());
    return this.found('true');
  }

  /** In the centring eyepiece, as this tube shows it. */
  inEyepiece(): FieldLight[] {
    this.field.look(this.eyepieceView());
    return this.found(this.owner.variant.kit.orientation);
  }

  finderView(): FieldOfView {
    const { pose, atMs, variant } = this.owner;
    return {
      middle: pose.dot,
      up: uprightAbout(pose.dot, pose.tubeUp),
      radiusDeg: finderRadiusDeg,
      seconds: atMs / 1000,
      faintest: variant.nakedEyeLimit,
    };
  }

  eyepieceView(): FieldOfView {
    const { pose, atMs } = this.owner;
    return {
      middle: pose.tube,
      up: pose.tubeUp,
      radiusDeg: this.eyepieceRadiusArcmin / 60,
      seconds: atMs / 1000,
      faintest: this.eyepieceLimit,
    };
  }

  private found(orientation: RunLabVariant['kit']['orientation']): FieldLight[] {
    const { field } = this;
    return Array.from({ length: field.count }, (_, n) => n).flatMap((n) => {
      const id = field.idAt(n);
      if (id === null) return [];
      const rightArcmin = field.rightArcmin[n] ?? 0;
      const upArcmin = field.upArcmin[n] ?? 0;
      const seen = asSeen({ rightArcmin, upArcmin }, orientation);
      const twinkles = (field.which[n] ?? 0) >= 0;
      return [{ id, ...seen, seenAs: field.seenAs[n] ?? 0, twinkles }];
    });
  }

  /** The mount's own list: bright stars with a name that it believes are up, by name. */
  mountList(): { hip: number; name: string }[] {
    const { catalogue, variant, atMs } = this.owner;
    const { faintestMagnitude } = variant.scenario.settings;
    const sky = believedSky({ ...variant, catalogue });
    return mergedStars(catalogue)
      .filter(({ index, magnitude }) => {
        return magnitude <= faintestMagnitude && catalogue.stars[index]?.name !== null;
      })
      .filter(({ hip }) => {
        const seen = starSeenAt(sky, hip, atMs);
        return seen !== null && azAltFromDirection(seen).altitudeDeg >= lowestListedDeg;
      })
      .map(({ hip, name }) => ({ hip, name }))
      .sort((a, b) => a.name.localeCompare(b.name, 'en'));
  }

  nameOf(hip: number): string {
    return mergedStarOf(this.owner.catalogue, hip)?.name ?? `HIP ${hip}`;
  }

  /** Whole degrees from tube or dot to the Sun while it is up and nearer than 45°; else null. */
  sunDistanceDeg(): number | null {
    const { variant, pose, atMs } = this.owner;
    const { sun } = variant.frame;
    // Never up in a run of two hours that begins in the night: the common case costs nothing.
    if (sun.trueAltitudeDeg < -35) return null;
    const now = turnedDirection(
      directionFromAzAlt(sun.azimuthDeg, sun.trueAltitudeDeg),
      variant.scenario.place.latitudeDeg,
      atMs / 1000,
    );
    if (azAltFromDirection(now).altitudeDeg < sunIsUpDeg) return null;
    const nearest = Math.min(separationDeg(now, pose.tube), separationDeg(now, pose.dot));
    return nearest < 45 ? Math.floor(nearest) : null;
  }
}

/** The part of the tube's upward that is square to another direction close to the tube's. */
export function uprightAbout(direction: Vector3, tubeUp: Vector3): Vector3 {
  const along = dot(direction, tubeUp);
  return normalise([
    tubeUp[0] - along * direction[0],
    tubeUp[1] - along * direction[1],
    tubeUp[2] - along * direction[2],
  ]);
}
