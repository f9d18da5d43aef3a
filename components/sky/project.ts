import { degreesToRadians } from '@/lib/units/angle';
import type { SkyView } from './sky-view';

export type ScreenPoint = { x: number; y: number };

/**
 * Where a direction falls in the picture, in CSS pixels from its top left corner; null behind the
 * viewer. The same perspective as the scene's camera.
 */
export function projectToScreen(
  view: SkyView,
  azimuthDeg: number,
  altitudeDeg: number,
): ScreenPoint | null {
  const turn = degreesToRadians(azimuthDeg - view.azimuthDeg);
  const altitude = degreesToRadians(altitudeDeg);
  const look = degreesToRadians(view.altitudeDeg);
  const right = Math.cos(altitude) * Math.sin(turn);
  const ahead = Math.cos(altitude) * Math.cos(turn);
  const up = Math.sin(altitude);
  const depth = ahead * Math.cos(look) + up * Math.sin(look);
  if (depth < 0.05) return null;
  const height = up * Math.cos(look) - ahead * Math.sin(look);
  const focal = view.heightPx / 2 / Math.tan(degreesToRadians(view.verticalFieldDeg()) / 2);
  return {
    x: view.widthPx / 2 + (focal * right) / depth,
    y: view.heightPx / 2 - (focal * height) / depth,
  };
}
