declare const unit: unique symbol;

/** An angle whose unit is part of its type, so that degrees cannot be passed where arcminutes are meant. */
export type Degrees = number & { readonly [unit]: 'degree' };
export type Radians = number & { readonly [unit]: 'radian' };
export type Arcminutes = number & { readonly [unit]: 'arcminute' };

const degreesPerRadian = 180 / Math.PI;

export const degrees = (value: number): Degrees => value as Degrees;
export const radians = (value: number): Radians => value as Radians;
export const arcminutes = (value: number): Arcminutes => value as Arcminutes;

export const degreesToRadians = (value: number): Radians => radians(value / degreesPerRadian);
export const radiansToDegrees = (value: number): Degrees => degrees(value * degreesPerRadian);
export const arcminutesToRadians = (value: number): Radians => degreesToRadians(value / 60);
export const radiansToArcminutes = (value: number): Arcminutes =>
  arcminutes(radiansToDegrees(value) * 60);

/** The same direction in [0°, 360°). */
export function wrap360(valueDeg: number): Degrees {
  const wrapped = valueDeg % 360;
  // `+ 360` of a tiny negative rounds to exactly 360, hence the second remainder.
  return degrees((wrapped < 0 ? wrapped + 360 : wrapped) % 360);
}

/** The same direction in [−180°, 180°): the sign says which way is shorter. */
export function wrap180(valueDeg: number): Degrees {
  return degrees(wrap360(valueDeg + 180) - 180);
}
