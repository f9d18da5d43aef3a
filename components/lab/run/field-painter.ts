import { twilightColours, type Rgb } from '@/components/sky/twilight-colours';
import { asSeen } from '@/lib/optics/image-orientation';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import { azAltFromDirection } from '@/lib/units/vector';
import type { RunModel } from './run-model';
import type { FieldOfView } from './field-sky';
import { finderRadiusDeg } from './run-sky-lists';
import { spriteFor, starSprites, type StarSprites } from './star-sprites';

export type FieldKind = 'finder' | 'eyepiece';

/** How far one turn of the knob moves the eyepiece, millimetres: a drawing's choice, no source. */
const focusTravelMm = 2;
const edgePx = 14;

const css = (colour: Rgb, alpha = 1): string =>
  `rgba(${colour.map((part) => Math.round(part * 255)).join(', ')}, ${alpha})`;

/**
 * Paints what the finder's window or the eyepiece shows into a square of CSS pixels. All colours and
 * pictures are made once; a frame draws and makes nothing.
 */
export class FieldPainter {
  private readonly sprites: StarSprites | null;
  private readonly sky: string;
  private readonly ground: string;
  private readonly rim: string;
  /** Signs by which the view turns or mirrors what is on the sky. */
  private readonly across: number;
  private readonly upward: number;
  private readonly radiusArcmin: number;
  /** Radius of the disc of light, arcminutes, for a turn of the knob. */
  private readonly blurArcmin: number;

  constructor(
    private readonly model: RunModel,
    private readonly kind: FieldKind,
  ) {
    const { kit, scenario, frame } = model.variant;
    const { telescope } = scenario;
    const seen = asSeen(
      { rightArcmin: 1, upArcmin: 1 },
      kind === 'finder' ? 'true' : kit.orientation,
    );
    this.across = seen.rightArcmin;
    this.upward = seen.upArcmin;
    this.radiusArcmin = kind === 'finder' ? finderRadiusDeg * 60 : model.lists.eyepieceRadiusArcmin;
    // A cone of light as wide as the tube over the focal length: half its width a millimetre off focus.
    const halfConeMm = telescope.apertureMm / telescope.focalLengthMm / 2;
    this.blurArcmin =
      kind === 'finder'
        ? 0
        : (((focusTravelMm * halfConeMm) / telescope.focalLengthMm) * 180 * 60) / Math.PI;
    this.sprites = starSprites(kit.tubeType !== 'refractor');
    const colours = twilightColours(frame.sun.trueAltitudeDeg);
    const dim = kind === 'finder' ? 1 : 0.55;
    const part = (value: number): number => value * dim;
    const [r, g, b] = colours.middle;
    this.sky = css([part(r), part(g), part(b)]);
    this.ground = css(colours.ground);
    this.rim = css(colours.horizon, 0.5);
  }

  paint(pen: CanvasRenderingContext2D, sizePx: number, showRing: boolean): void {
    const radiusPx = sizePx / 2 - edgePx;
    const middle = sizePx / 2;
    pen.clearRect(0, 0, sizePx, sizePx);
    pen.save();
    pen.translate(middle, middle);
    pen.beginPath();
    pen.arc(0, 0, radiusPx, 0, 2 * Math.PI);
    pen.fillStyle = this.sky;
    pen.fill();
    pen.save();
    pen.clip();
    const { lists } = this.model;
    const view = this.kind === 'finder' ? lists.finderView() : lists.eyepieceView();
    const scale = radiusPx / this.radiusArcmin;
    lists.field.look(view, this.kind === 'eyepiece');
    this.stars(pen, scale, view.faintest);
    this.skyline(pen, scale, view);
    if (this.kind === 'finder') redDot(pen, sizePx);
    else if (showRing) middleRing(pen, radiusPx);
    pen.restore();
    edge(pen, radiusPx);
    pen.restore();
  }

