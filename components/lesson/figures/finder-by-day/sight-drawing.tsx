type SightDrawingProps = {
  distanceM: number | null;
  residualArcmin: number;
  radiusArcmin: number;
  label: string;
};

const tubeEnd = 62;
const skyAt = 205;
const apart = 26;
/** Distances by their logarithm, 5 m to 1 km, so that both find room; the drawing says so. */
const placeOf = (distanceM: number): number =>
  tubeEnd + 20 + ((skyAt - tubeEnd - 40) * Math.log(distanceM / 5)) / Math.log(200);

/** From above: tube and finder beside it, their lines of sight, and what the eyepiece then shows. */
export function SightDrawing({
  distanceM,
  residualArcmin,
  radiusArcmin,
  label,
}: SightDrawingProps) {
  const crossing = distanceM === null ? null : placeOf(distanceM);
  const tubeY = 62;
  const finderY = tubeY + apart;
  const slope = crossing === null ? 0 : -apart / (crossing - tubeEnd);
  // On a tall page the line would run out of the picture: it ends where the picture does.
  const reach = slope === 0 ? skyAt : Math.min(skyAt, tubeEnd + (finderY - 6) / -slope);
  const ring = { x: 262, y: 62, r: 42 };
  const out = Math.min(residualArcmin / radiusArcmin, 1.3) * ring.r;
  return (
    <svg
      viewBox="0 0 312 130"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[40rem]"
    >
      <line
        x1={tubeEnd}
        y1={tubeY}
        x2={skyAt}
        y2={tubeY}
        className="stroke-ink"
        strokeWidth="1.5"
      />
      <line
        x1={tubeEnd}
        y1={finderY}
        x2={reach}
        y2={finderY + slope * (reach - tubeEnd)}
        className="stroke-danger"
        strokeWidth="1.5"
        strokeDasharray="5 3"
      />
      <rect x="8" y={tubeY - 11} width={tubeEnd - 8} height="22" className="fill-soft stroke-ink" />
      <rect
        x="30"
        y={finderY - 5}
        width={tubeEnd - 30}
        height="10"
        className="fill-accent stroke-ink"
      />
      <text x="10" y={tubeY - 16} className="fill-ink text-[9px]">
        tube
      </text>
      <text x="30" y={finderY + 16} className="fill-ink text-[9px]">
        finder
      </text>
      {crossing === null ? null : (
        <>
          <circle cx={crossing} cy={tubeY} r="4" className="fill-[var(--lamp)] stroke-ink" />
          <text x={crossing} y={tubeY + 52} textAnchor="middle" className="fill-ink text-[9px]">
            {distanceM === 1000 ? '1 km' : `${String(distanceM)} m`}
          </text>
          <line
            x1={crossing}
            x2={crossing}
            y1={tubeY + 6}
            y2={tubeY + 42}
            className="stroke-line"
            strokeWidth="1"
          />
        </>
      )}
      <circle
        cx={ring.x}
        cy={ring.y}
        r={ring.r}
        className="fill-sky stroke-strong"
        strokeWidth="2.5"
      />
      <path
        d={`M${String(ring.x - 5)} ${String(ring.y)}h10M${String(ring.x)} ${String(ring.y - 5)}v10`}
        className="stroke-sky-line"
        strokeWidth="1"
      />
      <path
        transform={`translate(${String(ring.x)} ${(ring.y - out).toFixed(2)})`}
        d="M0-6 1.4-1.4 6 0 1.4 1.4 0 6-1.4 1.4-6 0-1.4-1.4Z"
        className="fill-sky-lamp stroke-ink"
        strokeWidth="0.7"
      />
      <text x={ring.x} y="122" textAnchor="middle" className="fill-ink text-[9px]">
        in the eyepiece
      </text>
    </svg>
  );
}
