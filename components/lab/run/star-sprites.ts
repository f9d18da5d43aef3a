import { starTint } from '@/components/sky/twilight-colours';

const sizePx = 64;
/** From blue to red, and what lies between is drawn as its neighbour. */
const colourIndices = [-0.2, 0.1, 0.45, 0.8, 1.1, 1.5, 1.9];

export type StarSprites = {
  /** A point of light with its halo; the point itself is 0.4 of the picture's width. */
  sharp: readonly HTMLCanvasElement[];
  /** Out of focus: the tube's opening, as wide as the picture. */
  blurred: readonly HTMLCanvasElement[];
};

/** Which of the sprites a star of this B−V has. */
export function spriteFor(colourIndex: number): number {
  for (let i = 0; i < colourIndices.length; i += 1)
    if (colourIndex <= (colourIndices[i] ?? 0) + 0.18) return i;
  return colourIndices.length - 1;
}

/** Made once a view; `holed`: a mirror in the way leaves a dark middle when out of focus. */
export function starSprites(holed: boolean): StarSprites | null {
  const sharp: HTMLCanvasElement[] = [];
  const blurred: HTMLCanvasElement[] = [];
  for (const colourIndex of colourIndices) {
    const point = picture((pen, colour) => {
      const glow = pen.createRadialGradient(
        sizePx / 2,
        sizePx / 2,
        0,
        sizePx / 2,
        sizePx / 2,
        sizePx / 2,
      );
      glow.addColorStop(0, 'rgba(255, 255, 255, 1)');
      glow.addColorStop(0.22, colour(1));
      glow.addColorStop(0.38, colour(0.5));
      glow.addColorStop(0.55, colour(0.13));
      glow.addColorStop(1, colour(0));
      pen.fillStyle = glow;
      pen.fillRect(0, 0, sizePx, sizePx);
    }, colourIndex);
    const disc = picture((pen, colour) => {
      pen.fillStyle = colour(0.8);
      pen.strokeStyle = colour(1);
      pen.lineWidth = 3;
      pen.beginPath();
      pen.arc(sizePx / 2, sizePx / 2, sizePx / 2 - 2, 0, 2 * Math.PI);
      if (holed) pen.arc(sizePx / 2, sizePx / 2, sizePx * 0.15, 0, 2 * Math.PI, true);
      pen.fill();
      pen.stroke();
    }, colourIndex);
    if (point === null || disc === null) return null;
    sharp.push(point);
    blurred.push(disc);
  }
  return { sharp, blurred };
}

function picture(
  draw: (pen: CanvasRenderingContext2D, colour: (alpha: number) => string) => void,
  colourIndex: number,
): HTMLCanvasElement | null {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = sizePx;
  const pen = canvas.getContext('2d');
  if (pen === null) return null;
  const [r, g, b] = starTint(colourIndex).map((part) => Math.round(part * 255));
  draw(pen, (alpha) => `rgba(${String(r)}, ${String(g)}, ${String(b)}, ${String(alpha)})`);
  return canvas;
}
