import type { HorizonPoint } from '@/lib/pointing/scenario';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';

/** More points than a skyline needs; the scenario format takes no more. */
export const mostHorizonPoints = 72;
/** Azimuth that two neighbouring points keep between them, so that a handle can be taken hold of. */
const leastGapDeg = 1;

/** A skyline being edited: its points from north round by east, with what undo and redo need. */
export type HorizonHistory = {
  points: readonly HorizonPoint[];
  past: readonly (readonly HorizonPoint[])[];
  future: readonly (readonly HorizonPoint[])[];
  /** Why the last change was not made as asked; null when it was. */
  refusal: string | null;
};

export type HorizonChange =
  /** `continues` marks the later moves of one drag or one held key: undo takes them back together. */
  | { kind: 'move'; index: number; to: HorizonPoint; continues?: boolean }
  | { kind: 'add'; point: HorizonPoint }
  | { kind: 'add-in-widest-gap' }
  | { kind: 'remove'; index: number }
  | { kind: 'replace'; points: readonly HorizonPoint[] }
  | { kind: 'undo' }
  | { kind: 'redo' };

export const horizonHistory = (points: readonly HorizonPoint[]): HorizonHistory => ({
  points: [...points].sort((a, b) => a.azimuthDeg - b.azimuthDeg),
  past: [],
  future: [],
  refusal: null,
});

export function changeHorizon(history: HorizonHistory, change: HorizonChange): HorizonHistory {
  const { points } = history;
  switch (change.kind) {
    case 'move': {
      const asked = roundPoint(change.to);
      const refusal = whyNotMove(points, change.index, asked);
      const to = refusal === null ? asked : nearestAllowed(points, change.index, asked);
      if (to === null) return { ...history, refusal };
      const moved = points.map((point, index) => (index === change.index ? to : point));
      return change.continues === true
        ? { ...history, points: moved, future: [], refusal }
        : { ...step(history, moved), refusal };
    }
    case 'add': {
      const point = roundPoint(change.point);
      const refusal = whyNotAdd(points, point);
      if (refusal !== null) return { ...history, refusal };
      return step(
        history,
        [...points, point].sort((a, b) => a.azimuthDeg - b.azimuthDeg),
      );
    }
    case 'add-in-widest-gap':
      return changeHorizon(history, { kind: 'add', point: middleOfWidestGap(points) });
    case 'remove':
      return step(
        history,
        points.filter((_, index) => index !== change.index),
      );
    case 'replace':
      return step(history, change.points);
    case 'undo': {
      const before = history.past.at(-1);
      if (before === undefined) return { ...history, refusal: 'There is nothing to undo.' };
      return {
        points: before,
        past: history.past.slice(0, -1),
        future: [points, ...history.future],
        refusal: null,
      };
    }
    case 'redo': {
      const [after, ...future] = history.future;
      if (after === undefined) return { ...history, refusal: 'There is nothing to redo.' };
      return { points: after, past: [...history.past, points], future, refusal: null };
    }
  }
}

const step = (history: HorizonHistory, points: readonly HorizonPoint[]): HorizonHistory => ({
  points,
  past: [...history.past, history.points].slice(-100),
  future: [],
  refusal: null,
});

/** Half a degree is finer than a skyline can be drawn by eye. */
const roundPoint = (point: HorizonPoint): HorizonPoint => ({
  azimuthDeg: Math.round(point.azimuthDeg * 2) / 2,
  altitudeDeg: Math.min(90, Math.max(0, Math.round(point.altitudeDeg * 2) / 2)),
});

/** A sentence when the point would pass or meet its neighbour, or leave the circle; else null. */
export function whyNotMove(
  points: readonly HorizonPoint[],
  index: number,
  to: HorizonPoint,
): string | null {
  if (!(to.azimuthDeg >= 0 && to.azimuthDeg < 360)) {
    return `Point ${String(index + 1)} must stay between 0° and 359.5°. North is 0°; the line joins up across it.`;
  }
  const left = points[index - 1];
  const right = points[index + 1];
  if (left !== undefined && to.azimuthDeg <= left.azimuthDeg)
    return crossing(index, index - 1, left);
  if (right !== undefined && to.azimuthDeg >= right.azimuthDeg)
    return crossing(index, index + 1, right);
  return null;
}

const crossing = (index: number, neighbour: number, at: HorizonPoint): string =>
  `Point ${String(index + 1)} cannot pass point ${String(neighbour + 1)} at azimuth ${String(at.azimuthDeg)}°: the skyline would cross itself. Move or remove point ${String(neighbour + 1)} first.`;

function whyNotAdd(points: readonly HorizonPoint[], point: HorizonPoint): string | null {
  if (points.length >= mostHorizonPoints)
    return `A skyline has at most ${String(mostHorizonPoints)} points. Remove one first.`;
  if (!(point.azimuthDeg >= 0 && point.azimuthDeg < 360))
    return 'A point lies between azimuth 0° and 359.5°.';
  const same = points.findIndex(
    (other) => Math.abs(other.azimuthDeg - point.azimuthDeg) < leastGapDeg,
  );
  return same < 0 ? null : `Point ${String(same + 1)} is there already. Move it instead.`;
}

/** As near to what was asked as the neighbours allow; null where they leave no room. */
function nearestAllowed(
  points: readonly HorizonPoint[],
  index: number,
  asked: HorizonPoint,
): HorizonPoint | null {
  const from = (points[index - 1]?.azimuthDeg ?? -leastGapDeg) + leastGapDeg;
  const to = (points[index + 1]?.azimuthDeg ?? 359.5 + leastGapDeg) - leastGapDeg;
  return from > to
    ? null
    : { ...asked, azimuthDeg: Math.min(to, Math.max(from, asked.azimuthDeg)) };
}

function middleOfWidestGap(points: readonly HorizonPoint[]): HorizonPoint {
  // The last gap runs across north back to the first point.
  const gaps = points.map((point, index) => {
    const next = points[index + 1]?.azimuthDeg ?? (points[0]?.azimuthDeg ?? 0) + 360;
    return { from: point.azimuthDeg, width: next - point.azimuthDeg };
  });
  const widest = gaps.reduce((best, gap) => (gap.width > best.width ? gap : best), {
    from: 0,
    width: 0,
  });
  const azimuthDeg = widest.width === 0 ? 180 : (widest.from + widest.width / 2) % 360;
  return { azimuthDeg, altitudeDeg: horizonAltitudeDeg(points, azimuthDeg) };
}
