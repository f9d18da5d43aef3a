import type { ReactNode } from 'react';
import type { TubeType } from '@/lib/optics/image-orientation';
import { darkPaint, fittingPaint, mountPaint } from './paint';
import { TubeSide } from './tube-side';

type SideViewProps = {
  kind: TubeType;
  /** Above level, degrees. */
  altitudeDeg: number;
  /** Something that stands on the tube and tips with it, in the tube's own frame. */
  children?: ReactNode;
};

/**
 * A telescope on its single-arm mount and tripod, from the side, for any drawing on a dark surface.
 * The altitude axis is at (0, 0), the tube points to the right, the feet stand at y = 120; one unit
 * is 3 mm, only the legs are drawn short. It takes x from −130 to 130.
 */
export function SideView({ kind, altitudeDeg, children }: SideViewProps) {
  return (
    <g>
      <g transform={`rotate(${String(-altitudeDeg)})`}>
        <TubeSide kind={kind} />
        {/* The dovetail bar, by which the arm holds the tube. */}
        <rect x="-34" y="-5" width="68" height="10" rx="1" {...fittingPaint} />
        {children}
      </g>
      <MountSide />
    </g>
  );
}

/** Arm, tripod and tray. The arm stands on the near side: the tube swings past it, and past the legs. */
export function MountSide() {
  return (
    <g>
      <path d="M0 66 L-4 120 H4 Z" {...mountPaint} />
      {[-1, 1].map((side) => (
        <g key={side} transform={`scale(${String(side)} 1)`}>
          <path d="M6 64 L16 64 L66 118 L60 120 Z" {...mountPaint} />
          <path d="M33 86 L41 80 L46 86 L38 92 Z" {...darkPaint} />
        </g>
      ))}
      <rect x="-31" y="86" width="62" height="4" rx="2" {...mountPaint} />
      <path d="M-24 48 H24 L20 66 H-20 Z" {...mountPaint} />
      <path d="M-12 0 A12 12 0 0 1 12 0 L16 48 H-16 Z" {...mountPaint} />
      <circle r="7" {...darkPaint} />
      <path d="M-4 0 H4 M0 -4 V4" stroke="var(--sky-line)" strokeWidth="1.2" />
    </g>
  );
}
