import { togetherAsOne, type PlacedMass } from '@/lib/balance/centre-of-mass';
import { creepFrom, type Creep } from '@/lib/balance/creep';
import { clampedAt, freeFallMPerS2, torqueNm, type ClampedTube } from '@/lib/balance/torque';
import type { FigureKit } from '../figure-data';

/** What can be put on and taken off in the figure; the rest is always on. */
export const looseParts = ['phone-adapter', 'dew-shield'] as const;
export type LoosePart = (typeof looseParts)[number];

/** The clutch of the figures holds this tube while its weight acts within so many millimetres of the axis. */
export const clutchArmMm = 10;

type Bench = Pick<FigureKit, 'bench'>;

/** A kit's tube with what is on it, as one; places from its front end, millimetres. */
export function wholeTube({ bench }: Bench, on: readonly LoosePart[]): PlacedMass {
  const loose: readonly string[] = looseParts;
  const worn: readonly string[] = on;
  return togetherAsOne([
    {
      massKg: bench.tube.massKg,
      alongMm: bench.tube.centreOfMassFromFrontMm,
      aboveAxisMm: 0,
    },
    ...bench.parts
      // One eyepiece at a time.
      .filter(({ id }) => id !== 'eyepiece-9' && (!loose.includes(id) || worn.includes(id)))
      .map(({ massKg, fromFrontMm }) => ({ massKg, alongMm: fromFrontMm, aboveAxisMm: 0 })),
  ]);
}

const holdingNm = (massKg: number): number => (massKg * freeFallMPerS2 * clutchArmMm) / 1000;

/** What the tube does, level, when the hand leaves it with the clamp there. */
export function letGo(kit: Bench, on: readonly LoosePart[], clampMm: number): Creep {
  // The clutch is set for the tube as it is usually used.
  return creepFrom(clampedAt(wholeTube(kit, on), clampMm), 0, holdingNm(wholeTube(kit, []).massKg));
}

/** Where the bar of the figure lets the clamp grip: about the usual balance point, in whole 5 mm. */
export function barOf(kit: Bench): { leastMm: number; mostMm: number } {
  const middle = 5 * Math.round(wholeTube(kit, []).alongMm / 5);
  const reach = 5 * Math.round(kit.bench.tube.dovetailLengthMm / 2.4 / 5);
  return { leastMm: middle - reach, mostMm: middle + reach };
}

/** A tube of 2 kg whose weight acts so far in front of and above the axis. */
export type RaisedTube = Pick<ClampedTube, 'forwardMm' | 'aboveMm'>;
const raisedKg = 2;

/** How hard its weight pulls as a share of what the clutch holds; positive pulls the front down. */
export const pullShare = (tube: RaisedTube, altitudeDeg: number): number =>
  torqueNm({ ...tube, massKg: raisedKg }, altitudeDeg) / holdingNm(raisedKg);

export const creepWhenRaised = (tube: RaisedTube, altitudeDeg: number): Creep =>
  creepFrom({ ...tube, massKg: raisedKg }, altitudeDeg, holdingNm(raisedKg));
