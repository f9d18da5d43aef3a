import { degreesToRadians, radiansToDegrees, wrap360 } from '@/lib/units/angle';
import type { MutableVector3, Vector3 } from '@/lib/units/vector';

/** The catalogue ends here; from here on an eyepiece would show thousands that it does not have. */
export const faintFromMagnitude = 7;
/** Fainter ones add nothing to see and cost frames. */
const faintestMagnitude = 11;

/** Stars brighter than m on a square degree, the sky's mean, V from 6 to 12 (from memory: 10^(0.45 m − 3.6)). */
const brighterThan = (magnitude: number): number => 10 ** (0.45 * magnitude - 3.6);

/** 32 well-mixed bits of two whole numbers and a count. */
function mixed(a: number, b: number, c: number): number {
  let h = Math.imul(a, 0x9e3779b1) ^ Math.imul(b + 0x7f4a, 0x85ebca6b) ^ Math.imul(c, 0xc2b2ae35);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39);
  return (h ^ (h >>> 15)) >>> 0;
}

const share = (a: number, b: number, c: number): number => mixed(a, b, c) / 4_294_967_296;

/**
 * Invented faint stars, always the same at the same place of the sky, as many as there are on average:
 * without them an eyepiece between the bright stars would be black, and nobody could see the tube
 * move. No task is about them; the lab says that they are invented.
 */
export class FaintStars {
  private readonly place: MutableVector3 = [0, 0, 0];

  /** `icrsToLocal` as in a sky frame. */
  constructor(private readonly icrsToLocal: readonly number[]) {}

  /** Calls back with each one about a direction (local frame of the sky frame's instant). */
  each(
    towards: Vector3,
    radiusDeg: number,
    limit: number,
    found: (place: Vector3, magnitude: number) => void,
  ): void {
    const faintest = Math.min(limit, faintestMagnitude);
    if (faintest <= faintFromMagnitude) return;
    const m = this.icrsToLocal;
    const [x, y, z] = towards;
    const a = (m[0] ?? 0) * x + (m[3] ?? 0) * y + (m[6] ?? 0) * z;
    const b = (m[1] ?? 0) * x + (m[4] ?? 0) * y + (m[7] ?? 0) * z;
    const c = (m[2] ?? 0) * x + (m[5] ?? 0) * y + (m[8] ?? 0) * z;
    const decDeg = radiansToDegrees(Math.asin(Math.min(1, Math.max(-1, c))));
    const raDeg = wrap360(radiansToDegrees(Math.atan2(b, a)));
    const lowest = brighterThan(faintFromMagnitude);
    const most = brighterThan(faintest);

    const firstBand = Math.floor(Math.max(-90, decDeg - radiusDeg));
    const lastBand = Math.floor(Math.min(89.999, decDeg + radiusDeg));
    for (let band = firstBand; band <= lastBand; band += 1) {
      const narrowing = Math.max(0.01, Math.cos(degreesToRadians(band + 0.5)));
      const cells = Math.max(1, Math.round(360 * narrowing));
      const reach = Math.min(cells / 2, Math.ceil((radiusDeg / narrowing / 360) * cells + 0.5));
      const middle = Math.floor((raDeg / 360) * cells);
      for (let step = -reach; step < reach + 1; step += 1) {
        const cell = (((middle + step) % cells) + cells) % cells;
        const count = Math.floor(most - lowest + share(band, cell, 0));
        for (let n = 1; n <= count; n += 1) {
          this.put(band, cell, cells, n);
          found(this.place, this.magnitude(band, cell, n, lowest, most));
        }
      }
    }
  }

  private magnitude(band: number, cell: number, n: number, lowest: number, most: number): number {
    const brighter = lowest + share(band, cell, 3 * n + 2) * (most - lowest);
    return (Math.log10(brighter) + 3.6) / 0.45;
  }

  private put(band: number, cell: number, cells: number, n: number): void {
    const ra = degreesToRadians(((cell + share(band, cell, 3 * n)) / cells) * 360);
    const dec = degreesToRadians(band + share(band, cell, 3 * n + 1));
    const x = Math.cos(dec) * Math.cos(ra);
    const y = Math.cos(dec) * Math.sin(ra);
    const z = Math.sin(dec);
    const m = this.icrsToLocal;
    this.place[0] = (m[0] ?? 0) * x + (m[1] ?? 0) * y + (m[2] ?? 0) * z;
    this.place[1] = (m[3] ?? 0) * x + (m[4] ?? 0) * y + (m[5] ?? 0) * z;
    this.place[2] = (m[6] ?? 0) * x + (m[7] ?? 0) * y + (m[8] ?? 0) * z;
  }
}
