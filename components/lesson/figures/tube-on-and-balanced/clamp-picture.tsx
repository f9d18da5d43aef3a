import { degreesToRadians } from '@/lib/units/angle';
import type { FigureKit } from '../figure-data';
import { letGo, looseParts, wholeTube, type LoosePart } from './tube-facts';

type ClampPictureProps = {
  kit: FigureKit;
  on: readonly LoosePart[];
  clampMm: number;
  /** A hand is under the tube: it stays level and its balance point is not told. */
  held: boolean;
  label: string;
};

/** Drawing units for a millimetre: the longest tube with its parts fits. */
const perMm = 0.42;

/** The tube from the side in its clamp, front on the right; the clamp stands still and the tube slides. */
export function ClampPicture({ kit, on, clampMm, held, label }: ClampPictureProps) {
  const { tube, parts } = kit.bench;
  const x = (mm: number) => (clampMm - mm) * perMm;
  const radius = (tube.diameterMm / 2) * perMm;
  const { restDeg } = letGo(kit, on, clampMm);
  // Positive altitudes raise the front, on the right: counter-clockwise. So far the picture has room.
  const tiltDeg = held ? 0 : Math.max(-25, Math.min(25, -restDeg));
  const balance = x(wholeTube(kit, on).alongMm);
  const worn: readonly string[] = on;
  const loose: readonly string[] = looseParts;
  return (
    <svg
      viewBox="-190 -90 380 190"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[38rem]"
    >
      <rect x="-190" y="-90" width="380" height="190" className="fill-sky" />
      <text x="182" y="-72" textAnchor="end" className="fill-on-sky text-[13px]">
        front →
      </text>
      <path d="M-9 0 L-14 84 H14 L9 0 Z" className="fill-land stroke-sky-line" />
      <g transform={`rotate(${tiltDeg.toFixed(1)})`}>
        {parts
          .filter(({ id }) => id !== 'eyepiece-9' && (!loose.includes(id) || worn.includes(id)))
          .map(({ id, fromFrontMm }) => (
            <PartAt key={id} id={id} x={x(fromFrontMm)} radius={radius} />
          ))}
        <rect
          x={x(tube.lengthMm)}
          y={-radius}
          width={tube.lengthMm * perMm}
          height={2 * radius}
          rx="2"
          className="fill-on-sky stroke-land-near"
        />
        {Array.from({ length: Math.floor(tube.lengthMm / 100) + 1 }, (_, i) => 100 * i).map(
          (mm) => (
            <g key={mm} transform={`translate(${x(mm).toFixed(1)} ${(radius - 1).toFixed(1)})`}>
              <path d="M0 0 V-6" className="stroke-land-near" strokeWidth="1.2" />
              <text y="-8" textAnchor="middle" className="fill-land-near text-[11px]">
                {mm}
              </text>
            </g>
          ),
        )}
        {held ? null : (
          <g transform={`translate(${balance.toFixed(1)} ${(-radius / 2).toFixed(1)})`}>
            <circle r="7" className="fill-sky-lamp stroke-land-near" strokeWidth="1.5" />
            <path d="M-7 0 H7 M0 -7 V7" className="stroke-land-near" strokeWidth="1.5" />
          </g>
        )}
      </g>
      <rect
        x="-13"
        y={radius - 4}
        width="26"
        height="14"
        rx="2"
        className="fill-land stroke-sky-line"
      />
      <path d={`M0 ${(radius + 10).toFixed(1)} l-6 10 h12 Z`} className="fill-sky-lamp" />
      {held ? <Hand radius={radius} /> : null}
    </svg>
  );
}

/** Eyepiece end, finder, shield: blocks where they weigh. */
function PartAt({ id, x, radius }: { id: string; x: number; radius: number }) {
  const high = id === 'finder' ? 12 : id === 'phone-adapter' ? 20 : 8;
  const y = id === 'dew-shield' ? -radius - 3 : -radius - high;
  const height = id === 'dew-shield' ? 2 * radius + 6 : high + radius;
  const width = id === 'dew-shield' ? 40 : id === 'phone-adapter' ? 12 : 18;
  return (
    <rect
      x={(x - width / 2).toFixed(1)}
      y={y.toFixed(1)}
      width={width}
      height={height.toFixed(1)}
      rx="2"
      className="fill-on-sky-soft stroke-land-near"
    />
  );
}

/** An open palm under each end. */
function Hand({ radius }: { radius: number }) {
  const lift = 40 * Math.cos(degreesToRadians(60));
  return (
    <g className="fill-none stroke-sky-lamp" strokeWidth="3" strokeLinecap="round">
      {[-1, 1].map((side) => (
        <path
          key={side}
          d={`M${String(side * 78)} ${(radius + 5).toFixed(1)} h${String(side * -lift)} m${String(side * lift)} 0 v10`}
        />
      ))}
    </g>
  );
}
