import { playArcmin, type CentringFacts } from './centring-facts';

type CentringDrawingProps = { facts: CentringFacts; fieldRadiusArcmin: number; label: string };

const radius = 92;

/** The eyepiece’s field with the star, and for each axis how much play lies between motor and tube. */
export function CentringDrawing({ facts, fieldRadiusArcmin, label }: CentringDrawingProps) {
  const px = radius / fieldRadiusArcmin;
  const x = facts.seen.rightArcmin * px;
  const y = -facts.seen.upArcmin * px;
  return (
    <svg
      viewBox="-104 -104 320 208"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[36rem] select-none"
    >
      <circle r={radius} className="fill-sky stroke-strong" strokeWidth="2" />
      {[0.25, 0.5, 0.75].map((share) => (
        <circle
          key={share}
          r={share * radius}
          className="fill-none stroke-sky-line"
          strokeWidth="0.5"
          strokeDasharray="2 3"
        />
      ))}
      <path d="M-8 0H8M0-8V8" className="stroke-on-sky-soft" strokeWidth="1" />
      <circle
        r={0.1 * radius}
        className="fill-none stroke-on-sky-soft"
        strokeWidth="1"
        strokeDasharray="1.5 1.5"
      />
      {facts.inField ? (
        <circle cx={x.toFixed(2)} cy={y.toFixed(2)} r="4" className="fill-sky-lamp" />
      ) : (
        <OutsideMark x={x} y={y} />
      )}
      <Gear y={-58} title="Play along the horizon" lagArcmin={facts.lagAcrossArcmin} />
      <Gear y={22} title="Play in height" lagArcmin={facts.lagAlongArcmin} />
      <text x="112" y="92" className="fill-soft text-[9px]">
        M: the motor, T: the tube
      </text>
    </svg>
  );
}

/** On the rim, on the side where the star has gone. */
function OutsideMark({ x, y }: { x: number; y: number }) {
  const far = Math.hypot(x, y);
  const [dx, dy] = [x / far, y / far];
  const [tipX, tipY] = [dx * (radius + 9), dy * (radius + 9)];
  const [baseX, baseY] = [dx * (radius - 2), dy * (radius - 2)];
  return (
    <path
      d={`M${tipX.toFixed(1)} ${tipY.toFixed(1)}L${(baseX - 6 * dy).toFixed(1)} ${(baseY + 6 * dx).toFixed(1)}L${(baseX + 6 * dy).toFixed(1)} ${(baseY - 6 * dx).toFixed(1)}Z`}
      className="fill-sky-lamp stroke-ink"
      strokeWidth="0.8"
    />
  );
}

/** A tooth of the motor's wheel between two teeth of the tube's: pushing on its right side, or slack. */
function Gear({ y, title, lagArcmin }: { y: number; title: string; lagArcmin: number }) {
  const gap = 30;
  const slack = (lagArcmin / playArcmin) * gap;
  return (
    <g transform={`translate(112 ${String(y)})`}>
      <text y="-14" className="fill-ink text-[10px] font-semibold">
        {title}
      </text>
      <rect x="0" y="0" width="16" height="22" className="fill-sunken stroke-strong" />
      <rect x={16 + 14 + gap} y="0" width="16" height="22" className="fill-sunken stroke-strong" />
      <rect
        x={16 + gap - slack}
        y="4"
        width="14"
        height="22"
        className="fill-[var(--lamp)] stroke-ink"
      />
      <text x="8" y="15" textAnchor="middle" className="fill-ink text-[9px]">
        T
      </text>
      <text x={38 + gap} y="15" textAnchor="middle" className="fill-ink text-[9px]">
        T
      </text>
      <text x={23 + gap - slack} y="19" textAnchor="middle" className="fill-on-accent text-[9px]">
        M
      </text>
      <text y="40" className="fill-ink text-[10px]">
        {lagArcmin === 0
          ? 'taken up'
          : `${String(Math.round(lagArcmin))}′ of ${String(playArcmin)}′ left`}
      </text>
    </g>
  );
}
