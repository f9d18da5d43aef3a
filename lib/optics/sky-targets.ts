/** Something to look at, by what decides which eyepiece shows it. */
export type ShownTarget = {
  id: string;
  name: string;
  /** J2000, rounded: a drift time needs no more. */
  declinationDeg: number;
} & ({ kind: 'cluster'; sizeArcmin: number } | { kind: 'double'; separationArcsec: number });

/** The same where it stands in the sky; J2000, rounded. */
export type SkyTarget = ShownTarget & { rightAscensionDeg: number };

/**
 * Sizes and separations as observers' handbooks give them, places of J2000; all from memory. The
 * doubles are ones whose separation changes little over decades.
 */
export const skyTargets: readonly SkyTarget[] = [
  {
    id: 'pleiades',
    name: 'the Pleiades',
    kind: 'cluster',
    rightAscensionDeg: 56.9,
    declinationDeg: 24.1,
    sizeArcmin: 110,
  },
  {
    id: 'beehive',
    name: 'the Beehive',
    kind: 'cluster',
    rightAscensionDeg: 130.1,
    declinationDeg: 19.7,
    sizeArcmin: 95,
  },
  {
    id: 'double-cluster',
    name: 'the Double Cluster',
    kind: 'cluster',
    rightAscensionDeg: 35.1,
    declinationDeg: 57.1,
    sizeArcmin: 60,
  },
  {
    id: 'm35',
    name: 'the cluster M 35',
    kind: 'cluster',
    rightAscensionDeg: 92.3,
    declinationDeg: 24.3,
    sizeArcmin: 28,
  },
  {
    id: 'm67',
    name: 'the cluster M 67',
    kind: 'cluster',
    rightAscensionDeg: 132.8,
    declinationDeg: 11.8,
    sizeArcmin: 30,
  },
  {
    id: 'm11',
    name: 'the Wild Duck Cluster',
    kind: 'cluster',
    rightAscensionDeg: 282.8,
    declinationDeg: -6.3,
    sizeArcmin: 14,
  },
  {
    id: 'm13',
    name: 'the globular cluster M 13',
    kind: 'cluster',
    rightAscensionDeg: 250.4,
    declinationDeg: 36.5,
    sizeArcmin: 20,
  },
  {
    id: 'm22',
    name: 'the globular cluster M 22',
    kind: 'cluster',
    rightAscensionDeg: 279.1,
    declinationDeg: -23.9,
    sizeArcmin: 32,
  },
  {
    id: 'm7',
    name: 'the cluster M 7',
    kind: 'cluster',
    rightAscensionDeg: 268.5,
    declinationDeg: -34.8,
    sizeArcmin: 80,
  },
  {
    id: 'm41',
    name: 'the cluster M 41',
    kind: 'cluster',
    rightAscensionDeg: 101.5,
    declinationDeg: -20.7,
    sizeArcmin: 38,
  },
  {
    id: 'omega-centauri',
    name: 'Omega Centauri',
    kind: 'cluster',
    rightAscensionDeg: 201.7,
    declinationDeg: -47.5,
    sizeArcmin: 36,
  },
  {
    id: 'jewel-box',
    name: 'the Jewel Box',
    kind: 'cluster',
    rightAscensionDeg: 193.4,
    declinationDeg: -60.4,
    sizeArcmin: 10,
  },
  {
    id: 'albireo',
    name: 'Albireo',
    kind: 'double',
    rightAscensionDeg: 292.7,
    declinationDeg: 28.0,
    separationArcsec: 34.6,
  },
  {
    id: 'mizar',
    name: 'Mizar',
    kind: 'double',
    rightAscensionDeg: 201.0,
    declinationDeg: 54.9,
    separationArcsec: 14.4,
  },
  {
    id: 'almach',
    name: 'Almach',
    kind: 'double',
    rightAscensionDeg: 31.0,
    declinationDeg: 42.3,
    separationArcsec: 9.6,
  },
  {
    id: 'cor-caroli',
    name: 'Cor Caroli',
    kind: 'double',
    rightAscensionDeg: 194.0,
    declinationDeg: 38.3,
    separationArcsec: 19.3,
  },
  {
    id: 'mesarthim',
    name: 'Mesarthim',
    kind: 'double',
    rightAscensionDeg: 28.4,
    declinationDeg: 19.3,
    separationArcsec: 7.5,
  },
  {
    id: 'algedi',
    name: 'Algedi',
    kind: 'double',
    rightAscensionDeg: 304.5,
    declinationDeg: -12.5,
    separationArcsec: 381,
  },
  {
    id: 'epsilon-lyrae',
    name: 'the wide pair of Epsilon Lyrae',
    kind: 'double',
    rightAscensionDeg: 281.1,
    declinationDeg: 39.7,
    separationArcsec: 209,
  },
  {
    id: 'acrux',
    name: 'Acrux',
    kind: 'double',
    rightAscensionDeg: 186.6,
    declinationDeg: -63.1,
    separationArcsec: 4.0,
  },
  {
    id: 'izar',
    name: 'Izar',
    kind: 'double',
    rightAscensionDeg: 221.2,
    declinationDeg: 27.1,
    separationArcsec: 2.9,
  },
  {
    id: 'close-boo',
    name: 'Zeta Boötis',
    kind: 'double',
    rightAscensionDeg: 220.3,
    declinationDeg: 13.7,
    separationArcsec: 0.3,
  },
  {
    id: 'eta-orionis',
    name: 'Eta Orionis',
    kind: 'double',
    rightAscensionDeg: 81.1,
    declinationDeg: -2.4,
    separationArcsec: 1.8,
  },
  {
    id: 'gamma-lupi',
    name: 'Gamma Lupi',
    kind: 'double',
    rightAscensionDeg: 233.8,
    declinationDeg: -41.2,
    separationArcsec: 0.8,
  },
];
