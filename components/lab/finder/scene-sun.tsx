import type { AzAlt } from '@/lib/finder/way-past-sun';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { keepOutPath, sceneBottom, toScene } from './scene-places';

/** The Sun, and all round it where no open tube may point. */
export function SunInScene({ variant, sun }: { variant: FinderVariant; sun: AzAlt }) {
  const { x, y } = toScene(sun, variant.middleAzimuthDeg);
  const ring = keepOutPath(sun, variant.middleAzimuthDeg);
  return (
    <g>
      <path d={ring} fill="var(--sky-lamp)" fillOpacity="0.16" />
      <path
        d={ring}
        fill="none"
        stroke="var(--sky-lamp)"
        strokeWidth="0.6"
        strokeDasharray="2 1.2"
      />
      <circle cx={x} cy={y} r="1.6" fill="var(--sky-lamp)" />
      {Array.from({ length: 8 }, (_, i) => (
        <path
          key={i}
          d="M0 -2.4 V-4.2"
          transform={`translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${String(i * 45)})`}
          stroke="var(--sky-lamp)"
          strokeWidth="0.6"
        />
      ))}
      <text
        x={x}
        y={y - 14}
        textAnchor="middle"
        fontSize="3.6"
        fontWeight="700"
        fill="var(--sky-lamp)"
      >
        Sun: 30° all round
      </text>
      <text x={x} y={y - 9.6} textAnchor="middle" fontSize="3.6" fill="var(--sky-lamp)">
        no open tube in here
      </text>
    </g>
  );
}

/** The building in whose shadow the telescope stands: it covers the Sun. */
export function Wall({ x, top }: { x: number; top: number }) {
  return (
    <g>
      <rect
        x={x - 9}
        y={top}
        width="18"
        height={sceneBottom - top}
        fill="var(--land-near)"
        stroke="var(--sky-line)"
        strokeWidth="0.5"
      />
      <text x={x} y={top + 5} textAnchor="middle" fontSize="3.4" fill="var(--on-sky-soft)">
        wall
      </text>
    </g>
  );
}
