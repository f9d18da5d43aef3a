import type { AssemblyStep } from '../assembly/steps';

/** The steps of this lesson: the stand, without the tube. */
export const standSteps = [
  'spread-legs',
  'lock-spreader',
  'set-height',
  'lock-legs',
  'tray-in',
  'mount-on',
  'bolt-mount',
] as const satisfies readonly AssemblyStep[];
export const foldSteps = [
  'unbolt-mount',
  'mount-off',
  'tray-out',
  'fold-legs',
] as const satisfies readonly AssemblyStep[];
export type StandStep = (typeof standSteps)[number] | (typeof foldSteps)[number];

export const standStepName: Readonly<Record<StandStep, string>> = {
  'spread-legs': 'Spread the legs as far as they go',
  'lock-spreader': 'Press the spreader down until it locks',
  'set-height': 'Draw the legs out to the height you want',
  'lock-legs': 'Close the three leg locks',
  'tray-in': 'Put the tray in',
  'mount-on': 'Set the mount on, one holding, one guiding',
  'bolt-mount': 'Turn the bolt in from below, firm by hand',
  'unbolt-mount': 'Undo the bolt, while somebody holds the mount',
  'mount-off': 'Lift the mount off',
  'tray-out': 'Take the tray out',
  'fold-legs': 'Fold the legs, hands clear of the joints',
};

/** What comes of doing the second before the first; after a colon. */
const becauses: Readonly<Partial<Record<`${AssemblyStep}<${AssemblyStep}`, string>>> = {
  'spread-legs<lock-spreader': 'while the legs are together there is nothing to lock.',
  'spread-legs<set-height': 'on legs that are together, a raised tripod falls over.',
  'set-height<lock-legs': 'a locked leg cannot be drawn out, and forcing it wears the lock.',
  'spread-legs<tray-in': 'the tray fits between spread legs only.',
  'lock-spreader<mount-on': 'with the spreader unlocked the legs would slide under the load.',
  'lock-legs<mount-on': 'under a load an open leg runs in, and the mount tips to that side.',
  'tray-in<mount-on': 'for the tray somebody would have to reach under a loaded stand.',
  'mount-on<bolt-mount': 'there is nothing to bolt until the mount sits on the head.',
  'unbolt-mount<mount-off': 'the bolt still holds it, so the whole tripod would come along.',
  'mount-off<tray-out': 'the legs would lose their brace while they still carry the mount.',
  'tray-out<fold-legs': 'with the tray between them the legs do not fold; something bends.',
};

export const becauseOf = (before: AssemblyStep, after: AssemblyStep): string =>
  becauses[`${before}<${after}`] ?? 'the one rests on the other.';
