/**
 * "3½ fists": an angle to half a fist of 10° at arm's length (common practice, no source). Not for an
 * angle that rounds to none.
 */
export function inFists(angleDeg: number): string {
  const halves = Math.round(angleDeg / 5);
  if (halves === 1) return 'half a fist';
  const whole = Math.floor(halves / 2);
  return `${String(whole)}${halves % 2 === 0 ? '' : '½'} ${halves === 2 ? 'fist' : 'fists'}`;
}
