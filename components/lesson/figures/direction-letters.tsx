import { discPoint } from './sky-disc';

const directions = [
  { letter: 'N', azimuthDeg: 0 },
  { letter: 'E', azimuthDeg: 90 },
  { letter: 'S', azimuthDeg: 180 },
  { letter: 'W', azimuthDeg: 270 },
] as const;

/** The four directions around a drawing of the whole sky, just outside its rim. */
export function DirectionLetters() {
  return directions.map(({ letter, azimuthDeg }) => {
    const { x, y } = discPoint({ azimuthDeg, altitudeDeg: -8 });
    return (
      <text
        key={letter}
        x={x.toFixed(1)}
        y={y.toFixed(1)}
        textAnchor="middle"
        dominantBaseline="central"
        className="fill-ink text-[9px] font-semibold"
      >
        {letter}
      </text>
    );
  });
}
