import { skills, skillTitles, type Skill } from '../course/skills';
import { neededInARow, type Mastery } from '../mastery/mastery';
import type { Table } from './table';

export type SkillsRow = {
  cardNumber: number;
  /** Empty where names are left out. */
  name: string;
  standings: readonly (Pick<Mastery, 'state' | 'inARow'> & { skill: Skill })[];
  signedOff: ReadonlySet<Skill>;
};

/** Students × skills: what the marks show, and beside it whether it was signed off at the telescope. */
export function skillsTable(rows: readonly SkillsRow[]): Table {
  const header = [
    'Card',
    'Name',
    ...skills.flatMap((skill) => [skillTitles[skill], `${skillTitles[skill]}: signed off`]),
  ];
  return [
    header,
    ...rows.map(({ cardNumber, name, standings, signedOff }) => [
      cardNumber,
      name,
      ...skills.flatMap((skill) => [
        standingCell(standings.find((one) => one.skill === skill)),
        signedOff.has(skill) ? 'yes' : 'no',
      ]),
    ]),
  ];
}

function standingCell(standing: SkillsRow['standings'][number] | undefined): string {
  switch (standing?.state) {
    case undefined:
    case 'not-started':
      return 'not started';
    case 'practising':
      return `practising, ${String(standing.inARow)} of ${String(neededInARow)} in a row`;
    case 'mastered':
      return 'mastered';
    case 'review-due':
      return 'mastered, review due';
    case 'kept':
      return 'mastered, all reviews passed';
  }
}
