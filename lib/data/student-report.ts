import 'server-only';
import { canReadNotes, type Viewer } from '../auth/policy';
import { skills, type Skill } from '../course/skills';
import type { GradebookState } from '../grading/gradebook-state';
import { masteryOf, type Mastery } from '../mastery/mastery';
import { nextSteps, type NextStep } from '../mastery/next-steps';
import { standingOf as signOffStandingOf, type HelpLevel } from '../mastery/sign-off';
import type { Lab } from '../variants/labs';
import { classAccessSelect } from './access';
import { standingOf, standingSelect } from './attempt-standing';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { getStudentGradebook } from './gradebook';
import {
  asNeededLevel,
  asObservation,
  observationSelect,
  readObservation,
} from './observation-rows';
import { shownEvidence } from './skill-evidence';

export type ReportedSkill = Mastery & {
  skill: Skill;
  /** Seen at the real telescope: on how many evenings, with how little help at best, and whether enough. */
  seen: { evenings: number; best: HelpLevel | null; signedOff: boolean };
};
export type ReportedWork = {
  id: string;
  title: string;
  /** UTC, ISO 8601. */
  dueAt: string | null;
  state: GradebookState;
  /** Of work in several parts: how many, and which of them have nothing handed in. */
  parts: number;
  notHandedIn: Lab[];
  /** 0–100, after all rules; null while there is none, or while its result is withheld. */
  mark: number | null;
  comments: { text: string; by: string | null }[];
};
export type StudentReport = {
  student: { id: string; displayName: string; classId: string; className: string };
  /** IANA, of the class. */
  timeZone: string;
  /** When it was made; UTC, ISO 8601. */
  madeAt: string;
  /** In the order of an evening. */
  skills: ReportedSkill[];
  /** The newest last. */
  work: ReportedWork[];
  nextSteps: NextStep[];
};

/**
 * What a family may read of one student: only what the student may know too, nothing of others and no
 * accommodation. For the class's teachers.
 */
export async function getStudentReport(
  viewer: Viewer,
  studentId: string,
  clock: Clock = systemClock,
): Promise<StudentReport | null> {
  const student = await db().student.findUnique({
    where: { id: studentId },
    select: {
      id: true,
      displayName: true,
      class: { select: { ...classAccessSelect, name: true, timeZone: true, signOffLevel: true } },
      observations: { where: { retractedAt: null }, select: observationSelect },
      attempts: {
        where: { mode: 'check', status: 'submitted' },
        orderBy: { submittedAt: 'desc' },
        select: {
          assignmentId: true,
          returnedAt: true,
          ...standingSelect,
          comments: {
            orderBy: { criterion: 'asc' },
            select: { criterion: true, text: true, teacher: { select: { displayName: true } } },
          },
        },
      },
    },
  });
  if (student === null || !canReadNotes(viewer, student.class)) return null;
  const now = clock.now();
  const [gradebook, evidence] = await Promise.all([
    getStudentGradebook(viewer, { studentId }, clock),
    shownEvidence(studentId, now),
  ]);
  if (gradebook === null) return null;
  const { id: classId, name: className, timeZone, signOffLevel } = student.class;
  const observations = student.observations.map((row) => readObservation(row, timeZone));

  const reported = skills.map((skill): ReportedSkill => {
    const notes = observations.filter((one) => one.skill === skill);
    const levels = notes.map(({ level }) => level).sort((a, b) => b - a);
    const standing = signOffStandingOf(notes.map(asObservation), asNeededLevel(signOffLevel));
    return {
      skill,
      ...masteryOf(
        evidence.filter((piece) => piece.skill === skill),
        now,
      ),
      seen: {
        evenings: new Set(notes.map(({ evening }) => evening)).size,
        best: levels[0] ?? null,
        signedOff: standing.signedOff,
      },
    };
  });
  const work = gradebook.assignments.map(({ id, title, dueAt }): ReportedWork => {
    const cell = gradebook.cells.find((one) => one.assignmentId === id);
    const attempts = student.attempts
      .filter(({ assignmentId }) => assignmentId === id)
      .map((attempt) => ({ ...attempt, shown: standingOf(attempt, now).feedbackVisible }));
    const withheld = attempts.some(({ shown }) => !shown);
    const comments = attempts.flatMap(({ comments: written, shown, returnedAt }) =>
      written.filter(({ criterion }) => shown || (returnedAt !== null && criterion === '')),
    );
    return {
      id,
      title,
      dueAt: cell?.extendedDueAt ?? dueAt,
      state: shownState(cell?.state ?? 'not-started', withheld),
      parts: cell?.parts.length ?? 0,
      notHandedIn: (cell?.parts ?? [])
        .filter((part) => part.state === 'not-started' || part.state === 'open')
        .map(({ lab }) => lab),
      mark: withheld ? null : (cell?.mark ?? null),
      comments: comments.map(({ text, teacher }) => ({ text, by: teacher?.displayName ?? null })),
    };
  });
  return {
    student: { id: student.id, displayName: student.displayName, classId, className },
    timeZone,
    madeAt: now.toISOString(),
    skills: reported,
    work,
    nextSteps: nextSteps(
      reported.map(({ seen, ...mastery }) => ({ ...mastery, signedOff: seen.signedOff })),
      work,
    ),
  };
}

/** A result that the student is not shown yet is only handed in here too. */
const shownState = (state: GradebookState, withheld: boolean): GradebookState =>
  withheld && (state === 'complete' || state === 'not-yet' || state === 'needs-sign-off')
    ? 'submitted'
    : state;
