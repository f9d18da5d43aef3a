import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import type { Skill } from '../course/skills';
import { skillsOfLab } from '../mastery/lab-skills';
import { reachesPassMark } from '../mastery/pass-mark';
import type { Lab } from '../variants/labs';
import { classAccessSelect } from './access';
import { wrongAnswerOf, type WrongAnswer } from './class-statistics-choices';
import { commonIdeas, type CommonIdea } from './class-statistics-ideas';
import { atTelescope, labFigures, setFigures, type PartFigures } from './class-statistics-parts';
import { questionFigures, type QuestionStatistics } from './class-statistics-questions';
import {
  firstLabResults,
  latestLevels,
  practisedAnswers,
  questionSets,
  type AnswerRow,
} from './class-statistics-rows';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { getGradebook, type Gradebook } from './gradebook';
import { groupedBy } from './grouped-by';
import { mapInTurns } from './in-turns';

export type PartStatistics = PartFigures & {
  partId: string;
  lab: Lab;
  /** Whose failed gate stands in what counts now. */
  gateStandsFor: string[];
};

export type AssignmentStatistics = {
  id: string;
  title: string;
  passMark: number;
  /** What counts of everybody who has a whole mark and is not excused, 0–100, lowest first. */
  marks: number[];
  /** Of those: at the pass mark that holds for the student's work or above, and no gate failed. */
  reached: number;
  gateFailed: number;
  excused: number;
  /** Neither excused nor with a whole mark. */
  withoutMark: number;
  parts: PartStatistics[];
};

export type ClassStatistics = {
  /** Invented: its figures go nowhere else. */
  isDemo: boolean;
  /** In the class now; who has left is in no figure. */
  students: { id: string; displayName: string }[];
  assignments: AssignmentStatistics[];
  questions: QuestionStatistics[];
  ideas: CommonIdea[];
};

/**
 * What the work of one class says of its tasks and of the class, for its teachers. Marks are those that
 * count; everything below a mark is of first attempts and first answers.
 */
export async function getClassStatistics(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<ClassStatistics | null> {
  const schoolClass = await db().class.findUnique({
    where: { id: classId },
    select: { ...classAccessSelect, isDemo: true, signOffLevel: true },
  });
  if (schoolClass === null || !canSeeClass(viewer, schoolClass)) return null;
  const [gradebook, labRows, practised, sets, levels] = await Promise.all([
    getGradebook(viewer, classId, clock),
    firstLabResults(classId),
    practisedAnswers(classId),
    questionSets(classId),
    latestLevels(classId),
  ]);
  if (gradebook === null) return null;
  const answers: AnswerRow[] = [
    ...practised,
    ...sets.flatMap(({ studentId, at, items }) =>
      items.filter(({ answered }) => answered).map((item) => ({ ...item, studentId, at })),
    ),
  ];
  const wrong = new Map(
    await mapInTurns(
      answers.flatMap((row) => (row.raw === null ? [] : [{ row, raw: row.raw }])),
      ({ row, raw }): [AnswerRow, WrongAnswer] => [row, wrongAnswerOf(row.studentId, raw)],
    ),
  );
  const labRowsOf = groupedBy(labRows, ({ partId }) => partId);
  const setsOf = groupedBy(sets, ({ partId }) => partId ?? '');
  const partFigures = (partId: string, lab: Lab): PartFigures => {
    if (lab === 'lesson-questions') return setFigures(setsOf.get(partId) ?? []);
    const rows = labRowsOf.get(partId) ?? [];
    const skill = skillSeenIn(lab);
    const seen = skill === null ? undefined : levels.get(skill);
    return labFigures(rows, atTelescope(rows, seen ?? new Map(), schoolClass.signOffLevel));
  };
  return {
    isDemo: schoolClass.isDemo,
    students: gradebook.students
      .filter(({ left }) => !left)
      .map(({ id, displayName }) => ({ id, displayName })),
    assignments: await assignmentsOf(gradebook, partFigures),
    questions: await questionFigures(answers, wrong),
    ideas: commonIdeas([...wrong.values()], labRows),
  };
}

/** The one skill whose sign-off a lab's mark can stand beside; null where there are several or none. */
function skillSeenIn(lab: Lab): Skill | null {
  if (lab === 'dress-rehearsal' || lab === 'lesson-questions') return null;
  const [skill, another] = skillsOfLab[lab];
  return skill === undefined || another !== undefined ? null : skill;
}

function assignmentsOf(
  gradebook: Gradebook,
  partFigures: (partId: string, lab: Lab) => PartFigures,
): Promise<AssignmentStatistics[]> {
  const inClass = new Set(gradebook.students.filter(({ left }) => !left).map(({ id }) => id));
  const cellsOf = groupedBy(
    gradebook.cells.filter(({ studentId }) => inClass.has(studentId)),
    ({ assignmentId }) => assignmentId,
  );
  return mapInTurns(gradebook.assignments, ({ id, title, passMark, parts }) => {
    const cells = cellsOf.get(id) ?? [];
    const marked = cells.flatMap(({ mark, complete, excused, gateFailed, passMark: held }) =>
      mark === null || !complete || excused
        ? []
        : [{ mark, gateFailed, reached: reachesPassMark({ mark, gateFailed, passMark: held }) }],
    );
    const excused = cells.filter((cell) => cell.excused).length;
    return {
      id,
      title,
      passMark,
      excused,
      marks: marked.map(({ mark }) => mark).toSorted((one, other) => one - other),
      reached: marked.filter(({ reached }) => reached).length,
      gateFailed: marked.filter(({ gateFailed }) => gateFailed).length,
      withoutMark: cells.length - excused - marked.length,
      parts: parts.map(({ partId, lab }) => ({
        partId,
        lab,
        ...partFigures(partId, lab),
        gateStandsFor: cells.flatMap(({ studentId, parts: own }) =>
          own.some((part) => part.partId === partId && part.gateFailed) ? [studentId] : [],
        ),
      })),
    };
  });
}
