import { gateLetter, gatesOfSkill, type GateId } from './sign-off-gates';
import { mostPrompts } from './sign-off-note';
import { helpLevels, type HelpLevel } from './sign-off';
import type { Skill } from '../course/skills';

export type TypedLevel =
  | { kind: 'nothing' }
  | { kind: 'level'; level: HelpLevel; gates: GateId[]; prompts: number }
  | { kind: 'unclear' };

/**
 * What was typed in from a paper form: "3", "3b" when the skill's second gate failed, and a stroke for each
 * prompt as on the paper: "3b//".
 */
export function readTypedLevel(text: string, skill: Skill): TypedLevel {
  const typed = text.replaceAll(/\s/g, '').toLowerCase();
  if (typed === '') return { kind: 'nothing' };
  const [, digit, letters = '', strokes = ''] = /^([1-4])([a-z]*)(\/*)$/.exec(typed) ?? [];
  const level = helpLevels.find((one) => String(one) === digit);
  const gates = gatesOfSkill[skill].filter((_, index) => letters.includes(gateLetter(index)));
  if (level === undefined || gates.length !== letters.length) return { kind: 'unclear' };
  if (strokes.length > mostPrompts) return { kind: 'unclear' };
  return { kind: 'level', level, gates, prompts: strokes.length };
}
