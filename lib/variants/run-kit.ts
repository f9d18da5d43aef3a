import type { RunKit } from '../alignment/setup';
import { orientationOf, type TubeType } from '../optics/image-orientation';
import type { Eyepiece } from '../pointing/scenario';

/** The part of a telescope's description that a run keeps. */
export function runKitOf(kit: {
  name: string;
  tubeType: TubeType;
  eyepieces: readonly (Eyepiece & { id: string })[];
  centringEyepieceId: string;
}): RunKit {
  const centring = kit.eyepieces.find(({ id }) => id === kit.centringEyepieceId);
  if (centring === undefined) throw new Error(`${kit.name} has no centring eyepiece`);
  const { focalLengthMm, apparentFieldDeg } = centring;
  return {
    name: kit.name,
    tubeType: kit.tubeType,
    orientation: orientationOf(kit.tubeType),
    centringEyepiece: { focalLengthMm, apparentFieldDeg },
  };
}
