import { describe, expect, it } from 'vitest';
import { course } from '@/lib/course/lessons';
import { assignmentInputSchema } from '@/lib/data/assignment-input';
import { labOptions, labs } from '@/lib/variants/labs';
import { lessonPreset } from './lesson-preset';
import { moved, newPart, withLesson } from './part-draft';

describe('a lesson at one choice', () => {
  it.each(course.map(({ slug }) => slug))(
    'of %s reads it, does its lab and asks about it',
    (slug) => {
      const { lessons, parts } = lessonPreset(slug, 'A title', []);
      expect(lessons).toEqual([slug]);
      const [lab, questions, ...more] = parts;
      expect(more).toEqual([]);
      expect(questions).toMatchObject({ lab: 'lesson-questions', templates: [slug] });
      // Every kind of task of the lab, and something to do with the hands.
      expect(lab?.templates).toEqual(labOptions[lab?.lab ?? 'level'].templates);
      expect(lab?.lab).not.toBe('lesson-questions');
      const sent = parts.map((part) => ({
        lab: part.lab,
        templates: part.templates,
        windowMinutes: 0,
        minutesAllowed: null,
        weight: Number(part.weight),
      }));
      expect(assignmentInputSchema.shape.parts.safeParse(sent).success).toBe(true);
    },
  );

  it('leaves no lab of the course out but what a teacher puts in by hand', () => {
    const set = new Set(
      course.flatMap(({ slug }) => lessonPreset(slug, '', []).parts.map(({ lab }) => lab)),
    );
    expect(labs.filter((lab) => !set.has(lab))).toEqual([]);
  });
});

describe('the list of parts', () => {
  const parts = [newPart('level', [], [])].flatMap((one) => [one, newPart('power', [], [one])]);

  it('gives each part a key of its own and the window of time of the others', () => {
    expect(new Set(parts.map(({ key }) => key)).size).toBe(2);
    const narrow = parts.map((part) => ({
      ...part,
      lab: 'clock-and-place' as const,
      windowMinutes: '5',
    }));
    expect(newPart('finder', [], narrow).windowMinutes).toBe('5');
  });

  it('moves one past its neighbour and back, and none past the ends', () => {
    const turned = moved(parts, 0, 1);
    expect(turned.map(({ lab }) => lab)).toEqual(['power', 'level']);
    expect(moved(turned, 1, -1)).toEqual(parts);
    expect(moved(parts, 0, -1)).toBe(parts);
    expect(moved(parts, 1, 1)).toBe(parts);
  });

  it('keeps lessons in the order of the course', () => {
    const both = withLesson(withLesson([], 'the-night', true), 'level-enough', true);
    expect(both).toEqual(['level-enough', 'the-night']);
    expect(withLesson(both, 'the-night', false)).toEqual(['level-enough']);
  });
});
