/** Something to look at, by what decides which eyepiece shows it. */
export type SkyTarget = {
  id: string;
  name: string;
  /** J2000, rounded: a drift time needs no more. */
  declinationDeg: number;
} & ({ kind: 'cluster'; sizeArcmin: number } | { kind: 'double'; separationArcsec: number });

/**
 * Sizes and separations as observers' handbooks give them, declinations of J2000; all from memory. The
 * doubles are ones whose separation changes little over decades.
 */
export const skyTargets: readonly SkyTarget[] = [
  { id: 'pleiades', name: 'the Pleiades', kind: 'cluster', declinationDeg: 24.1, sizeArcmin: 110 },
  { id: 'beehive', name: 'the Beehive', kind: 'cluster', declinationDeg: 19.7, sizeArcmin: 95 },
  {
    id: 'double-cluster',
    name: 'the Double Cluster',
    kind: 'cluster',
    declinationDeg: 57.1,
    sizeArcmin: 60,
  },
  { id: 'm35', name: 'the cluster M 35', kind: 'cluster', declinationDeg: 24.3, sizeArcmin: 28 },
  { id: 'm67', name: 'the cluster M 67', kind: 'cluster', declinationDeg: 11.8, sizeArcmin: 30 },
  {
    id: 'm11',
    name: 'the Wild Duck Cluster',
    kind: 'cluster',
    declinationDeg: -6.3,
    sizeArcmin: 14,
  },
  {
    id: 'm13',
    name: 'the globular cluster M 13',
    kind: 'cluster',
    declinationDeg: 36.5,
    sizeArcmin: 20,
  },
  {
    id: 'm22',
    name: 'the globular cluster M 22',
    kind: 'cluster',
    declinationDeg: -23.9,
    sizeArcmin: 32,
  },
  { id: 'm7', name: 'the cluster M 7', kind: 'cluster', declinationDeg: -34.8, sizeArcmin: 80 },
  { id: 'm41', name: 'the cluster M 41', kind: 'cluster', declinationDeg: -20.7, sizeArcmin: 38 },
  {
    id: 'omega-centauri',
    name: 'Omega Centauri',
    kind: 'cluster',
    declinationDeg: -47.5,
    sizeArcmin: 36,
  },
  {
    id: 'jewel-box',
    name: 'the Jewel Box',
    kind: 'cluster',
    declinationDeg: -60.4,
    sizeArcmin: 10,
  },
  { id: 'albireo', name: 'Albireo', kind: 'double', declinationDeg: 28.0, separationArcsec: 34.6 },
  { id: 'mizar', name: 'Mizar', kind: 'double', declinationDeg: 54.9, separationArcsec: 14.4 },
  { id: 'almach', name: 'Almach', kind: 'double', declinationDeg: 42.3, separationArcsec: 9.6 },
  {
    id: 'cor-caroli',
    name: 'Cor Caroli',
    kind: 'double',
    declinationDeg: 38.3,
    separationArcsec: 19.3,
  },
  {
    id: 'mesarthim',
    name: 'Mesarthim',
    kind: 'double',
    declinationDeg: 19.3,
    separationArcsec: 7.5,
  },
  { id: 'algedi', name: 'Algedi', kind: 'double', declinationDeg: -12.5, separationArcsec: 381 },
  {
    id: 'epsilon-lyrae',
    name: 'the wide pair of Epsilon Lyrae',
    kind: 'double',
    declinationDeg: 39.7,
    separationArcsec: 209,
  },
  { id: 'acrux', name: 'Acrux', kind: 'double', declinationDeg: -63.1, separationArcsec: 4.0 },
  { id: 'izar', name: 'Izar', kind: 'double', declinationDeg: 27.1, separationArcsec: 2.9 },
  {
    id: 'close-boo',
    name: 'Zeta Boötis',
    kind: 'double',
    declinationDeg: 13.7,
    separationArcsec: 0.3,
  },
  {
    id: 'eta-orionis',
    name: 'Eta Orionis',
    kind: 'double',
    declinationDeg: -2.4,
    separationArcsec: 1.8,
  },
  {
    id: 'gamma-lupi',
    name: 'Gamma Lupi',
    kind: 'double',
    declinationDeg: -41.2,
    separationArcsec: 0.8,
  },
];
