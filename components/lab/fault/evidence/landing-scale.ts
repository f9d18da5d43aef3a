import type { Landing } from '@/lib/faults/evidence';

export const pictureWidth = 320;
export const pictureHeight = 220;
export const pictureMiddle = { x: pictureWidth / 2, y: pictureHeight / 2 } as const;

export type PictureScale = {
  pxPerDeg: number;
  /** What the graduations are apart, and the scale bar is long. */
  stepDeg: number;
  stepText: string;
};

/** From the field of an eyepiece to half the sky. `reachDeg` is what lies above and below the star. */
const scales: readonly { reachDeg: number; stepDeg: number; stepText: string }[] = [
  { reachDeg: 0.25, stepDeg: 1 / 12, stepText: '5′' },
  { reachDeg: 0.5, stepDeg: 1 / 6, stepText: '10′' },
  { reachDeg: 1, stepDeg: 1 / 3, stepText: '20′' },
  { reachDeg: 2.5, stepDeg: 1, stepText: '1°' },
  { reachDeg: 6, stepDeg: 2, stepText: '2°' },
  { reachDeg: 12, stepDeg: 5, stepText: '5°' },
  { reachDeg: 25, stepDeg: 10, stepText: '10°, a fist' },
  { reachDeg: 50, stepDeg: 20, stepText: '20°, two fists' },
  { reachDeg: 100, stepDeg: 30, stepText: '30°, three fists' },
];
const widest = { reachDeg: 200, stepDeg: 60, stepText: '60°, six fists' };

const halfHeight = pictureHeight / 2 - 12;
const halfWidth = pictureWidth / 2 - 16;

/**
 * The closest of the fixed scales on which every miss and the eyepiece's field fit, with the star in
 * the middle. Fixed ones, so that two misses of like size are drawn alike.
 */
export function scaleFor(
  misses: readonly Pick<Landing, 'rightDeg' | 'upDeg'>[],
  fieldRadiusArcmin: number,
): PictureScale {
  const needs = Math.max(
    ...misses.map(({ upDeg }) => Math.abs(upDeg)),
    ...misses.map(({ rightDeg }) => Math.abs(rightDeg) * (halfHeight / halfWidth)),
    fieldRadiusArcmin / 60,
  );
  const scale = scales.find(({ reachDeg }) => needs <= reachDeg * 0.92) ?? widest;
  return {
    pxPerDeg: halfHeight / scale.reachDeg,
    stepDeg: scale.stepDeg,
    stepText: scale.stepText,
  };
}
