import { patternSlew } from './pattern-slew';
import type { SkyPosition } from '../sky-disc';

/** The slew that went wrong: 3° too high, toward the south-east. */
export const wrongSlew: SkyPosition = { azimuthDeg: 135, altitudeDeg: 40 };
const tooHighDeg = 3;
export const startingTest: SkyPosition = { azimuthDeg: 160, altitudeDeg: 45 };

export const suspects = [
  { id: 'zero', name: 'The tube pointed 3° up at the start', letter: 'T' },
  { id: 'lean', name: 'The base rises 3° toward the south-east', letter: 'B' },
] as const;
export type SuspectId = (typeof suspects)[number]['id'];

export type TestLanding = { rightDeg: number; upDeg: number; lands: SkyPosition };

/** Where a test slew would end, by each of the two suspects. */
export function testLandings(test: SkyPosition): Readonly<Record<SuspectId, TestLanding>> & {
  apartDeg: number;
} {
  const zero = patternSlew({ startAltitudeDeg: tooHighDeg }, test);
  const lean = patternSlew({ tiltDeg: tooHighDeg, risesTowardsDeg: wrongSlew.azimuthDeg }, test);
  return {
    zero,
    lean,
    apartDeg: Math.hypot(zero.rightDeg - lean.rightDeg, zero.upDeg - lean.upDeg),
  };
}
