import type { ReactNode } from 'react';
import type { Stand } from '@/lib/assembly/stand';
import type { TubeType } from '@/lib/optics/image-orientation';
import { darkPaint, fittingPaint, mountPaint } from '@/components/telescope/paint';
import { TubeSide } from '@/components/telescope/tube-side';
import { tubeSizes } from '@/components/telescope/tube-size';

const spreadLeg = { near: 40, far: 64 };

/** What stands on the bench, part by part; what fell lies on the ground. Feet at y = 120. */
export function StandDrawing({
  stand,
  kind,
  label,
}: {
  stand: Stand;
  kind: TubeType;
  label: string;
}) {
  return (
    <svg viewBox="-190 -110 380 250" role="img" aria-label={label} className="size-full">
      <path d="M-190 122 H190" className="stroke-[var(--sky-line)]" strokeWidth={2} />
      <g transform={stand.tipped ? 'rotate(14 60 120)' : undefined}>
        <Legs stand={stand} />
        {stand.mount === 'away' ? null : <Arm bolted={stand.mount === 'bolted'} />}
        {stand.tube === 'held' || stand.tube === 'clamped' ? (
          <g>
            <Tube stand={stand} kind={kind} />
            {stand.tube === 'held' ? <Hands kind={kind} /> : null}
          </g>
        ) : null}
      </g>
      {stand.tube === 'fallen' ? (
        <g transform="translate(96 96) rotate(24)">
          <Tube stand={stand} kind={kind} />
        </g>
      ) : null}
    </svg>
  );
}

function Legs({ stand: { legs, raised, tray } }: { stand: Stand }) {
  if (legs === 'folded')
    return (
      <g>
        {[-9, 0, 9].map((x) => (
          <rect
            key={x}
            x={x - 4}
            y={raised ? 40 : 66}
            width="8"
            height={raised ? 80 : 54}
            {...mountPaint}
          />
        ))}
      </g>
    );
  const top = raised ? 64 : 84;
  return (
    <g>
      <path d={`M0 ${String(top)} L-4 120 H4 Z`} {...mountPaint} />
      {[-1, 1].map((side) => (
        <path
          key={side}
          transform={`scale(${String(side)} 1)`}
          d={`M6 ${String(top)} H16 L${String(spreadLeg.far)} 118 L${String(spreadLeg.far - 6)} 120 Z`}
          {...mountPaint}
        />
      ))}
      {tray ? (
        <rect x="-31" y={raised ? 88 : 98} width="62" height="4" rx="2" {...fittingPaint} />
      ) : null}
      <path d={`M-20 ${String(top - 4)} H20 V${String(top + 4)} H-20 Z`} {...mountPaint} />
    </g>
  );
}

function Arm({ bolted }: { bolted: boolean }) {
  return (
    <g>
      <path d="M-24 48 H24 L20 62 H-20 Z" {...mountPaint} />
      <path d="M-12 0 A12 12 0 0 1 12 0 L16 48 H-16 Z" {...mountPaint} />
      <circle r="7" {...darkPaint} />
      {bolted ? <path d="M-5 68 H5 V80 H-5 Z" {...fittingPaint} /> : null}
    </g>
  );
}

function Tube({ stand, kind }: { stand: Stand; kind: TubeType }) {
  const { front, back, radius } = tubeSizes[kind];
  const { finder, imagePart, eyepiece } = stand;
  return (
    <g>
      <TubeSide kind={kind} fitted={{ finder, imagePart, eyepiece }} />
      <rect x="-34" y="-5" width="68" height="10" rx="1" {...fittingPaint} />
      {stand.tube === 'clamped' ? <circle cx="0" cy="0" r="6" {...darkPaint} /> : null}
      {stand.caps ? (
        <rect
          x={front - 3}
          y={-radius - 5}
          width="8"
          height={2 * radius + 10}
          rx="2"
          {...darkPaint}
        />
      ) : null}
      {stand.caps && !eyepiece ? (
        <rect x={-back - 20} y="-9" width="5" height="18" rx="1" {...darkPaint} />
      ) : null}
    </g>
  );
}

/** Two hands under the tube. */
function Hands({ kind }: { kind: TubeType }): ReactNode {
  const { front, back, radius } = tubeSizes[kind];
  return [-back / 2, front / 2].map((x) => (
    <path
      key={x}
      d={`M${String(x - 9)} ${String(radius - 3)} q9 14 18 0`}
      className="fill-none stroke-[var(--sky-lamp)]"
      strokeWidth={5}
      strokeLinecap="round"
    />
  ));
}
