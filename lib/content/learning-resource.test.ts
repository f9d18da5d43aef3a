import { describe, expect, it } from 'vitest';
import { jsonForScript, learningResource } from './learning-resource';
import { getLesson } from './lessons';

const lesson = await getLesson('choosing-alignment-stars');

describe('a lesson’s metadata', () => {
  it('is a schema.org LearningResource', () => {
    if (lesson === null) throw new Error('the lesson is missing');
    const resource = learningResource(lesson.frontMatter, 'https://school.example/lessons/x');
    expect(resource).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'LearningResource',
      name: 'Choosing alignment stars',
      learningResourceType: 'lesson',
      timeRequired: 'PT17M',
      isAccessibleForFree: true,
    });
    expect(resource['teaches']).toHaveLength(lesson.frontMatter.objectives.length);
    expect(JSON.stringify(resource)).not.toContain('reason');
  });

  it('cannot close the script element that it stands in', () => {
    expect(jsonForScript({ name: '</script><script>alert(1)</script>' })).not.toContain('<');
    expect(JSON.parse(jsonForScript({ name: '</b>' }))).toEqual({ name: '</b>' });
  });
});
