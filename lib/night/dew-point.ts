/**
 * Dew point in °C of air at a temperature and relative humidity (0–100 %): Magnus formula with the
 * constants of the WMO Guide to Instruments and Methods of Observation, WMO-No. 8 (after Sonntag 1990),
 * over water, good to about 0.1 °C from −45 to 60 °C.
 */
export function dewPointC(airC: number, humidityPercent: number): number {
  const gamma = Math.log(humidityPercent / 100) + (magnusB * airC) / (magnusC + airC);
  return (magnusC * gamma) / (magnusB - gamma);
}

const magnusB = 17.62;
const magnusC = 243.12;

/**
 * The same by rule of thumb: a degree below the air for every 5 % below 100 %. Lawrence 2005, Bulletin of
 * the American Meteorological Society 86, 225: within a degree while the humidity is above 50 %.
 */
export const dewPointByRuleC = (airC: number, humidityPercent: number): number =>
  airC - (100 - humidityPercent) / 5;

/** Glass that looks at a clear sky gets colder than the air; dew forms once it is at the dew point. */
export const isDewy = (glassC: number, airC: number, humidityPercent: number): boolean =>
  glassC <= dewPointC(airC, humidityPercent);
