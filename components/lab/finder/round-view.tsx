import type { ReactNode } from 'react';
import type { NamedAim } from '@/lib/grading/bench/finder/finder-replay';
import type { FieldOffset, ImageOrientation } from '@/lib/optics/image-orientation';
import { asSeen } from '@/lib/optics/image-orientation';
import { radiansToArcminutes } from '@/lib/units/angle';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { TargetShape } from './target-shape';

/** Radius of a round view in its drawing's units. */
export const viewRadius = 100;

type RoundViewProps = {
  /** Tells this view from others on the page. */
  name: string;
  variant: FinderVariant;
  radiusArcmin: number;
  /** How this view shows what is before the telescope. */
  orientation: ImageOrientation;
  capped: boolean;
  dusk: boolean;
  /** What is in view, and where it appears in it. */
  seen: readonly { aim: NamedAim; at: FieldOffset }[];
  children?: ReactNode;
};

/** A round view through finder or eyepiece: what is in it, as large and as turned as it shows it. */
export function RoundView(props: RoundViewProps) {
  const { variant, radiusArcmin, orientation, capped, dusk, seen } = props;
  const scale = viewRadius / radiusArcmin;
  const clip = `round-view-${props.name}`;
  return (
    <svg viewBox="-106 -106 212 212" aria-hidden="true" className="mx-auto block max-h-full w-full">
      <clipPath id={clip}>
        <circle r={viewRadius} />
      </clipPath>
      <circle
        r={viewRadius}
        fill={capped ? 'var(--land-near)' : dusk ? 'var(--sky)' : 'var(--sky-low)'}
      />
      {capped ? (
        <text textAnchor="middle" y="6" fontSize="17" fill="var(--on-sky)">
          cap on
        </text>
      ) : (
        <g clipPath={`url(#${clip})`}>
          {seen.map(({ aim, at }) => (
            <g
              key={aim.id}
              transform={`translate(${(at.rightArcmin * scale).toFixed(2)} ${(-at.upArcmin * scale).toFixed(2)})`}
            >
              <Seen variant={variant} aim={aim} orientation={orientation} scale={scale} />
            </g>
          ))}
        </g>
      )}
      {props.children}
      <circle r={viewRadius} fill="none" stroke="var(--sky-line)" strokeWidth="2.5" />
    </svg>
  );
}

type SeenProps = {
  variant: FinderVariant;
  aim: NamedAim;
  orientation: ImageOrientation;
  /** Units an arcminute. */
  scale: number;
};

function Seen({ variant, aim, orientation, scale }: SeenProps) {
  const thing = variant.day?.targets.find(({ id }) => id === aim.id);
  if (thing !== undefined) {
    const perMetre = radiansToArcminutes(1 / thing.distanceM) * scale;
    const { rightArcmin: across, upArcmin: upward } = asSeen(
      { rightArcmin: 1, upArcmin: 1 },
      orientation,
    );
    return (
      <g transform={`scale(${(across * perMetre).toFixed(4)} ${(upward * perMetre).toFixed(4)})`}>
        <TargetShape kind={thing.kind} line={1.2 / perMetre} />
      </g>
    );
  }
  const light = variant.dusk?.lights.find(({ id }) => id === aim.id);
  const radius = light === undefined || light.radiusArcmin === 0 ? 2.6 : light.radiusArcmin * scale;
  return <circle r={radius} fill="var(--on-sky)" fillOpacity={radius > 20 ? 0.75 : 1} />;
}
