import { discPoint } from '../sky-disc';
import { DiscGround } from './disc-ground';
import { seenFrom, starsAt, sunAltitudeDeg, type MomentStar } from './sky-of-a-moment';

type TurningSkyDrawingProps = {
  /** Milliseconds of the Unix epoch. */
  ms: number;
  latitudeDeg: number;
  starName: string;
  label: string;
};

/** The sky turns 15.041° an hour; the tail shows one. */
const tailDeg = 15.041;
const tailSteps = 5;

/** The sky of a moment: every bright star with the way it came in the last hour. */
export function TurningSkyDrawing({ ms, latitudeDeg, starName, label }: TurningSkyDrawingProps) {
  const stars = starsAt(ms, 0).filter((star) => seenFrom(star, latitudeDeg).altitudeDeg > 0);
  const byDay = sunAltitudeDeg(ms, latitudeDeg, 0) > -0.833;
  const pole = discPoint({
    azimuthDeg: latitudeDeg < 0 ? 180 : 0,
    altitudeDeg: Math.abs(latitudeDeg),
  });
  return (
    <DiscGround label={label} bright={byDay}>
      <path
        transform={`translate(${pole.x.toFixed(2)} ${pole.y.toFixed(2)})`}
        d="M-4 0H4M0-4V4"
        className="stroke-on-sky-soft"
        strokeWidth="1"
      />
      <text
        x={pole.x + 6}
        y={pole.y + 2}
        className="fill-on-sky-soft stroke-sky text-[6.5px] [paint-order:stroke]"
        strokeWidth="2"
      >
        pole
      </text>
      {stars.map((star) => (
        <Star
          key={star.name}
          star={star}
          latitudeDeg={latitudeDeg}
          followed={star.name === starName}
        />
      ))}
    </DiscGround>
  );
}

type StarProps = { star: MomentStar; latitudeDeg: number; followed: boolean };

function Star({ star, latitudeDeg, followed }: StarProps) {
  const { x, y } = discPoint(seenFrom(star, latitudeDeg));
  const tail = Array.from({ length: tailSteps + 1 }, (_, step) =>
    seenFrom(
      { ...star, hourAngleDeg: star.hourAngleDeg - (tailDeg * step) / tailSteps },
      latitudeDeg,
    ),
  )
    .filter(({ altitudeDeg }) => altitudeDeg > 0)
    .map(discPoint);
  return (
    <g>
      <polyline
        points={tail.map((point) => `${point.x.toFixed(1)},${point.y.toFixed(1)}`).join(' ')}
        className={followed ? 'fill-none stroke-sky-lamp' : 'fill-none stroke-sky-line'}
        strokeWidth={followed ? 1.6 : 0.9}
      />
      {followed ? (
        <>
          <path
            transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`}
            d="M0-6 1.4-1.4 6 0 1.4 1.4 0 6-1.4 1.4-6 0-1.4-1.4Z"
            className="fill-sky-lamp"
          />
          <text
            x={x}
            y={y - 8}
            textAnchor="middle"
            className="fill-sky-lamp stroke-sky text-[8px] font-semibold [paint-order:stroke]"
            strokeWidth="2.5"
          >
            {star.name}
          </text>
        </>
      ) : (
        <circle
          cx={x.toFixed(2)}
          cy={y.toFixed(2)}
          r={Math.max(0.9, 2.6 - 0.7 * star.magnitude)}
          className="fill-on-sky"
        />
      )}
    </g>
  );
}
