import type { PackUpStep } from '@/lib/rehearsal/pack-up';
import { consequenceOf, stepName } from '../put-it-together/step-words';

const poweredNames = {
  'tube-level': 'Bring the tube level with the motors',
  'switch-off': 'Switch off',
  'unplug-supply': 'Unplug the supply',
  'unplug-hand-control': 'Unplug the hand control',
  'look-over-the-ground': 'Look over the ground with a lamp',
} as const;

const isPowered = (step: PackUpStep): step is keyof typeof poweredNames => step in poweredNames;

export const packUpName = (step: PackUpStep): string =>
  isPowered(step) ? poweredNames[step] : stepName[step];

/** What happens when the second is done before the first. */
export function packUpConsequence(before: PackUpStep, after: PackUpStep): string {
  if (before === 'mount-off' && after === 'fold-legs')
    return 'Legs that fold under the mount let it fall over, on feet and fingers.';
  if (before === 'switch-off' && after === 'unplug-hand-control')
    return 'A hand control is never pulled out or put in with the power on: a contact that touches wrongly burns the electronics.';
  if (before === 'switch-off') return 'Pulled out under load, a plug sparks.';
  if (before === 'tube-level' && after === 'switch-off')
    return 'Without power the motors bring no tube level, and forcing it by hand strains the gears.';
  if (before === 'tube-level')
    return 'A tube that points up slides backwards out of an open clamp.';
  if (before === 'unplug-supply' || before === 'unplug-hand-control')
    return 'A cable that still hangs on pulls at what is lifted, and feet catch in it.';
  if (after === 'look-over-the-ground')
    return 'What is looked for before all is lifted lies under it still.';
  return isPowered(before) || isPowered(after)
    ? 'The one comes before the other.'
    : consequenceOf(before, after);
}
