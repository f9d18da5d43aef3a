import {
  asWeightKg,
  hubHeightMm,
  stabilityOf,
  tippingPushN,
  type LoadedStand,
} from '@/lib/assembly/stability';
import type { ItemDrawing } from '@/lib/drawings/drawing';
import { outcomeInWords, planDrawing } from '@/lib/drawings/plan-drawing';
import { plainStand } from '@/lib/drawings/some-stand';

/** What one can change: legs, arm and ground. The ground falls towards the line B–C. */
export type TriangleSetting = Pick<
  LoadedStand,
  'legLengthMm' | 'splayDeg' | 'armBearingDeg' | 'groundSlopeDeg'
>;
export const wideAndLowSetting: TriangleSetting = {
  legLengthMm: 800,
  splayDeg: 26,
  armBearingDeg: 0,
  groundSlopeDeg: 0,
};
export const narrowAndTallSetting: TriangleSetting = {
  legLengthMm: 1200,
  splayDeg: 12,
  armBearingDeg: 180,
  groundSlopeDeg: 8,
};
export const startingTriangle: TriangleSetting = {
  legLengthMm: 1000,
  splayDeg: 20,
  armBearingDeg: 90,
  groundSlopeDeg: 0,
};

export type TriangleFacts = {
  drawing: ItemDrawing;
  stands: boolean;
  /** Level, at the mount's arm, as much as so many kilograms weigh. */
  pushKg: number;
  words: string;
};

export function triangleFacts(setting: TriangleSetting): TriangleFacts {
  const stand: LoadedStand = { ...plainStand, fallsTowardsDeg: 180, ...setting };
  const stands = stabilityOf(stand).marginMm > 0;
  const pushKg = asWeightKg(tippingPushN(stand, hubHeightMm(stand) + 200));
  const outcome = outcomeInWords(stand);
  const words = stands
    ? `${outcome} A level push at the arm of ${pushKg.toFixed(1)} kg would tip it.`
    : `${outcome} Nobody need push.`;
  return { drawing: planDrawing(stand, { words }), stands, pushKg, words };
}
