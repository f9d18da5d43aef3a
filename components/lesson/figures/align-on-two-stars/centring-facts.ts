import { lagAfter } from '@/lib/alignment/play';
import { asSeen, type FieldOffset, type ImageOrientation } from '@/lib/optics/image-orientation';

/** Play of the figure's gears on both axes, arcminutes. Our own, no source. */
export const playArcmin = 8;

/** One axis: what its motor has turned since the star would have been centred, and how the tube hangs. */
export type AxisState = { motorArcmin: number; lagArcmin: number };
export type CentringState = { across: AxisState; along: AxisState };

/** After a slew: the star to the right and above, the play taken up. */
export const centringStart: CentringState = {
  across: { motorArcmin: -44, lagArcmin: 0 },
  along: { motorArcmin: -20, lagArcmin: 0 },
};

export type Way = 'right' | 'left' | 'up' | 'down';

const moved = ({ motorArcmin, lagArcmin }: AxisState, by: number): AxisState => ({
  motorArcmin: motorArcmin + by,
  lagArcmin: lagAfter(lagArcmin, by, playArcmin, 1),
});

/** One press of a rocker, by so many arcminutes of the motor. */
export function pressed(state: CentringState, way: Way, byArcmin: number): CentringState {
  switch (way) {
    case 'right':
      return { ...state, across: moved(state.across, byArcmin) };
    case 'left':
      return { ...state, across: moved(state.across, -byArcmin) };
    case 'up':
      return { ...state, along: moved(state.along, byArcmin) };
    case 'down':
      return { ...state, along: moved(state.along, -byArcmin) };
  }
}

const tubeArcmin = ({ motorArcmin, lagArcmin }: AxisState): number => motorArcmin + lagArcmin;

/** Where the star is seen beside the middle of the eyepiece. */
export const starSeen = (
  { across, along }: CentringState,
  orientation: ImageOrientation,
): FieldOffset =>
  asSeen({ rightArcmin: 0 - tubeArcmin(across), upArcmin: 0 - tubeArcmin(along) }, orientation);

export type CentringFacts = {
  seen: FieldOffset;
  offArcmin: number;
  inField: boolean;
  lagAcrossArcmin: number;
  lagAlongArcmin: number;
  /** How far the readings are from those of the star, if it were confirmed now. */
  readingOffArcmin: number;
};

export function centringFacts(
  state: CentringState,
  { orientation, fieldRadiusArcmin }: { orientation: ImageOrientation; fieldRadiusArcmin: number },
): CentringFacts {
  const seen = starSeen(state, orientation);
  const offArcmin = Math.hypot(seen.rightArcmin, seen.upArcmin);
  return {
    seen,
    offArcmin,
    inField: offArcmin <= fieldRadiusArcmin,
    lagAcrossArcmin: state.across.lagArcmin,
    lagAlongArcmin: state.along.lagArcmin,
    readingOffArcmin: Math.hypot(state.across.motorArcmin, state.along.motorArcmin),
  };
}
