import type { RunStage } from '@/lib/alignment/run-state';

/** Ways to look through the telescope, and at it while its start position is set. */
export type SceneView = 'bench' | 'eye' | 'finder' | 'eyepiece';

const roundAtNight: Readonly<Record<SceneView, SceneView>> = {
  bench: 'eye',
  eye: 'finder',
  finder: 'eyepiece',
  eyepiece: 'eye',
};

/** What the large button leads to. */
export const nextView = (view: SceneView, stage: RunStage): SceneView => {
  if (stage === 'start-position') return view === 'bench' ? 'eye' : 'bench';
  return roundAtNight[view];
};

/** What the large button says. */
export const towardsView: Readonly<Record<SceneView, string>> = {
  bench: 'Back to the tube',
  eye: 'Look up at the sky',
  finder: 'Look through the finder',
  eyepiece: 'Look into the eyepiece',
};

/** The same where there is little room; each is a word of the longer one. */
export const shortly: Readonly<Record<SceneView, string>> = {
  bench: 'Tube',
  eye: 'Sky',
  finder: 'Finder',
  eyepiece: 'Eyepiece',
};

/** Where a stage begins: the tube to be set, or the sky to be looked at. */
export const viewAtStage = (wanted: SceneView, stage: RunStage): SceneView => {
  if (stage === 'start-position') return wanted === 'eye' ? 'eye' : 'bench';
  return wanted === 'bench' ? 'eye' : wanted;
};
