/** The bubble runs this far for a degree, until it meets the end of its vial; drawing's units. */
const bubblePerDeg = 5;
const bubbleEnd = 29;

/** The telescope from the side, with a bubble in a vial on its back. */
export function LevelDrawing({ altitudeDeg }: { altitudeDeg: number }) {
  // A bubble goes to the high end, and the tube points to the right.
  const bubble = Math.max(-bubbleEnd, Math.min(bubbleEnd, altitudeDeg * bubblePerDeg));
  return (
    <svg viewBox="-150 -135 300 270" aria-hidden="true" className="block size-full">
      <path d="M-150 112 Q-60 104 0 110 T150 108 V135 H-150 Z" fill="var(--land)" />
      <path
        d="M-6 18 L-62 116 M6 18 L62 116 M0 18 V120"
        stroke="var(--sky-line)"
        strokeWidth="5"
        strokeLinecap="round"
      />
      <rect
        x="-13"
        y="-6"
        width="26"
        height="30"
        rx="3"
        fill="var(--land)"
        stroke="var(--sky-line)"
      />
      <path
        d="M-128 0 H-104 M104 0 H128"
        stroke="var(--sky-line)"
        strokeWidth="1.4"
        strokeDasharray="3 4"
      />
      <g transform={`rotate(${String(-altitudeDeg)})`}>
        <rect
          x="-62"
          y="-17"
          width="146"
          height="34"
          rx="4"
          fill="var(--on-sky)"
          fillOpacity="0.9"
          stroke="var(--land-near)"
          strokeWidth="1.5"
        />
        <rect
          x="76"
          y="-20"
          width="22"
          height="40"
          rx="3"
          fill="var(--on-sky-soft)"
          stroke="var(--land-near)"
          strokeWidth="1.5"
        />
        <rect
          x="-82"
          y="-6"
          width="20"
          height="12"
          rx="2"
          fill="var(--on-sky-soft)"
          stroke="var(--land-near)"
          strokeWidth="1.5"
        />
        <rect
          x="-44"
          y="-45"
          width="88"
          height="22"
          rx="11"
          fill="var(--land-near)"
          stroke="var(--sky-line)"
          strokeWidth="1.6"
        />
        <rect
          x="-10"
          y="-44"
          width="20"
          height="20"
          fill="none"
          stroke="var(--on-sky-soft)"
          strokeWidth="1.2"
        />
        <ellipse cx={bubble} cy="-34" rx="9" ry="6.5" fill="var(--sky-lamp)" />
        <circle r="8" fill="var(--land)" stroke="var(--sky-line)" />
      </g>
    </svg>
  );
}
