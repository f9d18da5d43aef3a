import { togetherAsOne, type PlacedMass } from '../../balance/centre-of-mass';
import { freeFallMPerS2 } from '../../balance/torque';
import type { TubePartId } from '../../variants/bench/bench-kit';
import type { Random } from '../../variants/random';
import type { ItemKit, ItemWorld } from '../item-family';

/** What is on every tube that somebody looks through. */
const alwaysOn: readonly TubePartId[] = ['prism', 'diagonal', 'finder', 'eyepiece-25'];

/**
 * A telescope with what is used tonight, in its clamp. The tape begins at the tube's front end and
 * counts towards its back, millimetres.
 */
export type TubeCase = {
  kit: ItemKit;
  /** All of it as one. */
  whole: PlacedMass;
  /** The balance point as it is read off the tape. */
  balanceMm: number;
  /** How far the clamp may be from it, level, until one end sinks. */
  edgeMm: number;
  holdingTorqueNm: number;
};

export function pickKit(random: Random, { kits }: ItemWorld): ItemKit {
  const kit = random.pick(kits);
  if (kit === undefined) throw new Error('a world has telescopes');
  return kit;
}

export const partOf = (kit: ItemKit, id: TubePartId): ItemKit['parts'][number] => {
  const part = kit.parts.find((one) => one.id === id);
  if (part === undefined) throw new Error(`${kit.name} has no ${id}`);
  return part;
};

const placed = ({ massKg, fromFrontMm }: ItemKit['parts'][number]): PlacedMass => ({
  massKg,
  alongMm: fromFrontMm,
  aboveAxisMm: 0,
});

/** A kit's tube with some parts beside those that are always on. */
export const wholeOf = (kit: ItemKit, more: readonly TubePartId[] = []): PlacedMass =>
  togetherAsOne([
    {
      massKg: kit.tube.massKg,
      alongMm: kit.tube.centreOfMassFromFrontMm,
      aboveAxisMm: 0,
    },
    ...kit.parts.filter(({ id }) => alwaysOn.includes(id) || more.includes(id)).map(placed),
  ]);

/** A tube whose clutch holds it while the clamp is within 8–12 mm of the balance point. */
export function drawTube(random: Random, world: ItemWorld): TubeCase {
  const kit = pickKit(random, world);
  const own = wholeOf(kit);
  // No two tubes of a kind are quite alike.
  const whole = { ...own, alongMm: Math.round(own.alongMm) + random.integer(-9, 9) };
  const edgeMm = random.integer(8, 12);
  return {
    kit,
    whole,
    balanceMm: whole.alongMm,
    edgeMm,
    holdingTorqueNm: (whole.massKg * freeFallMPerS2 * edgeMm) / 1000,
  };
}

export const kilograms = (kg: number): string => `${String(Number(kg.toFixed(2)))} kg`;
export const grams = (kg: number): string => `${String(Math.round(1000 * kg))} g`;
