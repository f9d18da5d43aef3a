import { course, type LessonSlug } from '../course/lessons';
import { benchTemplates, type BenchTemplate } from './bench/bench-labs';
import { faultTemplates, type FaultTemplate } from './fault-variant';
import { pairTemplates, type PairTemplate } from './pair-variant';
import { runTemplates, type RunTemplate } from './run-variant';

/** In the order of an evening, as a learner meets them. */
export const labs = [
  'put-it-together',
  'level',
  'balance',
  'power',
  'finder',
  'field',
  'clock-and-place',
  'pick-the-pair',
  'alignment-run',
  'what-went-wrong',
  'dress-rehearsal',
  // No bench and no sky: the questions of the lessons, of which a teacher chooses some.
  'lesson-questions',
] as const;
export type Lab = (typeof labs)[number];

/** A kind of task, of whichever lab; the same word may stand for a kind of two labs. */
export type Template = PairTemplate | RunTemplate | FaultTemplate | BenchTemplate | LessonSlug;

type LabOptions = {
  templates: readonly Template[];
  /** Whether the time that the work takes can count. */
  canBeTimed: boolean;
  /** An attempt is of all the chosen kinds at once, not of one of them. */
  ofAllKinds?: true;
  /** Neither place, time nor telescope plays a part. */
  withoutSky?: true;
  /** The bench is the same at any hour of the evening: no window of time is drawn from. */
  sameAtAnyHour?: true;
};

/** What a teacher can set in a lab beside sky and telescope. */
export const labOptions: Readonly<Record<Lab, LabOptions>> = {
  'put-it-together': {
    templates: benchTemplates['put-it-together'],
    canBeTimed: false,
    sameAtAnyHour: true,
  },
  level: {
    templates: benchTemplates['level'],
    canBeTimed: false,
    sameAtAnyHour: true,
  },
  balance: {
    templates: benchTemplates['balance'],
    canBeTimed: false,
    sameAtAnyHour: true,
  },
  power: {
    templates: benchTemplates['power'],
    canBeTimed: false,
    sameAtAnyHour: true,
  },
  finder: { templates: benchTemplates['finder'], canBeTimed: false },
  field: {
    templates: benchTemplates['field'],
    canBeTimed: false,
    sameAtAnyHour: true,
  },
  'clock-and-place': { templates: benchTemplates['clock-and-place'], canBeTimed: false },
  'pick-the-pair': { templates: pairTemplates, canBeTimed: false },
  'alignment-run': { templates: runTemplates, canBeTimed: true },
  'what-went-wrong': { templates: faultTemplates, canBeTimed: false },
  'dress-rehearsal': { templates: benchTemplates['dress-rehearsal'], canBeTimed: false },
  'lesson-questions': {
    templates: course.map(({ slug }) => slug),
    canBeTimed: false,
    ofAllKinds: true,
    withoutSky: true,
  },
};

/** Whether a task of the lab has a moment of its own, drawn from the window of time around the evening's. */
export const hasMoment = (lab: Lab): boolean =>
  labOptions[lab].withoutSky !== true && labOptions[lab].sameAtAnyHour !== true;
