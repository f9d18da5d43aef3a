import type { AssemblyStep } from '@/lib/assembly/steps';

/** Each step, as one does it. */
export const stepName: Readonly<Record<AssemblyStep, string>> = {
  'spread-legs': 'Spread the three legs',
  'lock-spreader': 'Press the spreader down until it locks',
  'set-height': 'Draw the legs out to height',
  'lock-legs': 'Lock the three legs',
  'tray-in': 'Put the tray in',
  'mount-on': 'Set the mount on the tripod',
  'bolt-mount': 'Bolt the mount from below, firm and no more',
  'open-clamp': 'Open the clamp',
  'tube-on': 'Slide the tube in, held by two hands',
  'clamp-tight': 'Tighten the clamp',
  'stop-screw': 'Put the stop screw in',
  'let-go': 'Let go of the tube',
  'finder-on': 'Put the finder on',
  'prism-in': 'Put the erecting prism in',
  'diagonal-in': 'Put the star diagonal in',
  'low-eyepiece-in': 'Put the 25 mm eyepiece in',
  'caps-off': 'Take the dust caps off',
  'caps-on': 'Put the dust caps on',
  'eyepiece-out': 'Take the eyepiece out',
  'hold-tube': 'Hold the tube with both hands',
  'tube-off': 'Slide the tube out',
  'unbolt-mount': 'Undo the bolt below the mount',
  'mount-off': 'Lift the mount off',
  'tray-out': 'Take the tray out',
  'fold-legs': 'Push the legs in and fold them',
  'bolt-with-pliers': 'Go over the bolt with pliers',
  'high-eyepiece-in': 'Put the 9 mm eyepiece in',
};

/** What would have happened when the second step was done before the first. */
const consequences: Readonly<Partial<Record<`${AssemblyStep}<${AssemblyStep}`, string>>> = {
  'spread-legs<lock-spreader': 'There is nothing to lock while the legs are together.',
  'spread-legs<set-height': 'Raised with its legs together the tripod falls over.',
  'set-height<lock-legs': 'Legs that are locked cannot be drawn out; forced, the locks wear.',
  'spread-legs<tray-in': 'The tray fits only between spread legs.',
  'lock-spreader<mount-on': 'Under a load, legs that are not held apart slide together or out.',
  'lock-legs<mount-on': 'Under a load a leg that is not locked slides in, and the mount tips.',
  'tray-in<mount-on':
    'The tray braces the legs. Without it they can give way under the load, and reaching under a loaded tripod is no place for fingers.',
  'mount-on<bolt-mount': 'There is nothing to bolt yet.',
  'bolt-mount<tube-on': 'With the tube on top the mount turns or tips off its seat.',
  'open-clamp<tube-on': 'The bar does not go into a closed clamp; forced, it scratches and slips.',
  'tube-on<clamp-tight': 'Closed with nothing in it, the clamp has to be opened again.',
  'tube-on<stop-screw': 'The stop screw sits in the bar of the tube.',
  'clamp-tight<let-go': 'Nothing held the tube: it slides out of the clamp and falls.',
  'stop-screw<let-go':
    'With no stop screw the tube slides out when the clamp gives way, as it does in the cold.',
  'let-go<finder-on':
    'One hand holds the tube, so one hand is left: that is how tubes are dropped.',
  'let-go<prism-in': 'One hand holds the tube, so one hand is left: that is how tubes are dropped.',
  'let-go<diagonal-in':
    'One hand holds the tube, so one hand is left: that is how tubes are dropped.',
  'let-go<low-eyepiece-in':
    'One hand holds the tube, so one hand is left: that is how tubes are dropped.',
  'prism-in<low-eyepiece-in': 'The eyepiece goes into the prism.',
  'diagonal-in<low-eyepiece-in': 'The eyepiece goes into the diagonal.',
  'finder-on<caps-off': 'Screws and fingers were near open glass.',
  'low-eyepiece-in<caps-off': 'Dust falls into an open tube.',
  'caps-on<eyepiece-out': 'Hands were busy at a tube with open glass.',
  'eyepiece-out<hold-tube': 'With both hands at the tube nobody can take the eyepiece out.',
  'hold-tube<open-clamp': 'Nothing held the tube: it slides out of the open clamp and falls.',
  'open-clamp<tube-off': 'The bar does not come out of a closed clamp.',
  'tube-off<unbolt-mount': 'A mount that is not bolted tips over with the tube on top.',
  'unbolt-mount<mount-off': 'The bolt still holds it: lifted, the whole tripod comes along.',
  'mount-off<tray-out': 'The tray braces the legs for as long as they bear the mount.',
  'tray-out<fold-legs': 'Legs do not fold with the tray between them; forced, something bends.',
};

export const consequenceOf = (before: AssemblyStep, after: AssemblyStep): string =>
  consequences[`${before}<${after}`] ?? 'The one rests on the other.';

/** Why a step has no place in this task. */
export const strayWords: Readonly<Partial<Record<AssemblyStep, string>>> = {
  'prism-in': 'This tube takes no prism: with one in, it may not even come to focus.',
  'diagonal-in': 'This tube takes no star diagonal: with one in, it may not even come to focus.',
  'bolt-with-pliers':
    'Firm by hand is enough. Pliers crack the seat, and in the cold nobody gets it undone.',
  'high-eyepiece-in':
    'The 9 mm eyepiece shows a small piece of sky: with it a star is hard to find. Low power first.',
  'caps-off':
    'The Sun is up. Tube and finder stay capped: a look at the Sun takes an eye’s sight for good.',
};
