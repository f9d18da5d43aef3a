import { lightRay, lightTrain, type LightRay, type TubeOptics } from './light-path';

/** Evenly spread rays of one star from the upper rim of the front to the lower. */
export function starRays(
  tube: TubeOptics,
  { count = 9, tilt = 0, cardDownToMm = Infinity }: StarRays = {},
): LightRay[] {
  const train = lightTrain(tube);
  const reach = 0.94 * (tube.apertureMm / 2);
  return Array.from({ length: count }, (_, index) =>
    lightRay(train, { heightMm: reach * (1 - (2 * index) / (count - 1)), tilt, cardDownToMm }),
  );
}

type StarRays = { count?: number; tilt?: number; cardDownToMm?: number };
