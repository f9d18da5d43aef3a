const points = [
  ...['north', 'north-north-east', 'north-east', 'east-north-east'],
  ...['east', 'east-south-east', 'south-east', 'south-south-east'],
  ...['south', 'south-south-west', 'south-west', 'west-south-west'],
  ...['west', 'west-north-west', 'north-west', 'north-north-west'],
];

export const compassPoint = (azimuthDeg: number): string =>
  points[Math.round(azimuthDeg / 22.5) % 16] ?? 'north';

/** "3½ fists": to half a fist of 10°. */
export function fists(angleDeg: number): string {
  const halves = Math.round(angleDeg / 5);
  const whole = Math.floor(halves / 2);
  if (halves === 1) return 'half a fist';
  return `${halves % 2 === 0 ? String(whole) : `${String(whole)}½`} ${halves === 2 ? 'fist' : 'fists'}`;
}
