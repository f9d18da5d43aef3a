/**
 * The bright part of the Moon's disc, bright side to the right, as closed SVG path data round the
 * origin. The terminator is half an ellipse; the lit share of the disc's area is the illuminated
 * fraction k itself (Meeus, Astronomical Algorithms, ch. 48).
 */
export function litPartOfMoon(illuminatedFraction: number, radius: number): string {
  const width = Math.abs(1 - 2 * illuminatedFraction) * radius;
  const gibbous = illuminatedFraction > 0.5 ? 1 : 0;
  return `M0 ${-radius} A${radius} ${radius} 0 0 1 0 ${radius} A${width.toFixed(2)} ${radius} 0 0 ${gibbous} 0 ${-radius} Z`;
}
