/** How wide a young eye's pupil opens in the dark, millimetres. Common practice, no source. */
export const darkPupilMm = 7;

/** How many times as much light one round opening gathers as another: as their areas, D² to d². */
export const lightRatio = (apertureMm: number, thanMm: number): number =>
  (apertureMm / thanMm) ** 2;

/** The piece of a circle above a straight cut `cutMm` above its middle, square millimetres. */
function capAreaMm2(radiusMm: number, cutMm: number): number {
  const cut = Math.min(radiusMm, Math.max(-radiusMm, cutMm));
  return radiusMm ** 2 * Math.acos(cut / radiusMm) - cut * Math.sqrt(radiusMm ** 2 - cut ** 2);
}

/**
 * The share of a round opening's light that passes a card held over it from above down to `cardDownToMm`
 * above the middle, with a round shadow in the middle: what is left of the ring's area, by the area of a
 * circular segment r² acos(h/r) − h √(r² − h²) (any table of areas). 1 for an open ring.
 */
export function lightPast({
  apertureMm,
  shadowRadiusMm,
  cardDownToMm,
}: {
  apertureMm: number;
  shadowRadiusMm: number;
  cardDownToMm: number;
}): number {
  const open = (radiusMm: number) =>
    radiusMm === 0 ? 0 : Math.PI * radiusMm ** 2 - capAreaMm2(radiusMm, cardDownToMm);
  const ring = Math.PI * ((apertureMm / 2) ** 2 - shadowRadiusMm ** 2);
  return (open(apertureMm / 2) - open(shadowRadiusMm)) / ring;
}
