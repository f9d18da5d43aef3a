/**
 * The idea in one picture: a skyline cut from paper at dusk, two stars far apart joined by a line,
 * a third too close to the first, and the fists that measure how high a star stands.
 *
 * Drawn flat at 7.5 units a degree from a horizon at 560, so that a fist (10°) is 75 units high and
 * the stars stand where the figures beside the drawing were computed for.
 */
const unitsPerDegree = 7.5;
const horizonY = 560;
const firstAzimuthX = 718;

/** Altitude above the horizon and azimuth from the first star, degrees. */
export const drawnStars = {
  first: { azimuthDeg: 0, altitudeDeg: 40 },
  close: { azimuthDeg: 14, altitudeDeg: 30 },
  far: { azimuthDeg: 85, altitudeDeg: 30 },
} as const;

type Place = { azimuthDeg: number; altitudeDeg: number };
const x = ({ azimuthDeg }: Place) => firstAzimuthX + azimuthDeg * unitsPerDegree;
const y = ({ altitudeDeg }: Place) => horizonY - altitudeDeg * unitsPerDegree;

const { first, close, far } = drawnStars;

/** Small stars for company: x, y, radius. */
const company: readonly (readonly [number, number, number])[] = [
  [96, 42, 2.2],
  [392, 26, 1.8],
  [604, 356, 1.6],
  [628, 62, 2.4],
  [664, 196, 1.5],
  [846, 96, 2],
  [930, 214, 1.5],
  [1004, 58, 2.6],
  [1066, 402, 1.6],
  [1132, 150, 1.5],
  [1196, 92, 2],
  [1268, 236, 1.7],
  [1312, 60, 1.6],
  [1408, 168, 2.3],
  [-120, 120, 2],
  [-260, 300, 1.6],
  [1560, 110, 2],
  [1660, 260, 1.7],
];

export function DuskDrawing({
  className,
  farText,
  closeText,
}: {
  className?: string;
  farText: string;
  closeText: string;
}) {
  return (
    <svg
      viewBox="0 0 1440 640"
      preserveAspectRatio="xMidYMax meet"
      role="img"
      aria-label="A skyline at dusk. One star stands four fists above the horizon. A line joins it to a star far to the right, three fists up; a dashed line joins it to a star close by."
      className={className}
    >
      <PaperSky />
      <g className="fill-on-sky-soft">
        {company.map(([cx, cy, r]) => (
          <circle key={cx} cx={cx} cy={cy} r={r} />
        ))}
      </g>

      <path
        d={`M${x(first)} ${y(first)} L${x(far)} ${y(far)}`}
        className="stroke-sky-lamp"
        strokeWidth="3.5"
      />
      <path
        d={`M${x(first)} ${y(first)} L${x(close)} ${y(close)}`}
        className="stroke-on-sky"
        strokeWidth="3"
        strokeDasharray="3 9"
        strokeLinecap="round"
      />

      <Village />

      <Fists at={x(first)} count={4} />
      <Fists at={x(far)} count={3} />

      <Star cx={x(first)} cy={y(first)} r={27} className="fill-sky-lamp" />
      <Star cx={x(far)} cy={y(far)} r={25} className="fill-sky-lamp" />
      <Star cx={x(close)} cy={y(close)} r={19} className="fill-on-sky" />

      <g className="fill-on-sky text-[23px] font-semibold max-lg:text-[29px]">
        <text
          transform={`translate(${x(first) + 330} ${y(first) + 16}) rotate(6.7)`}
          textAnchor="middle"
        >
          {farText}
        </text>
        <text x={x(close) + 30} y={y(close) + 9}>
          {closeText}
        </text>
        <text x={x(first) + 46} y={horizonY - 112}>
          four fists up
        </text>
      </g>
    </svg>
  );
}

/** Four sheets of paper, each a little lighter towards the horizon, their edges torn by hand. */
function PaperSky() {
  return (
    <g stroke="none">
      <path
        d="M-1400 172 C-900 130 -500 190 -80 168 S420 120 760 158 S1300 196 1620 150 S2400 172 2900 150 V700 H-1400Z"
        fill="color-mix(in oklab, var(--sky), var(--sky-low) 45%)"
      />
      <path
        d="M-1400 330 C-900 292 -400 344 0 314 S520 282 880 322 S1400 344 1700 308 S2400 330 2900 308 V700 H-1400Z"
        fill="var(--sky-low)"
      />
      <path
        d="M-1400 452 C-900 428 -400 468 60 444 S560 418 900 448 S1420 470 1760 438 S2400 452 2900 434 V700 H-1400Z"
        fill="color-mix(in oklab, var(--sky-low), var(--sky-glow) 42%)"
      />
      <path
        d="M-1400 520 C-900 504 -300 532 100 514 S620 496 960 518 S1460 530 1780 510 S2400 520 2900 508 V700 H-1400Z"
        fill="var(--sky-glow)"
      />
    </g>
  );
}

