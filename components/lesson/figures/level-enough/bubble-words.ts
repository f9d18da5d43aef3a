import { vialMm, type BubblePlace } from '@/lib/levelling/vial';
import { radiansToDegrees } from '@/lib/units/angle';
import type { HeadFacts } from './head-facts';

export const legLetters = ['A', 'B', 'C'] as const;

/** As on a clock's face with 12 at the top; to half an hour. */
function clock(clockwiseDeg: number): string {
  const halves = ((Math.round(clockwiseDeg / 15) % 24) + 24) % 24;
  const hour = Math.floor(halves / 2) === 0 ? 12 : Math.floor(halves / 2);
  return halves % 2 === 0 ? `${String(hour)} o’clock` : `half past ${String(hour)}`;
}

const halfMm = (mm: number): string => String(Math.round(2 * mm) / 2);

/** Where a bubble stands, as an eye tells it. */
export function bubbleWords({ eastMm, northMm }: BubblePlace): string {
  const mm = Math.hypot(eastMm, northMm);
  if (Math.round(2 * mm) === 0) return 'in the middle of the ring';
  return `${halfMm(mm)} mm from the middle, towards ${clock(radiansToDegrees(Math.atan2(eastMm, northMm)))}`;
}

const wholeInRing = ({ eastMm, northMm }: BubblePlace): boolean =>
  Math.hypot(eastMm, northMm) <= vialMm.ringRadius - vialMm.bubbleRadius;

/** What the figure's status line says of the head. */
export function headWords(facts: HeadFacts): string {
  const where = `The bubble stands ${bubbleWords(facts.bubble)}`;
  if (facts.level) return `Level, as far as a vial can show. ${where}.`;
  const ring = wholeInRing(facts.bubble) ? ' It is whole inside its ring: level enough.' : '';
  return `${where}. The head is ${facts.tiltDeg.toFixed(1)}° off level.${ring}`;
}

/** The hint, when it is asked for. */
export function bestLegWords({ best, level }: HeadFacts): string {
  if (level) return 'No leg needs to move.';
  const way = best.byMm > 0 ? 'out' : 'in';
  return `Leg ${legLetters[best.leg]} does most: ${way} by about ${String(Math.abs(best.byMm))} mm, and ${best.leavesDeg.toFixed(1)}° is left.`;
}
