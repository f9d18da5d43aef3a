import { dotAfterTurns, type Adjusters, type Turns } from '@/lib/finder/adjusters';
import type { FieldOffset } from '@/lib/optics/image-orientation';

/** A finder whose two lines are not quite square to each other, as real ones are. */
export const figureAdjusters: Adjusters = [
  { alongDeg: 8, arcminPerTurn: 12 },
  { alongDeg: 94, arcminPerTurn: 12 },
];
export const dotAtFirst: FieldOffset = { rightArcmin: -21, upArcmin: 15 };
export const quarter = 0.25;
export const mostTurnsShown = 4;

/** A red dot covers about so much, arcminutes; common practice, no source. */
const dotWidthArcmin = 3;

export function screwFacts(turns: Turns) {
  const dot = dotAfterTurns(dotAtFirst, figureAdjusters, turns);
  const offArcmin = Math.hypot(dot.rightArcmin, dot.upArcmin);
  return { dot, offArcmin, isOn: offArcmin <= dotWidthArcmin };
}

export function screwWords(turns: Turns): string {
  const { dot, offArcmin, isOn } = screwFacts(turns);
  if (isOn)
    return `The dot is on the tip, to ${offArcmin.toFixed(0)}′. Lock the screws, and look once more into the eyepiece: is the spire still in the middle?`;
  const across = `${Math.abs(dot.rightArcmin).toFixed(0)}′ to the ${dot.rightArcmin > 0 ? 'right' : 'left'}`;
  const upward = `${Math.abs(dot.upArcmin).toFixed(0)}′ ${dot.upArcmin > 0 ? 'above' : 'below'}`;
  return `The dot is ${across} of the tip and ${upward} it.`;
}

/** "1¼ turns right" as plain decimals. */
export const turnsInWords = (turns: number): string =>
  turns === 0
    ? 'as found'
    : `${String(Math.abs(turns))} ${Math.abs(turns) === 1 ? 'turn' : 'turns'} ${turns > 0 ? 'right' : 'left'}`;
