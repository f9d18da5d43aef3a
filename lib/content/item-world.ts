import 'server-only';
import type { ItemWorld } from '../items/item-family';
import { orientationOf } from '../optics/image-orientation';
import { loadCatalogue, loadKits } from './sky-catalogue';

/** The school's telescopes and the stars, of which questions are made. */
export const loadItemWorld = (): ItemWorld => ({
  catalogue: loadCatalogue(),
  kits: loadKits().map(({ bench, telescope, ...kit }) => ({
    ...bench,
    id: kit.id,
    name: kit.name,
    tubeType: kit.tubeType,
    telescope,
    orientation: orientationOf(kit.tubeType),
    focalLengthMm: telescope.focalLengthMm,
    apertureMm: telescope.apertureMm,
    eyepieces: kit.eyepieces,
    observingEyepieceId: kit.observingEyepieceId,
    centringEyepieceId: kit.centringEyepieceId,
  })),
});
