import type { AltitudeFacts } from './altitude-facts';

const verdicts: Record<AltitudeFacts['verdict'], string> = {
  'too-low': 'Too low.',
  good: 'A good height.',
  'too-high': 'Too high.',
};

const oneDecimal = (value: number): string => value.toFixed(1);

/** The facts of an altitude in sentences, for the figure's status line and its label. */
export function altitudeWords(altitudeDeg: number, facts: AltitudeFacts): string {
  const lost = 100 - facts.lightPercent;
  const light =
    lost < 1
      ? 'The air takes no more of its light than at the zenith.'
      : `Its light comes through ${oneDecimal(facts.airMass)} times the air at the zenith, and ${String(Math.round(lost))}% of it is lost on the way.`;
  const lift =
    facts.raisedArcmin < 0.5
      ? 'Refraction hardly lifts it.'
      : `Refraction lifts it by ${String(Math.round(facts.raisedArcmin))}′.`;
  return `${verdicts[facts.verdict]} At ${String(Math.round(altitudeDeg))}°: ${light} ${lift} Where it stands highest, its azimuth swings by ${oneDecimal(facts.swingIn10MinDeg)}° in ten minutes. A turn of 10° in azimuth moves the tube by ${oneDecimal(facts.widthOf10Deg)}° on the sky.`;
}
