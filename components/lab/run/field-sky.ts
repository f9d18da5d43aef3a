import { cloudDimming } from '@/components/sky/cloud-dimming';
import { planetColourIndex } from '@/components/sky/sky-lights';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import type { CloudPatch, HorizonPoint } from '@/lib/pointing/scenario';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { seenAsMagnitude } from '@/lib/sky/extinction';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import { refracted } from '@/lib/sky/refracted-direction';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { placeCatalogue } from '@/lib/sky/star-places';
import { turnedDirection } from '@/lib/sky/turned-frame';
import { radiansToDegrees, wrap360 } from '@/lib/units/angle';
import { directionFromAzAlt, type MutableVector3, type Vector3 } from '@/lib/units/vector';
import { FaintStars } from './faint-stars';

/** More lights than any field of ours holds; what is beyond is the faintest and left out. */
const room = 800;
/** Refraction lifts by no more than this: a star is looked for so much farther out. */
const refractionMarginDeg = 0.7;
const arcminPerRadian = (60 * 180) / Math.PI;
/** `which` of a star that is invented. */
const invented = -1000;

export type FieldSkyInput = {
  catalogue: StarCatalogue;
  /** The sky when the run begins. */
  frame: SkyFrame;
  latitudeDeg: number;
  horizon: readonly HorizonPoint[];
  clouds: readonly CloudPatch[];
  extinction: number;
};

/** Where one looks, and how far round and how deep. `up` is square to `middle`, as for `offsetFromTube`. */
export type FieldOfView = {
  middle: Vector3;
  up: Vector3;
  radiusDeg: number;
  /** Since the run began. */
  seconds: number;
  /** Nothing that looks fainter. */
  faintest: number;
};

/**
 * The stars and planets about a direction of the turning sky. Found anew in each frame, into arrays
 * that are made once: `count` lights, the planets first, then the stars, brightest first.
 * Offsets are those of `offsetFromTube`, and places those of `starSeenAt`, written out because they
 * run sixty times a second.
 */
export class FieldSky {
  count = 0;
  readonly rightArcmin = new Float64Array(room);
  readonly upArcmin = new Float64Array(room);
  /** As it looks through air and cloud. */
  readonly seenAs = new Float64Array(room);
  readonly colourIndex = new Float64Array(room);
  /** The catalogue's star, or −1 − n for the frame's planet n, or less for an invented one. */
  readonly which = new Int32Array(room);

  /** Without refraction, when the run begins: three numbers a star. */
  private readonly atStart: Float64Array;
  private readonly planetsAtStart: readonly Vector3[];
  private readonly faint: FaintStars;
  private readonly towards: MutableVector3 = [0, 0, 0];
  private readonly place: MutableVector3 = [0, 0, 0];
  private view: FieldOfView = {
    middle: [0, 1, 0],
    up: [0, 0, 1],
    radiusDeg: 1,
    seconds: 0,
    faintest: 5,
  };

  constructor(private readonly input: FieldSkyInput) {
    const { catalogue, frame } = input;
    this.atStart = placeCatalogue(catalogue, frame).directions;
    this.planetsAtStart = frame.planets.map((planet) =>
      directionFromAzAlt(planet.azimuthDeg, planet.trueAltitudeDeg),
    );
    this.faint = new FaintStars(frame.icrsToLocal);
  }

  /** What is not hidden by skyline or cloud within the field. `withInvented`: for a drawing only. */
  look(view: FieldOfView, withInvented = false): void {
    const { catalogue, frame, latitudeDeg } = this.input;
    this.view = view;
    this.count = 0;
    for (let n = 0; n < frame.planets.length; n += 1) {
      const planet = frame.planets[n];
      const place = this.planetsAtStart[n];
      if (planet === undefined || place === undefined) continue;
      this.add(-1 - n, place, planet.magnitude, planetColourIndex[planet.body]);
    }
    // The field is turned back to where it was when the run began, rather than each star forward.
    turnedDirection(view.middle, latitudeDeg, -view.seconds, this.towards);
    const [x, y, z] = this.towards;
    const least = Math.cos(((view.radiusDeg + refractionMarginDeg) * Math.PI) / 180);
    const { atStart, place } = this;
    const { stars } = catalogue;
    for (let i = 0, v = 0; i < stars.length; i += 1, v += 3) {
      const sx = atStart[v] ?? 0;
      const sy = atStart[v + 1] ?? 0;
      const sz = atStart[v + 2] ?? 0;
      if (sx * x + sy * y + sz * z < least) continue;
      const star = stars[i];
      if (star === undefined) continue;
      // The catalogue begins with the brightest.
      if (star.magnitude > view.faintest) break;
      place[0] = sx;
      place[1] = sy;
      place[2] = sz;
      this.add(i, place, star.magnitude, star.colourIndex ?? 0.4);
    }
    if (withInvented) this.faint.each(this.towards, view.radiusDeg, view.faintest, this.addFaint);
  }

  /** What stands at a place of the arrays; null for an invented star. */
  idAt(index: number): SkyObjectId | null {
    const which = this.which[index] ?? invented;
    if (which === invented) return null;
    const { catalogue, frame } = this.input;
    const planet = which < 0 ? frame.planets[-1 - which] : undefined;
    return planet?.body ?? `hip-${catalogue.stars[which]?.hip ?? 0}`;
  }

  private readonly addFaint = (place: Vector3, magnitude: number): void => {
    this.add(invented, place, magnitude, 0.6);
  };

  private add(which: number, atStart: Vector3, magnitude: number, tint: number): void {
    if (this.count >= room) return;
    const { frame, latitudeDeg, horizon, clouds, extinction } = this.input;
    const { middle, up, radiusDeg, seconds, faintest } = this.view;
    const { place } = this;
    turnedDirection(atStart, latitudeDeg, seconds, place);
    refracted(place, frame.refractionScale, place);
    const [x, y, z] = place;
    const ahead = x * middle[0] + y * middle[1] + z * middle[2];
    if (ahead <= 0.5) return;
    const acrossX = middle[1] * up[2] - middle[2] * up[1];
    const acrossY = middle[2] * up[0] - middle[0] * up[2];
    const acrossZ = middle[0] * up[1] - middle[1] * up[0];
    const right = ((x * acrossX + y * acrossY + z * acrossZ) / ahead) * arcminPerRadian;
    const upward = ((x * up[0] + y * up[1] + z * up[2]) / ahead) * arcminPerRadian;
    if (Math.hypot(right, upward) > radiusDeg * 60) return;
    const altitudeDeg = radiansToDegrees(Math.asin(Math.min(1, Math.max(-1, z))));
    const azimuthDeg = wrap360(radiansToDegrees(Math.atan2(x, y)));
    if (altitudeDeg <= 0 || altitudeDeg <= horizonAltitudeDeg(horizon, azimuthDeg)) return;
    const seenAs =
      seenAsMagnitude(magnitude, extinction, altitudeDeg) +
      cloudDimming(clouds, azimuthDeg, altitudeDeg);
    if (seenAs > faintest) return;
    const n = this.count;
    this.rightArcmin[n] = right;
    this.upArcmin[n] = upward;
    this.seenAs[n] = seenAs;
    this.colourIndex[n] = tint;
    this.which[n] = which;
    this.count = n + 1;
  }
}
