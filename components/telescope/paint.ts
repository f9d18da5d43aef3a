/**
 * The paints of a telescope, all of them tokens. It is drawn on a dark surface (`on-sky`), as the sky
 * behind it is dark in every theme.
 */
export const tubePaint = {
  fill: 'var(--on-sky)',
  stroke: 'var(--land-near)',
  strokeWidth: 1.5,
  strokeLinejoin: 'round',
} as const;

/** Rings, cells, focusers: what is screwed on. */
export const fittingPaint = { ...tubePaint, fill: 'var(--on-sky-soft)' } as const;

/** Glass, openings and rubber. */
export const darkPaint = {
  fill: 'var(--land-near)',
  stroke: 'var(--sky-line)',
  strokeWidth: 1.2,
  strokeLinejoin: 'round',
} as const;

/** Arm, base and legs. */
export const mountPaint = {
  fill: 'var(--land)',
  stroke: 'var(--sky-line)',
  strokeWidth: 1.5,
  strokeLinejoin: 'round',
} as const;
