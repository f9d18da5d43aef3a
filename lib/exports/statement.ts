/*
 * A statement of the Experience API: 1.0.3, part two, section 2.4 (IEEE 9274.1.1 keeps these properties).
 * `version`, `stored` and `authority` are left to whoever takes the statements in (2.4).
 */

/** Of the registry of ADL (adlnet.gov/expapi): a verb means what its address says. */
export const verbs = {
  attempted: 'http://adlnet.gov/expapi/verbs/attempted',
  completed: 'http://adlnet.gov/expapi/verbs/completed',
  passed: 'http://adlnet.gov/expapi/verbs/passed',
  failed: 'http://adlnet.gov/expapi/verbs/failed',
  answered: 'http://adlnet.gov/expapi/verbs/answered',
} as const;
export type Verb = keyof typeof verbs;
const activityTypes = {
  simulation: 'http://adlnet.gov/expapi/activities/simulation',
  assessment: 'http://adlnet.gov/expapi/activities/assessment',
  lesson: 'http://adlnet.gov/expapi/activities/lesson',
  question: 'http://adlnet.gov/expapi/activities/question',
} as const;

export const language = 'en-GB';
export type Activity = {
  objectType: 'Activity';
  id: string;
  definition: { name: Readonly<Record<string, string>>; type: string };
};
export type Statement = {
  id: string;
  actor: {
    objectType: 'Agent';
    name?: string;
    account: { homePage: string; name: string };
  };
  verb: { id: string; display: Readonly<Record<string, string>> };
  object: Activity;
  result?: {
    score?: { scaled: number; raw: number; min: 0; max: 100 };
    success?: boolean;
    completion: boolean;
    /** None of a question: it may have lain open overnight. */
    duration?: string;
  };
  context: {
    registration: string;
    platform: 'Duskbench';
    language: typeof language;
    contextActivities?: { parent: Activity[] };
    extensions?: Readonly<Record<string, unknown>>;
  };
  /** UTC, ISO 8601. */
  timestamp: string;
};

export type StatementSource = {
  /** The system's own address: account and activities are named under it. */
  homePage: string;
  /** A UUID that depends on the name alone, so that a second export is the first one again. */
  uuidOf: (name: string) => string;
};

export const activity = (id: string, name: string, type: keyof typeof activityTypes): Activity => ({
  objectType: 'Activity',
  id,
  definition: { name: { [language]: name }, type: activityTypes[type] },
});

/** A student is an account with an opaque name (2.4.2.4); `name`: to show, empty where it is left out. */
export const actor = (
  { studentId, name }: { studentId: string; name: string },
  homePage: string,
): Statement['actor'] => ({
  objectType: 'Agent',
  ...(name === '' ? {} : { name }),
  account: { homePage, name: studentId },
});