  private stars(pen: CanvasRenderingContext2D, scale: number, faintest: number): void {
    const { sprites } = this;
    if (sprites === null) return;
    const { field } = this.model.lists;
    const blurPx = Math.abs(this.model.focus) * this.blurArcmin * scale;
    pen.globalCompositeOperation = 'lighter';
    for (let n = field.count - 1; n >= 0; n -= 1) {
      const x = (field.rightArcmin[n] ?? 0) * this.across * scale;
      const y = -(field.upArcmin[n] ?? 0) * this.upward * scale;
      const spare = faintest - (field.seenAs[n] ?? 0);
      const pointPx =
        this.kind === 'finder' ? 1.9 + 1.4 * spare ** 1.2 : 0.9 + 0.42 * spare ** 1.45;
      const tint = spriteFor(field.colourIndex[n] ?? 0.4);
      const sharpPx = pointPx * 1.25;
      if (blurPx < pointPx * 0.6) {
        const picture = sprites.sharp[tint];
        const width = (sharpPx + blurPx) * 2.5;
        pen.globalAlpha = Math.min(1, 0.35 + spare * 0.3);
        if (picture !== undefined)
          pen.drawImage(picture, x - width / 2, y - width / 2, width, width);
        continue;
      }
      // The same light over a wider disc.
      const radius = blurPx + pointPx * 0.4;
      const alpha = Math.min(0.9, (2.2 * pointPx * pointPx) / (radius * radius));
      if (alpha < 0.02) continue;
      pen.globalAlpha = alpha;
      const picture = sprites.blurred[tint];
      if (picture !== undefined)
        pen.drawImage(picture, x - radius, y - radius, 2 * radius, 2 * radius);
    }
    pen.globalAlpha = 1;
    pen.globalCompositeOperation = 'source-over';
  }

  /** Trees and roofs, as a sheet of dark paper before the stars. */
  private skyline(pen: CanvasRenderingContext2D, scale: number, view: FieldOfView): void {
    const { horizon } = this.model.variant.scenario;
    const { azimuthDeg, altitudeDeg } = azAltFromDirection(view.middle);
    const highest = horizon.reduce((most, point) => Math.max(most, point.altitudeDeg), 0);
    if (altitudeDeg - view.radiusDeg > highest + 0.5) return;
    const reachDeg = Math.min(
      60,
      (view.radiusDeg * 1.5) / Math.max(0.1, Math.cos((altitudeDeg * Math.PI) / 180)),
    );
    const steps = 48;
    const low = -this.radiusArcmin * 3;
    pen.beginPath();
    for (let step = 0; step <= steps; step += 1) {
      const offDeg = -reachDeg + (2 * reachDeg * step) / steps;
      const skylineDeg = horizonAltitudeDeg(horizon, azimuthDeg + offDeg);
      // Near the field, azimuth along the horizon and altitude upward are its two axes.
      const narrowed = offDeg * Math.cos((skylineDeg * Math.PI) / 180);
      const x = narrowed * 60 * this.across * scale;
      const y = -(skylineDeg - altitudeDeg) * 60 * this.upward * scale;
      if (step === 0) pen.moveTo(x, -low * this.upward * scale);
      pen.lineTo(x, y);
      if (step === steps) pen.lineTo(x, -low * this.upward * scale);
    }
    pen.closePath();
    pen.fillStyle = this.ground;
    pen.fill();
    pen.strokeStyle = this.rim;
    pen.lineWidth = 1.5;
    pen.stroke();
  }
}

function redDot(pen: CanvasRenderingContext2D, sizePx: number): void {
  const radius = Math.max(2.2, sizePx * 0.0042);
  pen.fillStyle = 'rgba(255, 70, 50, 0.16)';
  circle(pen, radius * 3.4);
  pen.fill();
  pen.fillStyle = '#ff4a36';
  circle(pen, radius);
  pen.fill();
}

/** A fifth of the way to the edge: within it a star is well centred. */
function middleRing(pen: CanvasRenderingContext2D, radiusPx: number): void {
  pen.strokeStyle = 'rgba(245, 194, 107, 0.55)';
  pen.lineWidth = 1;
  pen.setLineDash(ringDashes);
  circle(pen, radiusPx * 0.2);
  pen.stroke();
  pen.setLineDash(noDashes);
}

const ringDashes = [3, 5];
const noDashes: number[] = [];

/** The ring that bounds the view: dark, with a thin light inner edge. */
function edge(pen: CanvasRenderingContext2D, radiusPx: number): void {
  pen.strokeStyle = 'rgba(5, 8, 13, 0.55)';
  pen.lineWidth = 6;
  circle(pen, radiusPx - 2);
  pen.stroke();
  pen.strokeStyle = 'rgba(143, 160, 181, 0.75)';
  pen.lineWidth = 1.5;
  circle(pen, radiusPx + 1);
  pen.stroke();
}

function circle(pen: CanvasRenderingContext2D, radius: number): void {
  pen.beginPath();
  pen.arc(0, 0, radius, 0, 2 * Math.PI);
}
