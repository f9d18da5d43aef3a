import 'server-only';
import { loadKits } from '../../../content/sky-catalogue';
import type { Scenario } from '../../../pointing/scenario';
import type { BenchKit } from '../../../variants/bench/bench-kit';
import { runKitFor } from '../run-kit-for';

/**
 * The telescope of a bench task. One of the teacher's own numbers says nothing of weights and legs: it
 * stands on the bench as the built-in kit of its kind, with its own optics.
 */
export function benchKitFor(kitId: string | null, scenario: Scenario): BenchKit {
  const { name, tubeType, orientation } = runKitFor(kitId, scenario);
  const kits = loadKits();
  const kit = kits.find(({ id }) => id === kitId) ?? kits.find((one) => one.tubeType === tubeType);
  if (kit === undefined) throw new Error(`no kit is a ${tubeType}`);
  const { focalLengthMm, apertureMm } = scenario.telescope;
  const { eyepieces, observingEyepieceId, centringEyepieceId, bench } = kit;
  return {
    ...bench,
    id: kitId,
    name,
    tubeType,
    orientation,
    focalLengthMm,
    apertureMm,
    eyepieces,
    observingEyepieceId,
    centringEyepieceId,
  };
}
