import { coldShare, meanCurrentA, runTimeHours, usableCapacityAh } from './capacity';
import { cellResistanceOhm, cellVoltage, type CellKind } from './cell';
import { bayCount, underLoadV } from './holder';
import type { TelescopeNeeds } from './supply';

/** An evening on eight fresh cells of one kind. */
export type PowerNight = {
  needs: TelescopeNeeds;
  temperatureC: number;
  kind: CellKind;
  /** How long the class wants to observe. */
  hours: number;
  /** The share of the time in which the motors slew, 0–1. */
  slewingShare: number;
};

export const powerPlans = ['go', 'spare-set', 'other-supply'] as const;
export type PowerPlan = (typeof powerPlans)[number];

export type NightAhead = {
  meanA: number;
  capacityAh: number;
  coldShare: number;
  runTimeHours: number;
  /** Of all eight, at tonight's temperature. */
  openV: number;
  resistanceOhm: number;
  /** At the terminals at the peak of a slew, with the cells fresh. */
  slewingV: number;
  resets: boolean;
  /** What may be planned: where a slew makes the computer restart, spare cells of the kind are no help. */
  plans: readonly PowerPlan[];
};

/** What the cells will do tonight, step by step as it is worked out on paper. */
export function nightAhead({
  needs,
  temperatureC,
  kind,
  hours,
  slewingShare,
}: PowerNight): NightAhead {
  const { trackingA, slewingA } = needs;
  const meanA = meanCurrentA({ trackingA, slewingA, slewingShare });
  const cell = { kind, left: 1 };
  const lasts = runTimeHours({ cells: [cell], meanCurrentA: meanA, temperatureC });
  const openV = bayCount * cellVoltage(cell);
  const resistanceOhm = bayCount * cellResistanceOhm(cell, temperatureC);
  const slewingV = underLoadV({ openV, resistanceOhm }, slewingA);
  const resets = slewingV < needs.resetBelowV;
  return {
    meanA,
    capacityAh: usableCapacityAh(kind, meanA),
    coldShare: coldShare(kind, temperatureC),
    runTimeHours: lasts,
    openV,
    resistanceOhm,
    slewingV,
    resets,
    plans: resets ? ['other-supply'] : lasts < hours ? ['spare-set', 'other-supply'] : ['go'],
  };
}
