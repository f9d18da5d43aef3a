import { degreesToRadians, radiansToDegrees, wrap180, wrap360 } from '@/lib/units/angle';
import { scenePoint } from './to-scene';

const lowestLookDeg = -22;
export const highestLookDeg = 90;
/** Of the shorter side of the picture. */
export const narrowestFieldDeg = 14;
export const widestFieldDeg = 82;

const clamp = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, value));

/**
 * Where the learner is looking. It lives outside React so that turning costs no render: the scene
 * reads it every frame, controls write to it, and whoever shows a readout subscribes.
 */
export class SkyView {
  /** What is drawn now. */
  azimuthDeg: number;
  altitudeDeg: number;
  fieldDeg: number;
  /** Size of the picture in CSS pixels; set by the canvas. */
  widthPx = 1;
  heightPx = 1;
  /** The light under the pointer, as a place in the scene. */
  pointed: { sceneX: number; sceneY: number; sceneZ: number } | null = null;
  /** Slews are instant where the learner's system asks for less motion. */
  reducedMotion = false;

  private wantedAzimuthDeg: number;
  private wantedAltitudeDeg: number;
  private wantedFieldDeg: number;
  private readonly listeners = new Set<() => void>();

  preferLessMotion(wanted: boolean): void {
    this.reducedMotion = wanted;
  }

  constructor(start: { azimuthDeg: number; altitudeDeg: number; fieldDeg?: number }) {
    this.azimuthDeg = this.wantedAzimuthDeg = wrap360(start.azimuthDeg);
    this.altitudeDeg = this.wantedAltitudeDeg = clamp(
      start.altitudeDeg,
      lowestLookDeg,
      highestLookDeg,
    );
    this.fieldDeg = this.wantedFieldDeg = clamp(
      start.fieldDeg ?? 58,
      narrowestFieldDeg,
      widestFieldDeg,
    );
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  };

  /** Vertical field in degrees: `fieldDeg` spans the shorter side, so a tall phone sees as much. */
  verticalFieldDeg(): number {
    const aspect = this.widthPx / this.heightPx;
    if (aspect >= 1) return this.fieldDeg;
    const half = Math.tan(degreesToRadians(this.fieldDeg) / 2) / aspect;
    return Math.min(110, 2 * radiansToDegrees(Math.atan(half)));
  }

  /** Degrees of sky under one CSS pixel in the middle of the picture. */
  degreesPerPixel(): number {
    const half = Math.tan(degreesToRadians(this.verticalFieldDeg()) / 2);
    return radiansToDegrees((2 * half) / this.heightPx);
  }

  /** Follows the hand at once. */
  dragBy(dxPx: number, dyPx: number): void {
    const scale = this.degreesPerPixel();
    const narrowing = Math.max(0.2, Math.cos(degreesToRadians(this.altitudeDeg)));
    this.wantedAzimuthDeg = wrap360(this.azimuthDeg - (dxPx * scale) / narrowing);
    this.wantedAltitudeDeg = clamp(this.altitudeDeg + dyPx * scale, lowestLookDeg, highestLookDeg);
    this.azimuthDeg = this.wantedAzimuthDeg;
    this.altitudeDeg = this.wantedAltitudeDeg;
    this.tell();
  }

  /** A step by key or button; the picture glides there. */
  turnBy(azimuthDeg: number, altitudeDeg: number): void {
    this.lookAt(this.wantedAzimuthDeg + azimuthDeg, this.wantedAltitudeDeg + altitudeDeg);
  }

  lookAt(azimuthDeg: number, altitudeDeg: number): void {
    this.wantedAzimuthDeg = wrap360(azimuthDeg);
    this.wantedAltitudeDeg = clamp(altitudeDeg, lowestLookDeg, highestLookDeg);
    this.tell();
  }

  /** Above 1 shows more sky. */
  zoomBy(factor: number): void {
    this.wantedFieldDeg = clamp(this.wantedFieldDeg * factor, narrowestFieldDeg, widestFieldDeg);
    this.tell();
  }

  /** Puts the ring that follows the pointer round a light, or takes it away. */
  point(light: { azimuthDeg: number; altitudeDeg: number } | null): void {
    if (light === null) {
      if (this.pointed === null) return;
      this.pointed = null;
    } else {
      const [sceneX, sceneY, sceneZ] = scenePoint(light.azimuthDeg, light.altitudeDeg);
      if (this.pointed?.sceneX === sceneX && this.pointed.sceneY === sceneY) return;
      this.pointed = { sceneX, sceneY, sceneZ };
    }
    this.tell();
  }

  /** Something in the picture has moved, though the look at it has not. */
  redraw(): void {
    this.tell();
  }

  resize(widthPx: number, heightPx: number): void {
    this.widthPx = Math.max(1, widthPx);
    this.heightPx = Math.max(1, heightPx);
    this.tell();
  }

  /** Moves towards what is wanted; true while there is way to go. Called once a frame. */
  step(seconds: number): boolean {
    const azimuthGap = wrap180(this.wantedAzimuthDeg - this.azimuthDeg);
    const altitudeGap = this.wantedAltitudeDeg - this.altitudeDeg;
    const fieldGap = this.wantedFieldDeg - this.fieldDeg;
    const near = 0.02;
    if (
      this.reducedMotion ||
      (Math.abs(azimuthGap) < near && Math.abs(altitudeGap) < near && Math.abs(fieldGap) < near)
    ) {
      this.azimuthDeg = this.wantedAzimuthDeg;
      this.altitudeDeg = this.wantedAltitudeDeg;
      this.fieldDeg = this.wantedFieldDeg;
      return false;
    }
    // The cap keeps the first frame after a pause from jumping the whole way.
    const share = 1 - Math.exp(-9 * Math.min(seconds, 0.1));
    this.azimuthDeg = wrap360(this.azimuthDeg + azimuthGap * share);
    this.altitudeDeg += altitudeGap * share;
    this.fieldDeg += fieldGap * share;
    return true;
  }

  /** The direction being turned to: what a readout should say. */
  wanted(): { azimuthDeg: number; altitudeDeg: number; fieldDeg: number } {
    return {
      azimuthDeg: this.wantedAzimuthDeg,
      altitudeDeg: this.wantedAltitudeDeg,
      fieldDeg: this.wantedFieldDeg,
    };
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}
