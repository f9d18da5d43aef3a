import type { AlignmentOutcome } from '@/lib/pointing/pointing-model';

const ground = 118;

/** The base leans at most this far in the drawing, and at least so far that a lean is seen at all. */
function drawnLeanDeg(tiltDeg: number): number {
  if (tiltDeg < 0.1) return 0;
  return Math.min(78, Math.max(4, tiltDeg));
}

function leanOf(outcome: AlignmentOutcome): number {
  return outcome.kind === 'agree' || outcome.kind === 'base-on-its-side'
    ? drawnLeanDeg(outcome.baseTiltDeg)
    : 0;
}

/**
 * The mount as the two stars make it stand, under the two lines of sight. Where the stars disagree,
 * two pairs of lines are drawn: where the sky has the second star and where the readings put it.
 */
export function OutcomePicture({ outcome }: { outcome: AlignmentOutcome }) {
  const apart =
    outcome.kind === 'disagree' ||
    outcome.kind === 'absurd-zero' ||
    outcome.kind === 'undetermined';
  const leanDeg = leanOf(outcome);
  const lean = (leanDeg * Math.PI) / 180;
  const head = { x: 160 + 26 * Math.sin(lean), y: ground - 26 * Math.cos(lean) };
  return (
    <svg viewBox="0 0 320 140" aria-hidden="true" className="on-sky block w-full">
      <rect width="320" height="140" fill="var(--sky)" />
      <path d={`M0 ${String(ground)}H320V140H0Z`} fill="var(--land)" />
      {/* They meet where the tube sits: on the head, wherever its lean has taken that. */}
      <g transform={`translate(${head.x.toFixed(1)} ${head.y.toFixed(1)})`}>
        <Sight turnDeg={-48} />
        <Sight turnDeg={46} />
        {apart ? <Sight turnDeg={58} broken /> : null}
      </g>
      <g transform={`translate(160 ${String(ground)}) rotate(${String(leanDeg)})`}>
        <path
          d="M-22 0 -5 -20M22 0 5 -20M0 0V-20"
          stroke="var(--sky-line)"
          strokeWidth="3"
          strokeLinecap="round"
        />
        <rect x="-13" y="-25" width="26" height="6" rx="1" fill="var(--on-sky)" />
      </g>
    </svg>
  );
}

/** A line of sight up to a star; broken where it is only what the readings say. */
function Sight({ turnDeg, broken = false }: { turnDeg: number; broken?: boolean }) {
  return (
    <g transform={`rotate(${String(turnDeg)})`}>
      <line
        y1="-4"
        y2="-74"
        stroke="var(--sky-lamp)"
        strokeWidth="1.8"
        strokeDasharray={broken ? '4 4' : undefined}
      />
      {broken ? (
        <circle cy="-82" r="5" fill="none" stroke="var(--sky-lamp)" strokeWidth="1.5" />
      ) : (
        <path
          d="M0-8 1.8-1.8 8 0 1.8 1.8 0 8-1.8 1.8-8 0-1.8-1.8Z"
          transform="translate(0 -82)"
          fill="var(--on-sky)"
        />
      )}
    </g>
  );
}