/** Hills, a barn, roofs and trees in two sheets, and the bench in front with a mark every ten degrees. */
function Village() {
  return (
    <g>
      <path
        className="fill-land"
        opacity="0.72"
        d="M-1400 566 L-1100 540 L-820 556 L-560 520 L-300 548 L-60 526 C60 512 150 520 240 534 S420 556 520 544 S700 520 820 540 S1020 560 1120 548 S1300 522 1440 540 L1700 552 L2000 524 L2300 556 L2900 536 V700 H-1400Z"
      />
      <path
        className="fill-land"
        d="M-1400 580 H-420 l14 -26 10 26 h40 v-22 h46 v22 h90 l12 -34 16 34 H64 l10 -30 8 12 9 -34 12 46 h16 v-40 l34 -30 34 30 v40 h12 v-64 h7 v-18 c0 -10 24 -10 24 0 v18 h7 v64 h40 l13 -42 15 42 h38 v-28 h24 v-16 l30 -22 30 22 v16 h20 v28 h150 l9 -22 9 22 h120 v-34 l52 -40 52 40 v34 h24 v-20 h40 v20 h96 l10 -36 7 12 8 -30 12 54 h60 v-30 l26 -20 26 20 v30 h84 l14 -40 12 40 H1700 l12 -30 14 30 h200 v-40 l40 -30 40 30 v40 H2900 V700 H-1400Z"
      />
      <g className="fill-sky-lamp">
        <path d="M140 552h9v11h-9zM364 566h8v10h-8zM925 560h10v12h-10zM1268 568h8v9h-8z" />
      </g>
      <path className="fill-land-near" d="M-1400 604 H2900 V700 H-1400Z" />
      <path className="fill-sky-lamp" d="M-1400 603 H2900 v2.5 H-1400Z" />
      <g className="stroke-sky-lamp" strokeWidth="2">
        {Array.from({ length: 58 }, (_, i) => i - 19).map((i) => (
          <path key={i} d={`M${firstAzimuthX + 75 * i} 605 v${i % 3 === 0 ? 16 : 9}`} />
        ))}
      </g>
      <Telescope />
    </g>
  );
}

/** A short tube on one arm and a tripod: nobody's in particular. */
function Telescope() {
  return (
    <g transform="translate(1085 604)" className="fill-land-near stroke-sky-line" strokeWidth="2">
      <path d="M-3 -58 L-30 0 h7 L1 -46 L24 0 h7 L5 -58Z" />
      <path d="M-2 0 V-58 h5 V0Z" />
      <path d="M-9 -70 h20 v14 h-20zM6 -100 h9 v34 h-9z" />
      <g transform="rotate(-32 4 -98)">
        <path d="M-50 -110 h96 v24 h-96zM46 -113 h16 v30 h-16zM-62 -104 h12 v12 h-12zM-34 -118 h16 v6 h-16z" />
      </g>
    </g>
  );
}

/** Fists stacked from the horizon up, as a stretched arm would count them. */
function Fists({ at, count }: { at: number; count: number }) {
  return (
    <g
      className="fill-sky stroke-on-sky-soft"
      strokeWidth="2.2"
      strokeLinecap="round"
      strokeLinejoin="round"
      fillOpacity="0.9"
    >
      {Array.from({ length: count }, (_, i) => (
        <g key={i} transform={`translate(${at - 32} ${horizonY - 75 * (i + 1)})`}>
          <path d="M16 3 H47 C56 3 60 9 60 16 V58 C60 67 55 72 46 72 H17 C9 72 5 68 5 62 C5 58 7 56 9 55 C5 53 4 49 4 45 C4 41 6 39 9 38 C5 36 4 32 4 28 C4 24 6 22 9 20 C6 18 5 15 6 11 C7 6 11 3 16 3Z" />
          <path d="M9 20 H30 M9 38 H34 M9 55 H34" fill="none" />
          <path d="M47 3 C33 6 27 13 31 22 C35 30 47 27 51 36" fill="none" />
        </g>
      ))}
    </g>
  );
}

function Star({ cx, cy, r, className }: { cx: number; cy: number; r: number; className: string }) {
  const w = r * 0.2;
  return (
    <path
      // The dark edge lifts the star off the fist below it.
      className={`${className} stroke-sky`}
      strokeWidth="5"
      paintOrder="stroke"
      d={`M${cx} ${cy - r} L${cx + w} ${cy - w} L${cx + r} ${cy} L${cx + w} ${cy + w} L${cx} ${cy + r} L${cx - w} ${cy + w} L${cx - r} ${cy} L${cx - w} ${cy - w}Z`}
    />
  );
}
