/** What a telescope and an eyepiece show together. */
export type FieldOfView = { magnification: number; trueFieldDeg: number; exitPupilMm: number };

/**
 * Magnification F/f, true field = apparent field / magnification, exit pupil D/m: the small-angle
 * forms, good to a few per cent for real eyepieces. Null while a number is missing.
 */
export function fieldOfView(optics: {
  telescopeFocalLengthMm: number;
  apertureMm: number;
  eyepieceFocalLengthMm: number;
  apparentFieldDeg: number;
}): FieldOfView | null {
  const numbers = Object.values(optics);
  if (!numbers.every((value) => Number.isFinite(value) && value > 0)) return null;
  const magnification = optics.telescopeFocalLengthMm / optics.eyepieceFocalLengthMm;
  return {
    magnification,
    trueFieldDeg: optics.apparentFieldDeg / magnification,
    exitPupilMm: optics.apertureMm / magnification,
  };
}

/** "55.6×, true field 0.90° (54′ across)". */
export const fieldOfViewText = ({
  magnification,
  trueFieldDeg,
  exitPupilMm,
}: FieldOfView): string =>
  `${magnification.toFixed(magnification < 100 ? 1 : 0)}×, true field ${trueFieldDeg.toFixed(2)}° (${(trueFieldDeg * 60).toFixed(0)}′ across), exit pupil ${exitPupilMm.toFixed(1)} mm`;
