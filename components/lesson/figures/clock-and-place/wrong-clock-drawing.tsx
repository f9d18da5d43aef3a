import { discPoint } from '../sky-disc';
import { DiscGround } from './disc-ground';
import type { WrongClockFacts } from './wrong-clock-facts';

type WrongClockDrawingProps = { facts: WrongClockFacts; label: string };

/** Dots where stars are, rings where the tube looks, and a line from one to the other. */
export function WrongClockDrawing({ facts, label }: WrongClockDrawingProps) {
  return (
    <DiscGround label={label}>
      {facts.stars.map(({ name, seen, tube }) => {
        const from = discPoint(seen);
        // The name stands on the side away from the ring.
        const left = discPoint(tube).x > from.x + 1;
        return (
          <text
            key={name}
            x={(from.x + (left ? -5 : 5)).toFixed(2)}
            y={(from.y - 4).toFixed(2)}
            textAnchor={left ? 'end' : 'start'}
            className="fill-on-sky text-[7.5px]"
          >
            {name}
          </text>
        );
      })}
      {facts.stars.map(({ name, seen, tube }) => {
        const from = discPoint(seen);
        const to = discPoint({ ...tube, altitudeDeg: Math.max(tube.altitudeDeg, -4) });
        return (
          <g key={name}>
            <line
              x1={from.x.toFixed(2)}
              y1={from.y.toFixed(2)}
              x2={to.x.toFixed(2)}
              y2={to.y.toFixed(2)}
              className="stroke-sky-lamp"
              strokeWidth="0.9"
            />
            <circle cx={from.x.toFixed(2)} cy={from.y.toFixed(2)} r="1.8" className="fill-on-sky" />
            <circle
              cx={to.x.toFixed(2)}
              cy={to.y.toFixed(2)}
              r="4"
              className="fill-none stroke-sky-lamp"
              strokeWidth="1.1"
            />
          </g>
        );
      })}
    </DiscGround>
  );
}
