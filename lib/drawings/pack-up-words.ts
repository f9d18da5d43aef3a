import type { PackUpStep } from '../rehearsal/pack-up';

const names: Readonly<Partial<Record<PackUpStep, string>>> = {
  'tube-level': 'Bring the tube level with the motors',
  'switch-off': 'Switch off',
  'unplug-supply': 'Unplug the supply',
  'unplug-hand-control': 'Unplug the hand control',
  'caps-on': 'Put the dust caps on',
  'eyepiece-out': 'Take the eyepiece out',
  'hold-tube': 'Hold the tube with both hands',
  'open-clamp': 'Open the clamp',
  'tube-off': 'Slide the tube out',
  'unbolt-mount': 'Undo the bolt below the mount',
  'mount-off': 'Lift the mount off, two people',
  'tray-out': 'Take the tray out',
  'fold-legs': 'Fold the legs, fingers clear',
  'look-over-the-ground': 'Look over the ground with a lamp',
};

export const packUpName = (step: PackUpStep): string => names[step] ?? step;

const told: Readonly<Record<string, string>> = {
  'tube-level<switch-off': 'without power the motors bring no tube level.',
  'switch-off<unplug-supply': 'pulled out under load, a plug sparks.',
  'switch-off<unplug-hand-control':
    'a hand control that is pulled with the power on may burn its electronics.',
  'unplug-supply<hold-tube': 'a lead that still hangs on pulls at what is lifted.',
  'unplug-hand-control<hold-tube': 'a lead that still hangs on pulls at what is lifted.',
  'tube-level<open-clamp': 'a tube that points up slides backwards out of an open clamp.',
  'fold-legs<look-over-the-ground': 'what is looked for before all is lifted still lies under it.',
  'mount-off<fold-legs': 'legs that fold under the mount let it fall, on feet and fingers.',
  'caps-on<eyepiece-out': 'hands would work beside open glass.',
  'eyepiece-out<hold-tube': 'with both hands at the tube nobody can take the eyepiece out.',
  'hold-tube<open-clamp': 'with nothing to hold it the tube slides out and falls.',
  'open-clamp<tube-off': 'the bar does not come out of a closed clamp.',
  'tube-off<unbolt-mount': 'a mount that is not bolted tips over with the tube on top.',
  'unbolt-mount<mount-off': 'bolted on, it brings the whole tripod along.',
  'mount-off<tray-out': 'the tray braces the legs while they bear the mount.',
  'tray-out<fold-legs': 'legs do not fold with the tray between them.',
};

/** What comes of doing the second before the first; a sentence without its capital. */
export const consequences = (before: PackUpStep, after: PackUpStep): string =>
  told[`${before}<${after}`] ?? 'the one rests on the other.';
