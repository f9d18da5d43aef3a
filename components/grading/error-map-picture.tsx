import { onDisc } from '@/components/sky/all-sky';
import { angleWordsFor } from '@/components/sky/angle-words';
import { errorMap, type ErrorMapCell } from '@/lib/pointing/error-map';
import type { Telescope } from '@/lib/pointing/scenario';

type Placed = { azimuthDeg: number; altitudeDeg: number };

type ErrorMapProps = {
  title: string;
  /** The stars that were aligned on, or would be. */
  stars: readonly Placed[];
  fieldRadiusArcmin: number;
  /** Below the picture: which pair it is. */
  caption: string;
};

const radius = 150;
/** For cells 10° apart. */
const widestRingPx = 5.4;
const stepDeg = 10;

/** From well inside the field to far outside it; the share is of the field's radius. */
const classes = [
  { upTo: 0.33, opacity: 0.35 },
  { upTo: 0.66, opacity: 0.55 },
  { upTo: 1, opacity: 0.8 },
  { upTo: Infinity, opacity: 1 },
] as const;

/** What a pair is expected to be worth over the sky, by the small-error model. */
export function ErrorMapPicture({
  telescope,
  ...map
}: ErrorMapProps & { stars: readonly [Placed, Placed]; telescope: Telescope }) {
  const cells = errorMap({ stars: map.stars, telescope, stepDeg });
  return <ErrorMapOfCells {...map} kind="expected" cells={cells} />;
}

const saidOf = {
  expected: {
    none: 'This pair leaves the mount undecided: no target can be relied on.',
    miss: 'Expected miss',
  },
  achieved: { none: 'There was no alignment to go by.', miss: 'Miss' },
} as const;

/**
 * Where over the sky a target would land. In each direction the ring is the eyepiece's field and the
 * disc is the miss, to the same scale: a disc that hides its ring means outside the field. Size tells
 * it, so it needs no colour.
 */
export function ErrorMapOfCells({
  title,
  stars,
  cells,
  fieldRadiusArcmin,
  caption,
  kind,
}: ErrorMapProps & { cells: readonly ErrorMapCell[]; kind: keyof typeof saidOf }) {
  const drawn = thinned(cells);
  const errors = cells.map((cell) => cell.errorArcmin);
  // Rings of neighbouring cells touch: cells of another size have rings of another size.
  const ringPx = (widestRingPx * apartDeg(drawn)) / stepDeg;
  const least = Math.min(...errors);
  const most = Math.max(...errors);
  const inWords = angleWordsFor(least, most, fieldRadiusArcmin);
  const said =
    cells.length === 0
      ? saidOf[kind].none
      : `${saidOf[kind].miss} from ${inWords(least)} to ${inWords(most)}; the field reaches ${inWords(fieldRadiusArcmin)} from its middle.`;
  return (
    <figure>
      <svg
        viewBox="-172 -172 344 344"
        role="img"
        aria-label={`${title}. ${said}`}
        className="block w-full"
      >
        <circle r={radius + 6} fill="var(--panel)" stroke="var(--strong)" strokeWidth="1.5" />
        {drawn.map((cell) => {
          const { x, y } = onDisc(cell, radius);
          const share = cell.errorArcmin / fieldRadiusArcmin;
          const opacity = classes.find(({ upTo }) => share <= upTo)?.opacity ?? 1;
          const outside = share > 1;
          return (
            <g
              key={`${cell.azimuthDeg} ${cell.altitudeDeg}`}
              transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
            >
              <circle r={ringPx.toFixed(1)} fill="none" stroke="var(--strong)" strokeWidth="0.9" />
              <circle
                r={(ringPx * Math.min(1.5, share)).toFixed(1)}
                fill={outside ? 'var(--ink)' : 'var(--accent)'}
                fillOpacity={opacity}
              />
              {outside ? (
                <path d={crossPath(ringPx / 2)} stroke="var(--panel)" strokeWidth="1.4" />
              ) : null}
            </g>
          );
        })}
        {stars.map((star, index) => {
          const { x, y } = onDisc(star, radius);
          return (
            <g key={index} transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
              <path
                d="M0 -12 L3.2 -3.6 L12 -3.2 L5 2.4 L7.4 11 L0 6 L-7.4 11 L-5 2.4 L-12 -3.2 L-3.2 -3.6 Z"
                fill="var(--panel)"
                stroke="var(--ink)"
                strokeWidth="1.8"
              />
            </g>
          );
        })}
        <g
          fontSize="14"
          fontWeight="600"
          fill="var(--ink)"
          textAnchor="middle"
          dominantBaseline="central"
        >
          <text y={-radius - 14}>N</text>
          <text y={radius + 14}>S</text>
          <text x={-radius - 13}>E</text>
          <text x={radius + 13}>W</text>
        </g>
      </svg>
      <figcaption className="text-sm">
        <span className="font-semibold">{caption}</span>
        <span className="block text-soft">{said}</span>
      </figcaption>
    </figure>
  );
}

const crossPath = (half: number): string => {
  const h = half.toFixed(1);
  return `M-${h} -${h} L${h} ${h} M${h} -${h} L-${h} ${h}`;
};

/** More cells than this would be too small to tell apart, and a heavy page. */
const mostDrawn = 400;

/** Every second ring of cells, and every second cell of it. */
function thinned(cells: readonly ErrorMapCell[]): readonly ErrorMapCell[] {
  if (cells.length <= mostDrawn) return cells;
  const rings = [...new Set(cells.map(({ altitudeDeg }) => altitudeDeg))].sort((a, b) => a - b);
  return rings
    .filter((_, index) => index % 2 === 0)
    .flatMap((ring) =>
      cells.filter(({ altitudeDeg }) => altitudeDeg === ring).filter((_, index) => index % 2 === 0),
    );
}

/** How far apart the rings of cells are; ten degrees at most are drawn. */
function apartDeg(cells: readonly ErrorMapCell[]): number {
  const altitudes = [...new Set(cells.map(({ altitudeDeg }) => altitudeDeg))].sort((a, b) => a - b);
  const [lowest = 0, next = lowest + stepDeg] = altitudes;
  return Math.min(stepDeg, next - lowest);
}

/** How to read the maps. */
export function ErrorMapLegend() {
  const samples = [
    { share: 0.3, text: 'well inside' },
    { share: 0.9, text: 'near the edge' },
    { share: 1.5, text: 'outside' },
  ];
  return (
    <ul
      className="flex flex-wrap gap-x-6 gap-y-1 text-sm"
      aria-label="Ring: the eyepiece’s field. Disc: the expected miss."
    >
      {samples.map(({ share, text }) => (
        <li key={text} className="flex items-center gap-2">
          <svg viewBox="-10 -10 20 20" className="size-6" aria-hidden="true">
            <circle r={widestRingPx} fill="none" stroke="var(--strong)" />
            <circle
              r={widestRingPx * share}
              fill={share > 1 ? 'var(--ink)' : 'var(--accent)'}
              fillOpacity={share > 1 ? 1 : share > 0.66 ? 0.8 : 0.35}
            />
            {share > 1 ? (
              <path d={crossPath(widestRingPx / 2)} stroke="var(--panel)" strokeWidth="1.4" />
            ) : null}
          </svg>
          {text}
        </li>
      ))}
    </ul>
  );
}
