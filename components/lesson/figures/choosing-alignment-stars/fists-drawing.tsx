const eye = { x: 52, y: 150 };

const toward = (altitudeDeg: number, distance: number) => {
  const altitude = (altitudeDeg * Math.PI) / 180;
  return {
    x: eye.x + distance * Math.cos(altitude),
    y: eye.y - distance * Math.sin(altitude),
  };
};

/** A person, an outstretched arm, three fists up to a star at 30°, and 45° where it seems to be. */
export function FistsDrawing({ label }: { label: string }) {
  const star = toward(30, 230);
  const seems = toward(45, 180);
  return (
    <svg
      viewBox="0 0 330 200"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[36rem]"
    >
      <rect width="330" height="200" className="fill-sky" />
      <rect y="178" width="330" height="22" className="fill-land" />
      <line
        x1={eye.x}
        y1={eye.y}
        x2="312"
        y2={eye.y}
        className="stroke-sky-line"
        strokeWidth="1"
        strokeDasharray="5 4"
      />
      <text x="322" y={eye.y - 4} textAnchor="end" className="fill-on-sky-soft text-[9px]">
        level
      </text>
      <Person />
      {[0, 10, 20].map((fromDeg, i) => (
        <Fist key={fromDeg} fromDeg={fromDeg} count={i + 1} />
      ))}
      <line
        x1={eye.x}
        y1={eye.y}
        x2={star.x}
        y2={star.y}
        className="stroke-sky-lamp"
        strokeWidth="1"
      />
      <path
        transform={`translate(${star.x.toFixed(2)} ${star.y.toFixed(2)})`}
        d="M0-8 1.8-1.8 8 0 1.8 1.8 0 8-1.8 1.8-8 0-1.8-1.8Z"
        className="fill-sky-lamp"
      />
      <text x={star.x + 12} y={star.y + 3} className="fill-on-sky text-[10px] font-semibold">
        it is at 30°
      </text>
      <line
        x1={eye.x}
        y1={eye.y}
        x2={seems.x}
        y2={seems.y}
        className="stroke-sky-line"
        strokeWidth="0.8"
        strokeDasharray="2 4"
      />
      <circle
        cx={seems.x}
        cy={seems.y}
        r="5"
        className="fill-none stroke-on-sky"
        strokeWidth="1"
        strokeDasharray="2 2"
      />
      <text x={seems.x + 10} y={seems.y + 3} className="fill-on-sky text-[10px]">
        it seems to be at 45°
      </text>
    </svg>
  );
}

function Person() {
  return (
    <g className="fill-land-near stroke-on-sky-soft" strokeWidth="1.2" strokeLinejoin="round">
      <path d="M38 164c0-5 4-8 9-8s9 3 9 8l3 30H33Z" />
      <circle cx="47" cy="147" r="9" />
      <path
        d="M46 167 L108 149"
        className="fill-none stroke-on-sky-soft"
        strokeWidth="5"
        strokeLinecap="round"
      />
    </g>
  );
}

/** A fist on its side: four fingers that together span 10° from the eye. */
function Fist({ fromDeg, count }: { fromDeg: number; count: number }) {
  const near = 66;
  const far = 104;
  const corners = [
    toward(fromDeg + 0.6, near),
    toward(fromDeg + 0.6, far),
    toward(fromDeg + 9.4, far),
    toward(fromDeg + 9.4, near),
  ];
  const middle = toward(fromDeg + 5, near + 9);
  const fingers = [2.5, 5, 7.5].map((part) => ({
    part,
    from: toward(fromDeg + part, near + 17),
    to: toward(fromDeg + part, far),
  }));
  return (
    <g>
      <polygon
        points={corners.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')}
        className="fill-sky-low stroke-on-sky"
        strokeWidth="1"
        strokeLinejoin="round"
      />
      {fingers.map(({ part, from, to }) => (
        <line
          key={part}
          x1={from.x}
          y1={from.y}
          x2={to.x}
          y2={to.y}
          className="stroke-on-sky"
          strokeWidth="0.8"
        />
      ))}
      <text
        x={middle.x}
        y={middle.y}
        textAnchor="middle"
        dominantBaseline="central"
        className="fill-on-sky text-[9px] font-semibold"
      >
        {count}
      </text>
    </g>
  );
}
