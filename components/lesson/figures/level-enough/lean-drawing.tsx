import type { LeanFacts } from './lean-facts';
import { offWords } from './lean-words';

type Where = { upArcmin: number; clockwiseArcmin: number; missArcmin: number };
type LeanDrawingProps = { facts: LeanFacts; label: string };

const radius = 44;
const centre: Where = { upArcmin: 0, clockwiseArcmin: 0, missArcmin: 0 };

/** Three looks through the same eyepiece: before, after two stars, and where the base is taken as level. */
export function LeanDrawing({ facts, label }: LeanDrawingProps) {
  const { fieldArcmin, first, afterTwoStarsArcmin, believedLevel } = facts;
  return (
    <svg
      viewBox="0 0 330 158"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[38rem]"
    >
      <Look x={55} title="First slew" where={first} fieldArcmin={fieldArcmin} />
      <Look
        x={165}
        title="After two stars"
        where={afterTwoStarsArcmin === null ? null : { ...centre, missArcmin: afterTwoStarsArcmin }}
        fieldArcmin={fieldArcmin}
      />
      <Look x={275} title="Taken as level" where={believedLevel} fieldArcmin={fieldArcmin} />
    </svg>
  );
}

type LookProps = { x: number; title: string; where: Where | null; fieldArcmin: number };

/** Up is up, as one would see it without an eyepiece's turning: where the tube lands high, the star is low. */
function Look({ x, title, where, fieldArcmin }: LookProps) {
  return (
    <g transform={`translate(${String(x)} 76)`}>
      <text y={-radius - 14} textAnchor="middle" className="fill-ink text-[12px] font-semibold">
        {title}
      </text>
      <circle r={radius} className="fill-sky stroke-strong" strokeWidth="2" />
      <path d="M-6 0 H6 M0 -6 V6" className="stroke-sky-line" strokeWidth="0.8" />
      {where === null ? (
        <text y="4" textAnchor="middle" className="fill-on-sky text-[11px]">
          refused
        </text>
      ) : (
        <StarAt where={where} fieldArcmin={fieldArcmin} />
      )}
      <text y={radius + 18} textAnchor="middle" className="fill-ink text-[12px]">
        {where === null ? 'leans too far' : `${offWords(where.missArcmin)} off`}
      </text>
      <text y={radius + 33} textAnchor="middle" className="fill-ink text-[12px]">
        {where === null ? '' : where.missArcmin <= fieldArcmin ? 'in the field' : 'outside'}
      </text>
    </g>
  );
}

function StarAt({ where, fieldArcmin }: { where: Where; fieldArcmin: number }) {
  const [right, down] = [-where.clockwiseArcmin / fieldArcmin, where.upArcmin / fieldArcmin];
  const share = Math.hypot(right, down);
  if (share > 1) {
    const angle = (Math.atan2(down, right) * 180) / Math.PI;
    return (
      <path
        transform={`rotate(${angle.toFixed(1)})`}
        d={`M${String(radius - 18)} 0 H${String(radius + 5)} m-8 -6 l9 6 l-9 6`}
        className="fill-none stroke-sky-lamp"
        strokeWidth="3"
      />
    );
  }
  const reach = radius - 3;
  return (
    <path
      transform={`translate(${(reach * right).toFixed(2)} ${(reach * down).toFixed(2)})`}
      d="M0-7 1.6-1.6 7 0 1.6 1.6 0 7-1.6 1.6-7 0-1.6-1.6Z"
      className="fill-sky-lamp stroke-sky"
      strokeWidth="0.6"
    />
  );
}
