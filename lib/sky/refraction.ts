import { degreesToRadians } from '../units/angle';

/** The atmosphere of both formulas; others scale by pressure and absolute temperature. */
const standardPressureHpa = 1010;
const standardTemperatureC = 10;

/** Neither formula is meant for directions below this. */
const lowestAltitudeDeg = -1;

/** Factor on refraction at a pressure in hPa and a temperature in °C. Meeus ch. 16. */
export function refractionScale(
  pressureHpa: number = standardPressureHpa,
  temperatureC: number = standardTemperatureC,
): number {
  return (
    (pressureHpa / standardPressureHpa) * ((273 + standardTemperatureC) / (273 + temperatureC))
  );
}

/**
 * How much refraction raises a direction, in degrees, from its *true* altitude in degrees.
 * Below −1° it is held at its value there. Good to 0.1′ from the horizon up.
 * Sæmundsson 1986, in Meeus, *Astronomical Algorithms* 2nd ed., eq. 16.4.
 */
export function refractionDeg(trueAltitudeDeg: number, scale = 1): number {
  const h = Math.max(trueAltitudeDeg, lowestAltitudeDeg);
  return (scale * 1.02) / 60 / Math.tan(degreesToRadians(h + 10.3 / (h + 5.11)));
}

/**
 * How much refraction has raised a direction, in degrees, from its *apparent* altitude in degrees.
 * Below −1° it is held at its value there. Undoes {@link refractionDeg} to 4″.
 * Bennett 1982, in Meeus, *Astronomical Algorithms* 2nd ed., eq. 16.3.
 */
export function apparentToTrueRefractionDeg(apparentAltitudeDeg: number, scale = 1): number {
  const h = Math.max(apparentAltitudeDeg, lowestAltitudeDeg);
  return scale / 60 / Math.tan(degreesToRadians(h + 7.31 / (h + 4.4)));
}

const refractionBelowDeg = refractionDeg(lowestAltitudeDeg);

/**
 * {@link refractionDeg} for a direction whose sine (`up`) and cosine (`level`) of true altitude are
 * known already: the tangent of the small correction is a series and that of the sum the addition
 * theorem, so that a whole catalogue needs no further trigonometry. Agrees to 10⁻⁸ degree.
 */
export function refractionOfDirectionDeg(
  trueAltitudeDeg: number,
  up: number,
  level: number,
  scale: number,
): number {
  if (trueAltitudeDeg < lowestAltitudeDeg) return scale * refractionBelowDeg;
  // At most 2.5° (at −1°), where the next term of the series is below 2 · 10⁻¹¹.
  const correction = (10.3 / (trueAltitudeDeg + 5.11)) * (Math.PI / 180);
  const square = correction * correction;
  const tangent = correction * (1 + square * (1 / 3 + square * (2 / 15)));
  return (scale * (1.02 / 60) * (level - up * tangent)) / (up + level * tangent);
}
