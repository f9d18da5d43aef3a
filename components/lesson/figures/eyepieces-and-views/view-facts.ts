import { driftTimeSeconds } from '@/lib/optics/drift-time';
import { exitPupilMm, magnification } from '@/lib/optics/magnification';
import { apparentSeparationArcmin, easilyTwoArcmin, showsWhole, splits } from '@/lib/optics/shows';
import { trueFieldArcmin } from '@/lib/optics/true-field';
import type { FigureKit } from '../figure-data';

/** Something to look at. Sizes as in the product's list of targets; the Moon's is its mean. */
export type ViewTarget = { id: string; name: string; declinationDeg: number } & (
  { kind: 'cluster' | 'moon'; sizeArcmin: number } | { kind: 'double'; separationArcsec: number }
);
export const viewTargets: readonly ViewTarget[] = [
  { id: 'moon', name: 'the Moon', kind: 'moon', declinationDeg: 0, sizeArcmin: 31 },
  { id: 'pleiades', name: 'the Pleiades', kind: 'cluster', declinationDeg: 24.1, sizeArcmin: 110 },
  { id: 'm35', name: 'the cluster M 35', kind: 'cluster', declinationDeg: 24.3, sizeArcmin: 28 },
  {
    id: 'mizar',
    name: 'the double star Mizar',
    kind: 'double',
    declinationDeg: 54.9,
    separationArcsec: 14.4,
  },
];

export type ViewKit = Pick<FigureKit, 'name' | 'telescope'>;
export type ViewEyepiece = FigureKit['eyepieces'][number];

export type ViewFacts = {
  times: number;
  fieldArcmin: number;
  exitPupilMm: number;
  /** Edge to edge, motors off. */
  driftSeconds: number;
  verdict: string;
};

/** What one sees of a target with an eyepiece; all from the optics of the product. */
export function viewFacts(kit: ViewKit, eyepiece: ViewEyepiece, target: ViewTarget): ViewFacts {
  const fieldArcmin = trueFieldArcmin(kit.telescope, eyepiece);
  return {
    times: magnification(kit.telescope, eyepiece),
    fieldArcmin,
    exitPupilMm: exitPupilMm(kit.telescope, eyepiece),
    driftSeconds: driftTimeSeconds(fieldArcmin, target.declinationDeg),
    verdict: verdictOn(kit, eyepiece, target, fieldArcmin),
  };
}

function verdictOn(
  { telescope }: ViewKit,
  eyepiece: ViewEyepiece,
  target: ViewTarget,
  fieldArcmin: number,
): string {
  if (target.kind === 'double') {
    const apart = apparentSeparationArcmin(telescope, eyepiece, target.separationArcsec);
    return splits(telescope, eyepiece, target.separationArcsec)
      ? `Two stars: to the eye they stand ${apart.toFixed(0)}′ apart, more than ${String(easilyTwoArcmin)}′.`
      : `They run together: ${apart.toFixed(1)}′ apart to the eye, and it wants ${String(easilyTwoArcmin)}′.`;
  }
  if (showsWhole(telescope, eyepiece, target.sizeArcmin)) return 'Whole in view.';
  return target.sizeArcmin > fieldArcmin
    ? `Too wide: ${String(target.sizeArcmin)}′ in a ring of ${fieldArcmin.toFixed(0)}′.`
    : 'It just fits, with no sky round it.';
}

/** The facts in sentences, for the status line and the drawing's label. */
export function viewInWords(
  kit: ViewKit,
  eyepiece: ViewEyepiece,
  target: ViewTarget,
  facts: ViewFacts,
): string {
  return `${kit.name} with its ${String(eyepiece.focalLengthMm)} mm eyepiece magnifies ${facts.times.toFixed(0)} times and shows ${facts.fieldArcmin.toFixed(0)}′ of sky. Into the eye comes a beam ${facts.exitPupilMm.toFixed(1)} mm wide. With the motors off it takes ${(facts.driftSeconds / 60).toFixed(1)} minutes for ${target.name} to cross the view.`;
}
