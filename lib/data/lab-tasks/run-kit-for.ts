import 'server-only';
import type { RunKit } from '../../alignment/setup';
import { loadKits } from '../../content/sky-catalogue';
import { orientationOf } from '../../optics/image-orientation';
import type { Scenario } from '../../pointing/scenario';
import { runKitOf } from '../../variants/run-kit';

/**
 * The built-in kit of that id. A telescope of the teacher's own numbers says neither its kind nor what
 * it is centred with: it is taken for a reflector, whose view nothing but the mirrors turns, and is
 * centred with the eyepiece that the targets are looked at with.
 */
export function runKitFor(kitId: string | null, { eyepiece }: Scenario): RunKit {
  const kit = loadKits().find(({ id }) => id === kitId);
  if (kit !== undefined) return runKitOf(kit);
  return {
    name: 'Own telescope',
    tubeType: 'reflector',
    orientation: orientationOf('reflector'),
    centringEyepiece: eyepiece,
  };
}
