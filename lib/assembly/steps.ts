import type { TubeType } from '../optics/image-orientation';

/** Everything that can be done with the parts of a case, useful or not. */
export const assemblySteps = [
  'spread-legs',
  'lock-spreader',
  'set-height',
  'lock-legs',
  'tray-in',
  'mount-on',
  'bolt-mount',
  'open-clamp',
  'tube-on',
  'clamp-tight',
  'stop-screw',
  'let-go',
  'finder-on',
  'prism-in',
  'diagonal-in',
  'low-eyepiece-in',
  'caps-off',
  // Taking down, where it is not the same by another name.
  'caps-on',
  'eyepiece-out',
  'hold-tube',
  'tube-off',
  'unbolt-mount',
  'mount-off',
  'tray-out',
  'fold-legs',
  // What is never right.
  'bolt-with-pliers',
  'high-eyepiece-in',
] as const;
export type AssemblyStep = (typeof assemblySteps)[number];

/** The part between tube and eyepiece that each kind of tube takes; a reflector takes none. */
export const imagePartOf: Readonly<Record<TubeType, 'prism-in' | 'diagonal-in' | null>> = {
  refractor: 'prism-in',
  reflector: null,
  'maksutov-cassegrain': 'diagonal-in',
};

/** 'by-day': the Sun is up, so the caps stay on. */
export type AssemblyTask = { tubeType: TubeType; kind: 'build' | 'build-by-day' | 'take-down' };

const building: readonly AssemblyStep[] = [
  ...(['spread-legs', 'lock-spreader', 'set-height', 'lock-legs', 'tray-in'] as const),
  ...(['mount-on', 'bolt-mount', 'open-clamp', 'tube-on', 'clamp-tight', 'stop-screw'] as const),
  ...(['let-go', 'finder-on'] as const),
];
const takingDown: readonly AssemblyStep[] = [
  ...(['caps-on', 'eyepiece-out', 'hold-tube', 'open-clamp', 'tube-off'] as const),
  ...(['unbolt-mount', 'mount-off', 'tray-out', 'fold-legs'] as const),
];

/** All that the task takes, in one order that is right. */
export function neededSteps({ tubeType, kind }: AssemblyTask): readonly AssemblyStep[] {
  if (kind === 'take-down') return takingDown;
  const imagePart = imagePartOf[tubeType];
  return [
    ...building,
    ...(imagePart === null ? [] : [imagePart]),
    'low-eyepiece-in',
    ...(kind === 'build-by-day' ? [] : (['caps-off'] as const)),
  ];
}

/** What lies about but has no place in the task. */
export function strayStepsOf({ tubeType, kind }: AssemblyTask): readonly AssemblyStep[] {
  if (kind === 'take-down') return ['bolt-with-pliers'];
  const imagePart = imagePartOf[tubeType];
  return [
    ...(['prism-in', 'diagonal-in'] as const).filter((part) => part !== imagePart),
    'bolt-with-pliers',
    'high-eyepiece-in',
    ...(kind === 'build-by-day' ? (['caps-off'] as const) : []),
  ];
}
