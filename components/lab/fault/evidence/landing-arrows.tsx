import { pictureMiddle as middle } from './landing-scale';

/** In the picture's own units. */
export type PicturePoint = { x: number; y: number };

/** From the star to where the tube came; left out where the two all but touch. */
export function Arrow({
  to: { x, y },
  stopBefore,
  broken = false,
}: {
  to: PicturePoint;
  stopBefore: number;
  broken?: boolean;
}) {
  const dx = x - middle.x;
  const dy = y - middle.y;
  const length = Math.hypot(dx, dy);
  if (length < 22) return null;
  const from = 12;
  const to = length - stopBefore;
  const turnDeg = (Math.atan2(dy, dx) * 180) / Math.PI;
  return (
    <g
      transform={`translate(${String(middle.x)} ${String(middle.y)}) rotate(${turnDeg.toFixed(2)})`}
    >
      <ArrowShape from={from} to={to} broken={broken} />
    </g>
  );
}

/** Level, from left to right: full where the tube went, broken and open where it would have gone. */
function ArrowShape({ from, to, broken }: { from: number; to: number; broken: boolean }) {
  return broken ? (
    <g fill="none" stroke="var(--on-sky)" strokeWidth="1.8" strokeLinecap="round">
      <line x1={from} x2={to} strokeDasharray="5 4" />
      <path d={`M${(to - 8).toFixed(1)} -5l8 5l-8 5`} />
    </g>
  ) : (
    <>
      <line
        x1={from}
        x2={Math.max(from, to - 7)}
        stroke="var(--sky-lamp)"
        strokeWidth="2.4"
        strokeLinecap="round"
      />
      <path d={`M${to.toFixed(1)} 0l-11 -5v10Z`} fill="var(--sky-lamp)" />
    </>
  );
}

/** Where the tube would have landed: a square, since the ring is where it did. */
export function Otherwise({ at, field }: { at: PicturePoint; field: number }) {
  const half = Math.max(5, field);
  return (
    <>
      <Arrow to={at} stopBefore={field < 5 ? half + 1 : 0} broken />
      <rect
        x={at.x - half}
        y={at.y - half}
        width={2 * half}
        height={2 * half}
        fill="none"
        stroke="var(--on-sky)"
        strokeWidth="1.6"
      />
    </>
  );
}

/** A sample of an arrow, for the line that says what it means. */
export function ArrowSample({ broken }: { broken: boolean }) {
  return (
    <svg
      viewBox="0 -9 44 18"
      aria-hidden="true"
      className="on-sky inline-block h-[1.1em] w-[2.7em] shrink-0 align-[-0.2em]"
    >
      <ArrowShape from={5} to={38} broken={broken} />
    </svg>
  );
}
