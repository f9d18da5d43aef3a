import type { PlacedMass } from '../../../balance/centre-of-mass';
import type { PartOnTube } from '../../../balance/tube-bench';
import type { TubeType } from '../../../optics/image-orientation';
import type { Random } from '../../random';
import type { BenchKit, TubePartId } from '../bench-kit';

const toTenGrams = (kg: number): number => Math.round(kg * 100) / 100;

/**
 * How high the parts sit above the tube's own axis while it is level, millimetres: eyepieces look
 * upward, the finder rides on the tube's back. After the common build of such tubes, from memory.
 */
const aboveTubeMm: Record<TubeType, Partial<Record<TubePartId, number>>> = {
  refractor: { prism: 10, 'eyepiece-25': 40, 'eyepiece-9': 40, 'phone-adapter': 60, finder: 80 },
  reflector: { 'eyepiece-25': 60, 'eyepiece-9': 60, 'phone-adapter': 70, finder: 105 },
  'maksutov-cassegrain': {
    diagonal: 15,
    'eyepiece-25': 45,
    'eyepiece-9': 45,
    'phone-adapter': 60,
    finder: 90,
  },
};

/** The bare tube of one student: no two are quite alike. Its height is set when all is on it. */
export const drawTube = ({ tube }: BenchKit, frontMm: number, random: Random): PlacedMass => ({
  massKg: toTenGrams(tube.massKg * random.between(0.94, 1.06)),
  alongMm: Math.round(frontMm + tube.centreOfMassFromFrontMm + random.between(-9, 9)),
  aboveAxisMm: tube.centreAboveAxisMm,
});

/** What can be put on it: the kit's parts, each a little lighter or heavier than the catalogue says. */
export const drawParts = (
  { parts, tubeType }: BenchKit,
  frontMm: number,
  random: Random,
): PartOnTube[] =>
  parts.map(({ id, name, massKg, fromFrontMm }) => ({
    id,
    name,
    alongMm: frontMm + fromFrontMm,
    massKg: toTenGrams(massKg * random.between(0.85, 1.15)),
    aboveAxisMm: aboveTubeMm[tubeType][id] ?? 0,
    slot: id === 'eyepiece-25' || id === 'eyepiece-9' ? 'eyepiece' : null,
  }));

/** One weight that is strapped under the tube near its front or near its back. */
export function strapWeights({ tube }: BenchKit, frontMm: number, massKg: number): PartOnTube[] {
  const shared = {
    massKg: toTenGrams(massKg),
    aboveAxisMm: -Math.round(tube.diameterMm / 2 + 12),
    slot: 'weight',
  };
  return [
    {
      ...shared,
      id: 'weight-front',
      name: 'strap weight, near the front',
      alongMm: Math.round(frontMm + tube.lengthMm * 0.06),
    },
    {
      ...shared,
      id: 'weight-back',
      name: 'strap weight, near the back',
      alongMm: Math.round(frontMm + tube.lengthMm * 0.94),
    },
  ];
}

/**
 * The tube carried so high that, with these parts on, the centre of mass of all lies this far above
 * the altitude axis: the arm grips the bar where its holes allow.
 */
export function carriedAt(
  tube: PlacedMass,
  on: readonly PartOnTube[],
  aboveMm: number,
): PlacedMass {
  const partsKg = on.reduce((sum, part) => sum + part.massKg, 0);
  const partsKgMm = on.reduce((sum, part) => sum + part.massKg * part.aboveAxisMm, 0);
  const wanted = ((tube.massKg + partsKg) * aboveMm - partsKgMm) / tube.massKg;
  return { ...tube, aboveAxisMm: Math.round(wanted * 2) / 2 };
}
