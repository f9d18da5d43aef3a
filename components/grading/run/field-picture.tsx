import type { FieldOffset } from '@/lib/optics/image-orientation';

/** A light in the field, where it appears there. */
export type FieldPictureLight = FieldOffset & { name: string; meant: boolean };

const radius = 100;

/**
 * The eyepiece as it stood at a confirm: its field, its middle, and what was in it. The star that was
 * meant is a disc, any other light a square, so that the two are told apart without colour. For a
 * light outside an arrow on the rim says which way it would have been.
 */
export function FieldPicture({
  title,
  lights,
  fieldRadiusArcmin,
}: {
  /** What the picture shows, for who cannot see it. */
  title: string;
  lights: readonly FieldPictureLight[];
  fieldRadiusArcmin: number;
}) {
  return (
    <svg viewBox="-112 -112 224 224" role="img" aria-label={title} className="block w-full">
      <circle r={radius} fill="var(--panel)" stroke="var(--ink)" strokeWidth="2.5" />
      <circle r={radius * 0.2} fill="none" stroke="var(--strong)" strokeDasharray="2 4" />
      <path
        d={`M-${radius} 0 H-6 M6 0 H${radius} M0 -${radius} V-6 M0 6 V${radius}`}
        stroke="var(--strong)"
        strokeWidth="0.8"
      />
      {lights.map((light) => {
        const x = (light.rightArcmin / fieldRadiusArcmin) * radius;
        const y = (-light.upArcmin / fieldRadiusArcmin) * radius;
        if (Math.hypot(x, y) > radius)
          return <OutsideMark key={light.name} x={x} y={y} name={light.name} />;
        const left = x > 20;
        return (
          <g key={light.name} transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
            {light.meant ? (
              <circle r="5" fill="var(--accent)" stroke="var(--ink)" strokeWidth="1.5" />
            ) : (
              <rect x="-5" y="-5" width="10" height="10" fill="var(--ink)" />
            )}
            <text
              x={left ? -9 : 9}
              y={y > 70 ? -8 : 15}
              textAnchor={left ? 'end' : 'start'}
              fontSize="13"
              fontWeight="600"
              fill="var(--ink)"
              stroke="var(--panel)"
              strokeWidth="4"
              paintOrder="stroke"
            >
              {light.name}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** Across the rim, towards what lies beyond it. */
function OutsideMark({ x, y, name }: { x: number; y: number; name: string }) {
  const out = Math.hypot(x, y);
  const turnDeg = (Math.atan2(y, x) * 180) / Math.PI;
  const at = { x: (x / out) * (radius - 26), y: (y / out) * (radius - 26) };
  return (
    <>
      <g transform={`rotate(${turnDeg.toFixed(1)})`}>
        <path
          d={`M${String(radius - 18)} 0H${String(radius)}`}
          stroke="var(--ink)"
          strokeWidth="2"
        />
        <path d={`M${String(radius + 10)} 0l-13 -6v12Z`} fill="var(--ink)" />
      </g>
      <text
        x={at.x.toFixed(1)}
        y={(at.y + 4).toFixed(1)}
        textAnchor={x > 40 ? 'end' : x < -40 ? 'start' : 'middle'}
        fontSize="13"
        fontWeight="600"
        fill="var(--ink)"
        stroke="var(--panel)"
        strokeWidth="4"
        paintOrder="stroke"
      >
        {`to ${name}`}
      </text>
    </>
  );
}
