import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { skills, type Skill } from '../course/skills';
import { bySkill } from '../mastery/by-skill';
import { masteryOf, type Mastery } from '../mastery/mastery';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { signOffStandings, type SignOffStanding } from './sign-off-standings';
import { collectEvidence, shownEvidence, type SkillPiece } from './skill-evidence';

export {
  getSkillRecord,
  type RecordedObservation,
  type SkillRecord,
  type RecordedPiece,
} from './skill-record';

export type SkillStanding = Mastery & { skill: Skill };

/** The twelve skills in the order of an evening, from whatever evidence is given. */
const standings = (piecesOf: (skill: Skill) => readonly SkillPiece[], now: Date): SkillStanding[] =>
  skills.map((skill) => ({ skill, ...masteryOf(piecesOf(skill), now) }));

export type MySkills = {
  /** IANA, of the class: whose calendar the reviews go by. */
  timeZone: string;
  /** In the order of an evening. */
  standings: SkillStanding[];
};

/** Where the viewing student stands, by what the student may know of; null for everybody else. */
export async function getMySkills(
  viewer: Viewer,
  clock: Clock = systemClock,
): Promise<MySkills | null> {
  if (viewer.kind !== 'student') return null;
  const { studentId } = viewer;
  const now = clock.now();
  const [student, pieces] = await Promise.all([
    db().student.findUnique({
      where: { id: studentId },
      select: { class: { select: { timeZone: true } } },
    }),
    shownEvidence(studentId, now),
  ]);
  if (student === null) return null;
  const piecesOf = bySkill(pieces);
  return {
    timeZone: student.class.timeZone,
    standings: standings((skill) => piecesOf(studentId, skill), now),
  };
}

export type SkillMatrix = {
  students: {
    id: string;
    displayName: string;
    cardNumber: number;
    /** In the order of an evening. */
    standings: SkillStanding[];
    /** Has left the class: stands last, with the work that is kept. */
    left: boolean;
    /** At the real telescope; what was not seen there is left out. */
    signOff: Partial<Record<Skill, SignOffStanding>>;
  }[];
};

/** Students × skills, by all evidence, for the class's teachers. */
export async function getSkillMatrix(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<SkillMatrix | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  const now = clock.now();
  const [signOff, students, pieces] = await Promise.all([
    signOffStandings(classId),
    db().student.findMany({
      where: { classId },
      orderBy: { cardNumber: 'asc' },
      select: { id: true, displayName: true, cardNumber: true, leftAt: true },
    }),
    collectEvidence({ student: { classId } }, now),
  ]);
  const piecesOf = bySkill(pieces);
  const stillHere = students.filter(({ leftAt }) => leftAt === null);
  const gone = students.filter(({ leftAt }) => leftAt !== null);
  return {
    students: [...stillHere, ...gone].map(({ leftAt, ...student }) => ({
      ...student,
      left: leftAt !== null,
      standings: standings((skill) => piecesOf(student.id, skill), now),
      signOff: Object.fromEntries(signOff.get(student.id) ?? []),
    })),
  };
}
