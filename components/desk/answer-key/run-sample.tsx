import { outcomeInWords } from '@/components/lab/fault/evidence/outcome-words';
import type { LabSamples } from '@/lib/data/lab-tasks/lab-tasks';

type Sample = Extract<LabSamples, { lab: 'alignment-run' }>['variants'][number]['sample'];

/** What an operator who makes no mistake gets, with the errors that this sample's telescope hides. */
export function RunSample({ sample }: { sample: Sample }) {
  if (sample === null) return <p>The sample has no usable pair: nobody could do this run well.</p>;
  const { names, hitRate, outcome, minutes, setup } = sample;
  return (
    <>
      <p>
        A perfect operator, on {names.join(' and ')}:{' '}
        {outcome === null ? '' : `${outcomeInWords(outcome)} `}
        {hitRate === null ? '' : `${(hitRate * 100).toFixed(0)} of 100 targets in the eyepiece, `}
        after {minutes.toFixed(0)} minutes of sky time.
      </p>
      <p>
        Hidden in it: base {setup.base.tiltDeg.toFixed(1)}° off level, altitude zero{' '}
        {arcmin(setup.errors.altitudeZeroDeg)}, cone {arcmin(setup.errors.coneDeg)}, axis skew{' '}
        {arcmin(setup.errors.axisSkewDeg)}, play {setup.backlashArcmin.azimuth.toFixed(1)}′ and{' '}
        {setup.backlashArcmin.altitude.toFixed(1)}′, the dot{' '}
        {Math.hypot(setup.dot.rightArcmin, setup.dot.upArcmin).toFixed(0)}′ off. A needle points{' '}
        {Math.abs(setup.declinationDeg).toFixed(1)}° {setup.declinationDeg < 0 ? 'west' : 'east'} of
        north.
      </p>
    </>
  );
}

const arcmin = (angleDeg: number): string => `${(angleDeg * 60).toFixed(0).replace('-', '−')}′`;
