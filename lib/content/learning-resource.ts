import type { LessonFrontMatter } from './lesson-front-matter';

/** schema.org/LearningResource (version 29) as JSON-LD. `url` is the lesson's full address. */
export function learningResource(lesson: LessonFrontMatter, url: string): Record<string, unknown> {
  return {
    '@context': 'https://schema.org',
    '@type': 'LearningResource',
    '@id': url,
    url,
    identifier: lesson.id,
    version: lesson.version,
    name: lesson.title,
    description: lesson.summary,
    inLanguage: 'en',
    learningResourceType: 'lesson',
    educationalLevel: lesson.level,
    timeRequired: `PT${lesson.minutes.learn + lesson.minutes.practise}M`,
    isAccessibleForFree: true,
    interactivityType: 'mixed',
    teaches: lesson.objectives.map((objective) => objective.text),
    competencyRequired: lesson.prerequisites,
    educationalAlignment: lesson.standards.map((standard) => ({
      '@type': 'AlignmentObject',
      alignmentType: standard.alignment === 'full' ? 'teaches' : 'educationalSubject',
      targetName: standard.code,
      targetDescription:
        standard.alignment === 'full' ? standard.name : `${standard.name} (in part)`,
    })),
    citation: lesson.sources.map((source) => source.text),
    dateModified: lesson.reviewed,
  };
}

/** JSON that can stand inside a script element: no `<` that could close it. */
export const jsonForScript = (value: unknown): string =>
  JSON.stringify(value).replaceAll('<', '\\u003c');
