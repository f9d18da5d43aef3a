import { degreesToRadians } from '@/lib/units/angle';
import { legLetters } from './bubble-words';
import { mostChangeMm, type HeadFacts, type LegChanges } from './head-facts';
import { Bubble, VialGlass } from './vial-glass';

type LegsDrawingProps = {
  facts: HeadFacts;
  changes: LegChanges;
  /** Leg to be pointed out, or none. */
  hinted: number | null;
  label: string;
};

const legAzimuths = [0, 120, 240];
/** A lean is drawn so many times too large, or nobody would see it. */
const exaggerated = 5;

/** The head from above with its vial and legs, and below it the same from the side, along its slope. */
export function LegsDrawing({ facts, changes, hinted, label }: LegsDrawingProps) {
  return (
    <svg
      viewBox="-22 -22 44 60"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[23rem]"
    >
      {legAzimuths.map((azimuthDeg, leg) => (
        <Leg
          key={azimuthDeg}
          azimuthDeg={azimuthDeg}
          letter={legLetters[leg] ?? ''}
          share={(changes[leg] ?? 0) / mostChangeMm}
          hinted={hinted === leg}
        />
      ))}
      <VialGlass>
        <Bubble place={facts.bubble} />
      </VialGlass>
      <SideView facts={facts} />
    </svg>
  );
}

type LegProps = { azimuthDeg: number; letter: string; share: number; hinted: boolean };

function Leg({ azimuthDeg, letter, share, hinted }: LegProps) {
  const length = 4 + 2 * share;
  const azimuth = degreesToRadians(azimuthDeg);
  const [x, y] = [20.2 * Math.sin(azimuth), -20.2 * Math.cos(azimuth)];
  return (
    <g>
      <g transform={`rotate(${String(azimuthDeg)})`}>
        <rect
          x="-1.1"
          y="-18"
          width="2.2"
          height="6"
          className="fill-sunken stroke-strong"
          strokeWidth="0.2"
        />
        <rect
          x="-1.1"
          y={-12 - length}
          width="2.2"
          height={length}
          className={hinted ? 'fill-[var(--lamp)]' : 'fill-strong'}
        />
      </g>
      <text
        x={x.toFixed(2)}
        y={y.toFixed(2)}
        textAnchor="middle"
        dominantBaseline="central"
        className="fill-ink text-[2.6px] font-bold"
      >
        {letter}
      </text>
    </g>
  );
}

/** The high side is on the right. */
function SideView({ facts }: { facts: HeadFacts }) {
  return (
    <g transform="translate(0 30)">
      <line
        x1="-17"
        y1="0"
        x2="17"
        y2="0"
        className="stroke-strong"
        strokeWidth="0.2"
        strokeDasharray="0.8 0.6"
      />
      <g transform={`rotate(${(-exaggerated * facts.tiltDeg).toFixed(2)})`}>
        <rect x="-13" y="-0.9" width="26" height="1.8" rx="0.5" className="fill-soft" />
      </g>
      <text x="-17" y="7.2" className="fill-ink text-[2.3px]">
        From the side: lean drawn {exaggerated} times
      </text>
    </g>
  );
}
