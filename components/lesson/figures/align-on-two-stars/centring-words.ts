import type { CentringFacts } from './centring-facts';

const minutes = (value: number): string => `${String(Math.round(value))}′`;

/** What is seen, and what the gears hide. */
export function centringWords(facts: CentringFacts): string {
  const { seen, offArcmin, inField } = facts;
  const parts = [
    Math.round(seen.rightArcmin) === 0
      ? ''
      : `${minutes(Math.abs(seen.rightArcmin))} ${seen.rightArcmin > 0 ? 'right' : 'left'}`,
    Math.round(seen.upArcmin) === 0
      ? ''
      : `${minutes(Math.abs(seen.upArcmin))} ${seen.upArcmin > 0 ? 'up' : 'down'}`,
  ].filter((part) => part !== '');
  const where =
    parts.length === 0
      ? 'The star sits in the middle.'
      : `In the picture the star is ${parts.join(' and ')}${inField ? '' : ', outside the field'}.`;
  return `${where} ${playWords(facts)}${offArcmin > 0.5 || facts.readingOffArcmin > 0.5 ? '' : ' Press the button now.'}`;
}

function playWords({ lagAcrossArcmin, lagAlongArcmin }: CentringFacts): string {
  if (lagAcrossArcmin === 0 && lagAlongArcmin === 0) return 'No play is in the readings.';
  const some = [
    lagAcrossArcmin === 0 ? '' : `${minutes(lagAcrossArcmin)} along the horizon`,
    lagAlongArcmin === 0 ? '' : `${minutes(lagAlongArcmin)} in height`,
  ].filter((part) => part !== '');
  return `Play in the readings: ${some.join(', ')}.`;
}

/** What the mount would take away from “This is the star”. */
export function confirmedWords(facts: CentringFacts, goodArcmin: number): string {
  const off = facts.readingOffArcmin;
  const lag = Math.hypot(facts.lagAcrossArcmin, facts.lagAlongArcmin);
  if (off <= goodArcmin && lag === 0)
    return `Confirmed. The readings are within ${minutes(Math.max(off, 1))} of the star’s: well done.`;
  if (facts.offArcmin <= goodArcmin && lag > 0)
    return `Confirmed too soon. The star looks centred, but the readings are ${minutes(off)} off: the play is still in them. Go past the star, then end right and up.`;
  return `Confirmed too soon. The readings are ${minutes(off)} off. A tenth of the way to the edge, ${minutes(goodArcmin)}, would be good.`;
}
