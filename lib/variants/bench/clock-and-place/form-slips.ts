import {
  formProblem,
  latitudeDegOf,
  longitudeDegOf,
  type FormEntry,
  type MountForm,
} from '../../../clock/mount-form';

/**
 * The ways in which a row of the form is entered wrongly by people: the faults of the design's list, as
 * changes to the right form. Each would be taken by a mount.
 */
export function slipsOf(entry: FormEntry, right: MountForm): Partial<MountForm>[] {
  return waysOf(entry, right).filter((slip) => formProblem({ ...right, ...slip }) === null);
}

/** Neighbouring zones are mistaken for each other; the world's run from −12 h to +14 h. */
const zoneSlipMinutes = [-180, -120, -60, 60, 120, 180];
const zones = { first: -720, last: 840 };

function waysOf(entry: FormEntry, right: MountForm): Partial<MountForm>[] {
  switch (entry) {
    case 'summer-time':
      return [{ summerTime: !right.summerTime }];
    case 'zone':
      return zoneSlipMinutes
        .map((minutes) => right.zoneMinutes + minutes)
        .filter((minutes) => minutes >= zones.first && minutes <= zones.last)
        .map((zoneMinutes) => ({ zoneMinutes }));
    case 'time':
      return [{ hour: (right.hour + 12) % 24 }];
    case 'date':
      return right.day <= 12 && right.day !== right.month
        ? [{ day: right.month, month: right.day }]
        : [{ month: right.month - 1 }, { month: right.month + 1 }].filter(
            ({ month }) => month >= 1 && month <= 12,
          );
    case 'latitude':
      return [
        ...(Math.abs(latitudeDegOf(right)) < 4
          ? []
          : [{ latitudeSide: right.latitudeSide === 'N' ? ('S' as const) : ('N' as const) }]),
        ...tensOff(right.latitudeDegrees, 89).map((latitudeDegrees) => ({ latitudeDegrees })),
      ];
    case 'longitude':
      return [
        ...(Math.abs(longitudeDegOf(right)) < 4
          ? []
          : [{ longitudeSide: right.longitudeSide === 'E' ? ('W' as const) : ('E' as const) }]),
        ...tensOff(right.longitudeDegrees, 179).map((longitudeDegrees) => ({ longitudeDegrees })),
      ];
  }
}

/** A digit misread: ten degrees more or less. */
const tensOff = (degrees: number, most: number): number[] =>
  [degrees - 10, degrees + 10].filter((wrong) => wrong >= 0 && wrong <= most);
