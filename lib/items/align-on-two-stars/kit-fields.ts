import { fieldRadiusArcmin } from '../../pointing/field-radius';
import type { ItemKit, ItemWorld } from '../item-family';
import type { Random } from '../../variants/random';
import { pickOne } from '../../variants/pick-one';

export const someKit = (random: Random, world: ItemWorld): ItemKit => pickOne(random, world.kits);

/** Half the true field of one of a kit's eyepieces, by its id. @throws {RangeError} for another. */
export function radiusOf(kit: ItemKit, eyepieceId: string): number {
  const eyepiece = kit.eyepieces.find(({ id }) => id === eyepieceId);
  if (eyepiece === undefined) throw new RangeError(`${kit.name} has no eyepiece ${eyepieceId}`);
  return fieldRadiusArcmin(kit.telescope, eyepiece);
}

export const observingRadius = (kit: ItemKit): number => radiusOf(kit, kit.observingEyepieceId);
export const centringRadius = (kit: ItemKit): number => radiusOf(kit, kit.centringEyepieceId);

/** The eyepiece that shows less sky than the one for centring. */
export function closeUpId(kit: ItemKit): string {
  const other = kit.eyepieces.find(({ id }) => id !== kit.centringEyepieceId);
  if (other === undefined) throw new RangeError(`${kit.name} has one eyepiece only`);
  return other.id;
}

/** "25 mm" */
export const focalText = (kit: ItemKit, eyepieceId: string): string =>
  `${String(kit.eyepieces.find(({ id }) => id === eyepieceId)?.focalLengthMm ?? 0)} mm`;

/** What the eyepiece does to the picture. */
export const orientationText = {
  true: 'shows the sky as it is',
  mirrored: 'exchanges right and left',
  turned: 'turns the picture upside down',
} as const;
