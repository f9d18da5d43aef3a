/**
 * Every address of the product is built here, so that a page can be moved in one place.
 * Only what is public in an address goes into one: ids, never names, codes or secrets
 * (OWASP ASVS 5.0, 14.2.1). The tokens of an invitation, used once, and of a cover
 * link, good for a day, are the exceptions.
 */

/** Query values that are worth carrying; the empty ones are left out. */
export type QueryValues = Readonly<Record<string, string | number | null | undefined>>;

function withQuery(path: string, query?: QueryValues): string {
  if (query === undefined) return path;
  const search = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) {
    if (value === null || value === undefined || value === '') continue;
    search.set(name, String(value));
  }
  const text = search.toString();
  return text === '' ? path : `${path}?${text}`;
}

const segment = (id: string): string => encodeURIComponent(id);

export const routes = {
  home: () => '/',
  about: () => '/about',

  labs: {
    all: () => '/labs',
    /** The visitor's practice of a lab, by its name; the query holds the round: nothing is stored. */
    one: (lab: string, query?: QueryValues) => withQuery(`/labs/${segment(lab)}`, query),
    pickThePair: (query?: QueryValues) => withQuery('/labs/pick-the-pair', query),
  },

  lessons: {
    all: () => '/lessons',
    one: (slug: string) => `/lessons/${segment(slug)}`,
    /**
     * A student's own practice, of one `skill` where the query names it; for everybody else the query
     * holds the round: nothing is stored.
     */
    practise: (slug: string, query?: QueryValues) =>
      withQuery(`/lessons/${segment(slug)}/practise`, query),
    choosingAlignmentStars: () => '/lessons/choosing-alignment-stars',
  },

  /** The words of all lessons. */
  glossary: () => '/glossary',

  signIn: {
    student: () => '/sign-in',
    teacher: () => '/sign-in/teacher',
  },
  firstTeacher: () => '/first-teacher',
  invitation: (token: string) => `/invitation/${segment(token)}`,
  /** A substitute teacher's way in. */
  cover: (token: string) => `/cover/${segment(token)}`,

  student: {
    myWork: () => '/my',
    skills: () => '/my/skills',
    attempt: (attemptId: string) => `/my/attempts/${segment(attemptId)}`,
    attemptResult: (attemptId: string) => `/my/attempts/${segment(attemptId)}/result`,
  },

  teacher: {
    desk: () => '/desk',
    newClass: () => '/desk/classes/new',
    /** The class's gradebook. */
    classGradebook: (classId: string) => `/desk/classes/${segment(classId)}`,
    /** Students by skills. */
    classSkills: (classId: string) => `/desk/classes/${segment(classId)}/skills`,
    /** A plan of an evening outside; the query holds what was asked for. */
    classNight: (classId: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/night`, query),
    /** What each student is at, this minute; the query holds how it is shown. */
    classLive: (classId: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/live`, query),
    /** The stream of events behind it. */
    classLiveStream: (classId: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/live/stream`, query),
    /** What the marks say of the tasks and of the class. */
    classStatistics: (classId: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/statistics`, query),
    /** Skills seen at the real telescope; made for a phone. */
    classSignOff: (classId: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/sign-off`, query),
    /** New words on the screen for one student who cannot get in. */
    classLetIn: (classId: string) => `/desk/classes/${segment(classId)}/let-in`,
    /** Takes what a phone noted down. */
    classSignOffNotes: (classId: string) => `/desk/classes/${segment(classId)}/sign-off/notes`,
    classGroups: (classId: string) => `/desk/classes/${segment(classId)}/groups`,
    /** Everything that is made for paper. */
    classPrint: (classId: string) => `/desk/classes/${segment(classId)}/print`,
    /** A field card for each telescope; the query holds the evening. */
    classFieldCards: (classId: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/print/field-cards`, query),
    classChecklist: (classId: string) => `/desk/classes/${segment(classId)}/print/checklist`,
    classSignOffForm: (classId: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/print/sign-off-form`, query),
    /** Files to take away. */
    classExports: (classId: string) => `/desk/classes/${segment(classId)}/exports`,
    /** Downloads one of them; the query holds what was chosen. */
    classExport: (classId: string, file: string, query?: QueryValues) =>
      withQuery(`/desk/classes/${segment(classId)}/exports/${segment(file)}`, query),
    /** One cell of the gradebook with all that was ever done to it. */
    gradebookCell: (studentId: string, assignmentId: string) =>
      `/desk/students/${segment(studentId)}/assignments/${segment(assignmentId)}`,
    /** One page about one student, for the family; the query says whether marks are on it. */
    studentReport: (studentId: string, query?: { marks: 'no' }) =>
      withQuery(`/desk/students/${segment(studentId)}/report`, query),
    regrade: (assignmentId: string) => `/desk/assignments/${segment(assignmentId)}/regrade`,
    /** An assignment as a student finds it; nothing is kept. */
    assignmentPreview: (assignmentId: string) =>
      `/desk/assignments/${segment(assignmentId)}/preview`,
    /** One part of it to try; the query holds the round. */
    partPreview: (assignmentId: string, partId: string, query?: QueryValues) =>
      withQuery(`/desk/assignments/${segment(assignmentId)}/preview/${segment(partId)}`, query),
    /** The same or another class gets the assignment as a draft. */
    copyAssignment: (assignmentId: string) => `/desk/assignments/${segment(assignmentId)}/copy`,
    classRoster: (classId: string) => `/desk/classes/${segment(classId)}/roster`,
    classCards: (classId: string) => `/desk/classes/${segment(classId)}/cards`,
    classSettings: (classId: string) => `/desk/classes/${segment(classId)}/settings`,
    classAssignments: (classId: string) => `/desk/classes/${segment(classId)}/assignments`,
    /** Downloads a spreadsheet. */
    gradebookFile: (classId: string) => `/desk/classes/${segment(classId)}/gradebook.csv`,
    /** With a lesson, the form opens with that lesson's questions chosen. */
    newAssignment: (classId: string, query?: { lesson: string }) =>
      withQuery(`/desk/classes/${segment(classId)}/assignments/new`, query),
    assignment: (assignmentId: string) => `/desk/assignments/${segment(assignmentId)}`,
    editAssignment: (assignmentId: string) => `/desk/assignments/${segment(assignmentId)}/edit`,
    student: (studentId: string) => `/desk/students/${segment(studentId)}`,
    /** What is behind a student's standing in one skill. */
    studentSkill: (studentId: string, skill: string) =>
      `/desk/students/${segment(studentId)}/skills/${segment(skill)}`,
    /** Downloads all that is kept about a student. */
    studentFile: (studentId: string) => `/desk/students/${segment(studentId)}/data.json`,
    attempt: (attemptId: string) => `/desk/attempts/${segment(attemptId)}`,
    /** The attempt's own task with its answer key. */
    attemptKey: (attemptId: string) => `/desk/attempts/${segment(attemptId)}/key`,
    account: () => '/desk/account',
  },

  /** The sign-off page's shell without a connection; holds nothing of anybody. */
  outside: () => '/outside',
  /** The service worker that keeps it. */
  outsideWorker: () => '/outside-worker.js',

  /** The star catalogue; the version makes it cacheable for ever. */
  skyCatalogue: (version: string) => withQuery('/sky-data/catalogue', { v: version }),
} as const;
