import type { FieldOffset } from '../../../optics/image-orientation';
import { fieldRadiusArcmin } from '../../../pointing/field-radius';
import { degreesToRadians } from '../../../units/angle';
import type { Random } from '../../random';
import type { BenchKit } from '../bench-kit';
import type { FinderEyepiece, FinderVariant } from './finder-variant';

export type FinderHand = Pick<
  FinderVariant,
  'eyepieces' | 'finder' | 'adjusters' | 'eyepieceAtFirst'
>;

/** Where a shoe holds the finder: so far round the tube from straight above, degrees to the right. */
const roundTheTubeDeg = [-60, -30, 30, 60] as const;

/** Telescope and finder of one student. How such finders are made is from memory, no source. */
export function drawFinderHand(random: Random, kit: BenchKit): FinderHand {
  const round = degreesToRadians(random.pick(roundTheTubeDeg) ?? 30);
  const sign = (): 1 | -1 => (random.integer(0, 1) === 0 ? 1 : -1);
  const alongDeg = random.between(-14, 14);
  const squareDeg = 90 + sign() * random.between(5, 12);
  return {
    eyepieces: eyepiecesOf(kit),
    finder: {
      rightMm: kit.finderBesideTubeMm * Math.sin(round),
      upMm: kit.finderBesideTubeMm * Math.cos(round),
    },
    adjusters: [
      { alongDeg, arcminPerTurn: sign() * random.between(14, 20) },
      { alongDeg: alongDeg + squareDeg, arcminPerTurn: sign() * random.between(14, 20) },
    ],
    eyepieceAtFirst: random.integer(0, 2) === 0 ? 'low' : 'high',
  };
}

function eyepiecesOf({ focalLengthMm, eyepieces }: BenchKit): FinderHand['eyepieces'] {
  const [high, low = high] = [...eyepieces]
    .sort((one, other) => one.focalLengthMm - other.focalLengthMm)
    .filter((_, i, all) => i === 0 || i === all.length - 1);
  if (high === undefined || low === undefined) throw new Error('a telescope without an eyepiece');
  const told = (eyepiece: typeof high): FinderEyepiece => ({
    focalLengthMm: eyepiece.focalLengthMm,
    radiusArcmin: fieldRadiusArcmin({ focalLengthMm }, eyepiece),
  });
  return { low: told(low), high: told(high) };
}

/** An offset of a size between two, any way. */
export function drawOffset(random: Random, leastArcmin: number, mostArcmin: number): FieldOffset {
  const size = random.between(leastArcmin, mostArcmin);
  const towards = degreesToRadians(random.between(0, 360));
  return { rightArcmin: size * Math.cos(towards), upArcmin: size * Math.sin(towards) };
}
