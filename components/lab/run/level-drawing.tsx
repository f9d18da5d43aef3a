import { SideView } from '@/components/telescope/side-view';
import { tubeSizes } from '@/components/telescope/tube-size';
import type { TubeType } from '@/lib/optics/image-orientation';

/** The bubble runs this far for a degree, until it meets the end of its vial; drawing's units. */
const bubblePerDeg = 5;
const bubbleEnd = 29;

type LevelDrawingProps = { tubeType: TubeType; altitudeDeg: number };

/** The telescope from the side, with a bubble in a vial on its back. */
export function LevelDrawing({ tubeType, altitudeDeg }: LevelDrawingProps) {
  return (
    <svg viewBox="-150 -135 300 270" aria-hidden="true" className="block size-full">
      <path d="M-150 116 Q-60 111 0 116 T150 114 V135 H-150 Z" fill="var(--land)" />
      <path
        d="M-146 0 H-128 M128 0 H146"
        stroke="var(--sky-line)"
        strokeWidth="1.4"
        strokeDasharray="3 4"
      />
      <SideView kind={tubeType} altitudeDeg={altitudeDeg}>
        <Vial aboveAxis={tubeSizes[tubeType].radius} altitudeDeg={altitudeDeg} />
      </SideView>
    </svg>
  );
}

/** It lies on the tube's back; the bubble goes to the high end, and the tube points to the right. */
function Vial({ aboveAxis, altitudeDeg }: { aboveAxis: number; altitudeDeg: number }) {
  const bubble = Math.max(-bubbleEnd, Math.min(bubbleEnd, altitudeDeg * bubblePerDeg));
  return (
    <g transform={`translate(0 ${String(-aboveAxis - 13)})`}>
      <rect
        x="-44"
        y="-11"
        width="88"
        height="22"
        rx="11"
        fill="var(--land-near)"
        stroke="var(--sky-line)"
        strokeWidth="1.6"
      />
      <rect
        x="-10"
        y="-10"
        width="20"
        height="20"
        fill="none"
        stroke="var(--on-sky-soft)"
        strokeWidth="1.2"
      />
      <ellipse cx={bubble} rx="9" ry="6.5" fill="var(--sky-lamp)" />
    </g>
  );
}
