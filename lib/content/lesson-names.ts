/**
 * The whole vocabulary of a lesson: nothing else may stand in an MDX file between angle brackets.
 * components/lesson has one component for each, and the compiler checks that none is missing.
 */
export const lessonComponentNames = [
  'Retrieval',
  'AtAGlance',
  'Hazard',
  'WorkedExample',
  'FadedPractice',
  'Check',
  'CheckYourself',
  'FieldTask',
  'Step',
  'Summary',
  'Sources',
  'Figure',
  'Misconception',
  'Computed',
  'SkyTable',
  'Term',
] as const;
export type LessonComponentName = (typeof lessonComponentNames)[number];

/** Parts of a lesson in the order in which they must stand; all but 'WorkedExample' once. */
export const lessonParts = [
  'Retrieval',
  'AtAGlance',
  'WorkedExample',
  'FadedPractice',
  'CheckYourself',
  'FieldTask',
  'Summary',
  'Sources',
] as const satisfies readonly LessonComponentName[];
