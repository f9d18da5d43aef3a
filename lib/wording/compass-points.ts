const sixteen = [
  ...['north', 'north-north-east', 'north-east', 'east-north-east'],
  ...['east', 'east-south-east', 'south-east', 'south-south-east'],
  ...['south', 'south-south-west', 'south-west', 'west-south-west'],
  ...['west', 'west-north-west', 'north-west', 'north-north-west'],
] as const;

/** The nth point from north, clockwise; any whole number goes round. */
const pointAt = (index: number): string => sixteen[((index % 16) + 16) % 16] ?? 'north';

/** The nearest of the sixteen points of the compass: "west-north-west". Azimuth in degrees, any turn. */
export const compassPoint = (azimuthDeg: number): string => pointAt(Math.round(azimuthDeg / 22.5));

/** The nearest of the eight: "south-east". Azimuth in degrees, any turn. */
export const windOf = (azimuthDeg: number): string => pointAt(2 * Math.round(azimuthDeg / 45));
