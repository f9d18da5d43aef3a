import 'server-only';
import { skills, type Skill } from '../course/skills';
import { eveningOf } from '../mastery/evening';
import { helpLevels, type HelpLevel, type NeededLevel } from '../mastery/sign-off';
import { failedGatesText, type GateId } from '../mastery/sign-off-gates';
import { conditionsSchema, gatesSchema, type Conditions } from '../mastery/sign-off-note';

export const observationSelect = {
  id: true,
  key: true,
  studentId: true,
  skill: true,
  level: true,
  gates: true,
  prompts: true,
  note: true,
  instrument: true,
  conditions: true,
  observedAt: true,
  receivedAt: true,
  assessorId: true,
} as const;

type Row = {
  id: string;
  key: string;
  studentId: string;
  skill: string;
  level: number;
  gates: unknown;
  prompts: number;
  note: string;
  instrument: string;
  conditions: unknown;
  observedAt: Date;
  receivedAt: Date;
  assessorId: string | null;
};

/** A stored note as the rules read it. */
export type ReadObservation = Omit<Row, 'skill' | 'level' | 'gates' | 'conditions'> & {
  skill: Skill;
  level: HelpLevel;
  gates: GateId[];
  conditions: Conditions;
  /** YYYY-MM-DD on the class's clock. */
  evening: string;
};

/** What was stored was parsed before; what cannot be read any more is a bug. */
export function readObservation(row: Row, timeZone: string): ReadObservation {
  const skill = skills.find((one) => one === row.skill);
  const level = helpLevels.find((one) => one === row.level);
  if (skill === undefined || level === undefined) {
    throw new Error(`observation ${row.id} is of no skill or level that there is`);
  }
  const conditions = conditionsSchema.parse(row.conditions);
  return {
    ...row,
    skill,
    level,
    gates: gatesSchema.parse(row.gates),
    conditions,
    evening: eveningOf(row.observedAt, timeZone, conditions.light),
  };
}

/** As lib/mastery/sign-off counts them. */
export const asObservation = ({
  evening,
  level,
  gates,
}: Pick<ReadObservation, 'evening' | 'level' | 'gates'>) => ({
  date: evening,
  level,
  gate: failedGatesText(gates),
});

export const asNeededLevel = (signOffLevel: number): NeededLevel => (signOffLevel >= 4 ? 4 : 3);
