import { CanvasTexture, LinearFilter } from 'three';

/** A texture from a drawing; null where the browser gives no drawing surface. */
export function canvasTexture(
  widthPx: number,
  heightPx: number,
  draw: (pen: CanvasRenderingContext2D) => void,
): CanvasTexture | null {
  const canvas = document.createElement('canvas');
  canvas.width = widthPx;
  canvas.height = heightPx;
  const pen = canvas.getContext('2d');
  if (pen === null) return null;
  draw(pen);
  const texture = new CanvasTexture(canvas);
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.generateMipmaps = false;
  return texture;
}
