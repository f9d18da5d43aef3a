import { useId } from 'react';
import { asSeen, type FieldOffset, type ImageOrientation } from '@/lib/optics/image-orientation';
import { drawnRadiusArcmin } from './way-round-facts';

type WayRoundDrawingProps = { onSky: FieldOffset; orientation: ImageOrientation; label: string };

const radius = 62;
const unit = radius / drawnRadiusArcmin;

/** The sky round the tube's axis as the eye sees it, and the same in the eyepiece. */
export function WayRoundDrawing({ onSky, orientation, label }: WayRoundDrawingProps) {
  return (
    <svg
      viewBox="0 0 300 168"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[36rem]"
    >
      <Ring x={74} title="on the sky" star={onSky} orientation="true" />
      <Ring
        x={226}
        title="in the eyepiece"
        star={asSeen(onSky, orientation)}
        orientation={orientation}
      />
    </svg>
  );
}

type RingProps = { x: number; title: string; star: FieldOffset; orientation: ImageOrientation };

function Ring({ x, title, star, orientation }: RingProps) {
  const clip = useId();
  // A flag beside the star shows how the picture is turned; it is turned as the star's place is.
  const corner = asSeen({ rightArcmin: 1, upArcmin: 1 }, orientation);
  return (
    <g transform={`translate(${String(x)} 72)`}>
      <clipPath id={clip}>
        <circle r={radius} />
      </clipPath>
      <circle r={radius + 2} className="fill-sky stroke-strong" strokeWidth="3" />
      <path d="M-6 0H6M0-6V6" className="stroke-sky-line" strokeWidth="1" />
      <g clipPath={`url(#${clip})`}>
        <g
          transform={`translate(${(star.rightArcmin * unit).toFixed(2)} ${(-star.upArcmin * unit).toFixed(2)}) scale(${String(corner.rightArcmin)} ${String(corner.upArcmin)})`}
        >
          <path
            d="M0-7 1.6-1.6 7 0 1.6 1.6 0 7-1.6 1.6-7 0-1.6-1.6Z"
            className="fill-sky-lamp stroke-sky"
            strokeWidth="0.6"
          />
          <path d="M-14 12V-10H-4M-14-1H-7" className="fill-none stroke-on-sky" strokeWidth="2.5" />
        </g>
      </g>
      <text y={radius + 22} textAnchor="middle" className="fill-ink text-[11px]">
        {title}
      </text>
    </g>
  );
}
