/** How much help was needed, as the teacher marks it at the telescope (design: assessment). */
export const helpLevels = [1, 2, 3, 4] as const;
export type HelpLevel = (typeof helpLevels)[number];

export const helpWords: Readonly<Record<HelpLevel, string>> = {
  1: 'the teacher showed it',
  2: 'with active help',
  3: 'with a prompt now and then',
  4: 'alone, the teacher only watched for safety',
};

/** One look of the teacher at one skill. */
export type Observation = {
  /** "4 March" */
  date: string;
  level: HelpLevel;
  /** A gate that was failed that evening, in words; null: none. */
  gate: string | null;
};

/** Which level signs off is the teacher's to set. */
export const neededLevels = [3, 4] as const;
export type NeededLevel = (typeof neededLevels)[number];

/** "level 3 or above"; there is none above 4. */
export const enough = (needed: NeededLevel): string =>
  needed === 4 ? 'level 4' : `level ${String(needed)} or above`;

/** How many dated observations it takes at least. */
export const observationsNeeded = 2;

export const counts = ({ level, gate }: Observation, needed: NeededLevel): boolean =>
  level >= needed && gate === null;

/**
 * The dates that count towards signing off: somebody saw the needed level, and nobody saw a gate fail.
 * Two notes of one date, by one assessor or by two, are one evening (our judgement: the better level of
 * the evening stands, since that is where it ended; a failed gate is never outweighed).
 */
export function countedDates(observations: readonly Observation[], needed: NeededLevel): string[] {
  const failed = new Set(observations.filter(({ gate }) => gate !== null).map(({ date }) => date));
  const reached = observations.filter((one) => counts(one, needed)).map(({ date }) => date);
  return [...new Set(reached)].filter((date) => !failed.has(date));
}

export type Standing =
  | { signedOff: true }
  /** What it is not yet for, the weightiest first. */
  | { signedOff: false; because: 'gate' | 'one-date' | 'level' };

/**
 * Where a student stands with one skill: two observations of different dates at the needed level or
 * above. An evening with a failed gate does not count, whatever its level, and the gate is named first.
 */
export function standingOf(observations: readonly Observation[], needed: NeededLevel): Standing {
  if (countedDates(observations, needed).length >= observationsNeeded) return { signedOff: true };
  if (observations.some(({ gate }) => gate !== null)) return { signedOff: false, because: 'gate' };
  const enoughLooks = new Set(observations.map(({ date }) => date)).size >= observationsNeeded;
  return { signedOff: false, because: enoughLooks ? 'level' : 'one-date' };
}
