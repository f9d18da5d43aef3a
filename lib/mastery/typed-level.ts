import { gateLetter, gatesOfSkill, type GateId } from './sign-off-gates';
import { helpLevels, type HelpLevel } from './sign-off';
import type { Skill } from '../course/skills';

export type TypedLevel =
  { kind: 'nothing' } | { kind: 'level'; level: HelpLevel; gates: GateId[] } | { kind: 'unclear' };

/** What was typed in from a paper form: "3", or "3b" when the skill's second gate failed. */
export function readTypedLevel(text: string, skill: Skill): TypedLevel {
  const typed = text.trim().toLowerCase();
  if (typed === '') return { kind: 'nothing' };
  const level = helpLevels.find((one) => typed.startsWith(String(one)));
  const letters = Array.from(typed.slice(1));
  const known = gatesOfSkill[skill];
  const gates = known.filter((_, index) => letters.includes(gateLetter(index)));
  if (level === undefined || gates.length !== letters.length) return { kind: 'unclear' };
  return { kind: 'level', level, gates };
}
