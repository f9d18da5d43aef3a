import type { Centre } from '@/lib/power/supply';

/**
 * The usual mark of a plug's polarity (IEC 60417-5926, from memory): an open ring for the sleeve, a dot
 * for the middle pin, each joined to its sign. 76 wide about (0, 0).
 */
export function PolaritySymbol({ centre, colour }: { centre: Centre; colour: string }) {
  // The dot is joined to the right sign, the ring to the left one.
  const [left, right] = centre === 'positive' ? ['−', '+'] : ['+', '−'];
  return (
    <g aria-hidden="true" fill="none" stroke={colour} strokeWidth="1.8">
      <path d="M7 -6.5 A9.5 9.5 0 1 0 7 6.5 M-9.5 0 H-22 M0 0 H22" />
      <circle r="3.2" fill={colour} stroke="none" />
      {[
        { x: -30, sign: left },
        { x: 30, sign: right },
      ].map(({ x, sign }) => (
        <g key={x} transform={`translate(${String(x)} 0)`}>
          <circle r="8" />
          <path d={sign === '+' ? 'M-4.5 0 H4.5 M0 -4.5 V4.5' : 'M-4.5 0 H4.5'} />
        </g>
      ))}
    </g>
  );
}
