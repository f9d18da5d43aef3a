import type { ScreenPoint } from './project';
import { projectToScreen } from './project';
import type { SkyLight } from './sky-lights';
import type { SkyView } from './sky-view';

/** How far from a light the pointer may be, CSS pixels. */
export const mouseReachPx = 22;
export const touchReachPx = 34;

/** A magnitude of brightness outweighs this much distance: the eye goes to the brighter light. */
const pixelsPerMagnitude = 4;

/** The light that a pointer at `at` means: near it, and rather the brighter. Null when none is. */
export function pickLight(
  lights: readonly SkyLight[],
  view: SkyView,
  at: ScreenPoint,
  reachPx: number,
): SkyLight | null {
  let best: SkyLight | null = null;
  let bestScore = Infinity;
  for (const light of lights) {
    const point = projectToScreen(view, light.azimuthDeg, light.altitudeDeg);
    if (point === null) continue;
    const distance = Math.hypot(point.x - at.x, point.y - at.y);
    if (distance > reachPx) continue;
    const score = distance + pixelsPerMagnitude * light.seenAs;
    if (score < bestScore) {
      bestScore = score;
      best = light;
    }
  }
  return best;
}
