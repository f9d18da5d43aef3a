import { DirectionLetters } from '../direction-letters';
import { discPoint, discRadius, type SkyPosition } from '../sky-disc';
import { firstStar, secondStar, type SpoiltFacts } from './spoilt-facts';

type SpoiltDrawingProps = {
  facts: SpoiltFacts;
  third: SkyPosition;
  fieldRadiusArcmin: number;
  label: string;
};

/** The sky from below: the two stars, the third, and which targets a go-to would find. */
export function SpoiltDrawing({ facts, third, fieldRadiusArcmin, label }: SpoiltDrawingProps) {
  const at = discPoint(third);
  const found =
    facts.thirdMissArcmin !== null && facts.thirdMissArcmin <= fieldRadiusArcmin ? 'in' : 'out';
  return (
    <svg
      viewBox="-116 -116 232 232"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[28rem] select-none"
    >
      <circle r={discRadius} className="fill-sky stroke-sky-line" strokeWidth="1.5" />
      <DirectionLetters />
      {facts.cells.map((cell) => {
        const { x, y } = discPoint(cell);
        const hit = cell.errorArcmin <= fieldRadiusArcmin;
        return (
          <circle
            key={`${cell.azimuthDeg.toFixed(2)}/${String(cell.altitudeDeg)}`}
            cx={x.toFixed(2)}
            cy={y.toFixed(2)}
            r={hit ? 1.9 : 1.6}
            strokeWidth="0.6"
            className={hit ? 'fill-on-sky stroke-on-sky' : 'fill-none stroke-on-sky-soft'}
          />
        );
      })}
      <Star place={firstStar} letter="1" />
      <Star place={secondStar} letter="2" />
      <g transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}>
        <circle
          r="7"
          className="fill-none stroke-sky-lamp"
          strokeWidth="2"
          strokeDasharray={found === 'in' ? undefined : '2.5 2'}
        />
        <text
          y="-10"
          textAnchor="middle"
          className="fill-sky-lamp stroke-sky text-[9px] font-bold [paint-order:stroke]"
          strokeWidth="2"
        >
          third
        </text>
      </g>
    </svg>
  );
}

function Star({ place, letter }: { place: SkyPosition; letter: string }) {
  const { x, y } = discPoint(place);
  return (
    <g transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`}>
      <path
        d="M0-7 1.6-1.6 7 0 1.6 1.6 0 7-1.6 1.6-7 0-1.6-1.6Z"
        className="fill-sky-lamp stroke-sky"
        strokeWidth="0.8"
      />
      <text
        y="-9"
        textAnchor="middle"
        className="fill-sky-lamp stroke-sky text-[9px] font-bold [paint-order:stroke]"
        strokeWidth="2"
      >
        {letter}
      </text>
    </g>
  );
}
