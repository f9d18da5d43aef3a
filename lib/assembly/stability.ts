import { degreesToRadians, radiansToDegrees, wrap360 } from '../units/angle';

/** Standard acceleration of free fall, m/s²: 3rd CGPM, 1901. */
const freeFallMPerS2 = 9.80665;

/** How a tripod stands and what it bears. Bearings clockwise from above. */
export type LoadedStand = {
  /** Of each leg, from the hub to its foot. */
  legLengthMm: number;
  /** Of a leg from the vertical. */
  splayDeg: number;
  footBearingsDeg: readonly [number, number, number];
  /** Nought where no tube is on. */
  tubeMassKg: number;
  /** To which side of the middle the arm carries the tube. */
  armBearingDeg: number;
  mountMassKg: number;
  /** Hung below the hub, at the height of the tray. */
  hungMassKg: number;
  /** Of the ground, and where it falls to; the legs are equal, so the stand leans with it. */
  groundSlopeDeg: number;
  fallsTowardsDeg: number;
};

/**
 * Our three telescopes' stand: masses and places from memory after the common build, no source. The
 * tube hangs beside the middle, since one arm carries it.
 */
export const standBuild = {
  tripodMassKg: 2.6,
  mountMassKg: 3,
  mountAboveHubMm: 110,
  tubeAboveHubMm: 230,
  tubeBesideMm: 110,
  trayHeightShare: 0.45,
} as const;

export type CentreOfMass = { massKg: number; eastMm: number; northMm: number; heightMm: number };

/** Where all the weight may be thought to be: Σ m x / Σ m. Any first-year statics text. */
export function centreOf(stand: LoadedStand): CentreOfMass {
  const hubMm = hubHeightMm(stand);
  const arm = degreesToRadians(stand.armBearingDeg);
  const { tripodMassKg, mountAboveHubMm, tubeAboveHubMm, tubeBesideMm, trayHeightShare } =
    standBuild;
  const masses = [
    { kg: tripodMassKg, up: hubMm / 2, out: 0 },
    { kg: stand.mountMassKg, up: hubMm + mountAboveHubMm, out: 0 },
    { kg: stand.tubeMassKg, up: hubMm + tubeAboveHubMm, out: tubeBesideMm },
    { kg: stand.hungMassKg, up: hubMm * trayHeightShare, out: 0 },
  ];
  const massKg = masses.reduce((sum, { kg }) => sum + kg, 0);
  const mean = (of: (mass: (typeof masses)[number]) => number) =>
    masses.reduce((sum, mass) => sum + mass.kg * of(mass), 0) / massKg;
  const out = mean((mass) => mass.out);
  return {
    massKg,
    heightMm: mean((mass) => mass.up),
    eastMm: out * Math.sin(arm),
    northMm: out * Math.cos(arm),
  };
}

export const hubHeightMm = ({ legLengthMm, splayDeg }: StandLegs): number =>
  legLengthMm * Math.cos(degreesToRadians(splayDeg));

export const footCircleMm = ({ legLengthMm, splayDeg }: StandLegs): number =>
  legLengthMm * Math.sin(degreesToRadians(splayDeg));

type StandLegs = Pick<LoadedStand, 'legLengthMm' | 'splayDeg'>;
type GroundPoint = { eastMm: number; northMm: number };

export function feetOf(stand: LoadedStand): GroundPoint[] {
  const radiusMm = footCircleMm(stand);
  return stand.footBearingsDeg.map((bearing) => {
    const angle = degreesToRadians(bearing);
    return { eastMm: radiusMm * Math.sin(angle), northMm: radiusMm * Math.cos(angle) };
  });
}

/** Where a plumb line from the centre of mass meets the ground: downhill by height × tan(slope). */
export function plumbPoint(stand: LoadedStand): GroundPoint {
  const { eastMm, northMm, heightMm } = centreOf(stand);
  const downhillMm = heightMm * Math.tan(degreesToRadians(stand.groundSlopeDeg));
  const falls = degreesToRadians(stand.fallsTowardsDeg);
  return {
    eastMm: eastMm + downhillMm * Math.sin(falls),
    northMm: northMm + downhillMm * Math.cos(falls),
  };
}

export type Stability = {
  /** From the plumb point to the nearest line between two feet; negative once it is outside. */
  marginMm: number;
  /** Straight out over that line, clockwise from above. */
  tipsTowardsDeg: number;
  /** Over which line: the places of its feet in the list. */
  overFeet: readonly [number, number];
  /** How much steeper the ground could still get that way. */
  slopeLeftDeg: number;
};

/** Whether the stand stands: the plumb point must lie inside the triangle of its feet (statics). */
export function stabilityOf(stand: LoadedStand): Stability {
  const feet = feetOf(stand);
  const at = plumbPoint(stand);
  const { heightMm } = centreOf(stand);
  const edges = [
    [0, 1],
    [1, 2],
    [2, 0],
  ] as const;
  const [nearest] = edges
    .map((overFeet) => {
      const [a, b] = overFeet.map((index) => feet[index]);
      if (a === undefined || b === undefined) throw new RangeError('a tripod has three feet');
      const [east, north] = [b.eastMm - a.eastMm, b.northMm - a.northMm];
      const length = Math.hypot(east, north);
      // The outward normal: away from the middle of the circle of feet, which is (0, 0).
      const side = Math.sign(a.eastMm * north - a.northMm * east);
      const [outEast, outNorth] = [(side * north) / length, (side * -east) / length];
      const marginMm = (a.eastMm - at.eastMm) * outEast + (a.northMm - at.northMm) * outNorth;
      return {
        marginMm,
        overFeet,
        tipsTowardsDeg: wrap360(radiansToDegrees(Math.atan2(outEast, outNorth))),
        slopeLeftDeg: radiansToDegrees(Math.atan(marginMm / heightMm)),
      };
    })
    .sort((one, other) => one.marginMm - other.marginMm);
  if (nearest === undefined) throw new RangeError('a tripod has three edges');
  return nearest;
}

/**
 * How hard a push at some height, level and over the nearest line of feet, just lifts the third foot:
 * M g · margin / height, newtons (balance of moments, any first-year statics text). Nought when it tips
 * by itself.
 */
export function tippingPushN(stand: LoadedStand, pushHeightMm: number): number {
  const { massKg } = centreOf(stand);
  return (massKg * freeFallMPerS2 * Math.max(0, stabilityOf(stand).marginMm)) / pushHeightMm;
}

/** As many kilograms as weigh so much, which hands know better than newtons. */
export const asWeightKg = (newtons: number): number => newtons / freeFallMPerS2;
