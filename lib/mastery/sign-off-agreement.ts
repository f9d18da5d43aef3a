import { helpLevels, type HelpLevel } from './sign-off';

/**
 * Words for κ: J. R. Landis, G. G. Koch, Biometrics 33 (1977) 159, who call their own bounds arbitrary.
 * They were made for κ without weights. Read off the two decimals that are shown.
 */
const bounds = [
  [-0.005, 'poor'],
  [0.205, 'slight'],
  [0.405, 'fair'],
  [0.605, 'moderate'],
  [0.805, 'substantial'],
] as const;

export const kappaReading = (kappa: number): string =>
  bounds.find(([below]) => kappa < below)?.[1] ?? 'almost perfect';

/** How often the one gave the row's level where the other gave the column's, both from 1 to 4. */
export const levelTable = (pairs: readonly (readonly [HelpLevel, HelpLevel])[]): number[][] =>
  helpLevels.map((row) =>
    helpLevels.map((column) => pairs.filter(([one, two]) => one === row && two === column).length),
  );
