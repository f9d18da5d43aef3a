import { DirectionLetters } from '../direction-letters';
import { discPoint, discRadius, type SkyPosition } from '../sky-disc';
import { suspects, wrongSlew, type testLandings } from './two-suspects-facts';

type TwoSuspectsDrawingProps = {
  test: SkyPosition;
  landings: ReturnType<typeof testLandings>;
  label: string;
};

const drawnLonger = 6;

/** The slew that went wrong, the star of the test, and where each suspect would have it end. */
export function TwoSuspectsDrawing({ test, landings, label }: TwoSuspectsDrawingProps) {
  const first = discPoint(wrongSlew);
  const star = discPoint(test);
  return (
    <svg
      viewBox="-116 -116 232 232"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[28rem] select-none"
    >
      <circle r={discRadius} className="fill-sky stroke-sky-line" strokeWidth="1.5" />
      <DirectionLetters />
      <g transform={`translate(${first.x.toFixed(1)} ${first.y.toFixed(1)})`}>
        <circle r="3" className="fill-on-sky-soft" />
        <text y="12" textAnchor="middle" className="fill-on-sky-soft text-[8px]">
          3° high
        </text>
      </g>
      {suspects.map(({ id, letter }) => {
        const end = discPoint(landings[id].lands);
        const x = star.x + drawnLonger * (end.x - star.x);
        const y = star.y + drawnLonger * (end.y - star.y);
        return (
          <g key={id}>
            <line
              x1={star.x.toFixed(1)}
              y1={star.y.toFixed(1)}
              x2={x.toFixed(1)}
              y2={y.toFixed(1)}
              className="stroke-on-sky"
              strokeWidth="1.4"
              strokeDasharray={id === 'lean' ? '3 2' : undefined}
            />
            <circle
              cx={x.toFixed(1)}
              cy={y.toFixed(1)}
              r="5.5"
              className="fill-sky stroke-on-sky"
            />
            <text
              x={x.toFixed(1)}
              y={y.toFixed(1)}
              textAnchor="middle"
              dominantBaseline="central"
              className="fill-on-sky text-[8px] font-bold"
            >
              {letter}
            </text>
          </g>
        );
      })}
      <text x="114" y="112" textAnchor="end" className="fill-soft text-[8px]">
        lines drawn {drawnLonger} times as long
      </text>
      <path
        transform={`translate(${star.x.toFixed(1)} ${star.y.toFixed(1)})`}
        d="M0-7 1.6-1.6 7 0 1.6 1.6 0 7-1.6 1.6-7 0-1.6-1.6Z"
        className="fill-sky-lamp stroke-sky"
        strokeWidth="0.8"
      />
    </svg>
  );
}
