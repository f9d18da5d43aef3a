/**
 * Where a compass needle points on 25 November 2026, degrees east (positive) of true north, by the World
 * Magnetic Model 2025. Held here so that no figure carries the model to the browser; a test reckons them anew.
 */
export const needlePlaces = [
  { name: 'London', latitudeDeg: 51.5, longitudeDeg: 0, declinationDeg: 1.3 },
  { name: 'Halifax, Nova Scotia', latitudeDeg: 44.64, longitudeDeg: -63.58, declinationDeg: -16.1 },
  { name: 'Denver', latitudeDeg: 39.74, longitudeDeg: -104.98, declinationDeg: 7.5 },
  { name: 'Vancouver', latitudeDeg: 49.25, longitudeDeg: -123.12, declinationDeg: 15.3 },
  { name: 'Cape Town', latitudeDeg: -33.93, longitudeDeg: 18.42, declinationDeg: -26.8 },
  { name: 'Hobart', latitudeDeg: -42.88, longitudeDeg: 147.33, declinationDeg: 15.6 },
  { name: 'Auckland', latitudeDeg: -36.85, longitudeDeg: 174.76, declinationDeg: 20.3 },
  { name: 'Reykjavík', latitudeDeg: 64.15, longitudeDeg: -21.94, declinationDeg: -11 },
] as const;

export type NeedlePlace = (typeof needlePlaces)[number];
