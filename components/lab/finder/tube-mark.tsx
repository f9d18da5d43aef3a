/** Where the tube points: a ring, closed by a cap or open round a cross. */
export function TubeMark({ capped }: { capped: boolean }) {
  return (
    <g>
      <circle
        r="3.4"
        fill={capped ? 'var(--land-near)' : 'transparent'}
        stroke="var(--on-sky)"
        strokeWidth="0.9"
      />
      {capped ? (
        <path d="M-2.4 -2.4 L2.4 2.4" stroke="var(--on-sky)" strokeWidth="0.7" />
      ) : (
        <path
          d="M-3.4 0 H-1 M1 0 H3.4 M0 -3.4 V-1 M0 1 V3.4"
          stroke="var(--on-sky)"
          strokeWidth="0.6"
        />
      )}
      <text
        y="7.6"
        textAnchor="middle"
        fontSize="3.4"
        fontWeight="600"
        fill="var(--on-sky)"
        stroke="var(--land-near)"
        strokeWidth="0.8"
        paintOrder="stroke"
      >
        {capped ? 'tube, capped' : 'tube, open'}
      </text>
    </g>
  );
}
