import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compileLesson } from '../content/lessons';
import { filesOfLesson, registered, registrations } from './new-lesson-files';

const lesson = {
  slug: 'dew-and-frost',
  number: 13,
  title: 'Dew: and frost',
  skill: 'safety',
} as const;

describe('a new lesson', () => {
  it('compiles as it stands, with the number, title and skill it was given', async () => {
    const text = filesOfLesson(lesson).get('content/lessons/dew-and-frost/lesson.mdx') ?? '';
    const { frontMatter, outline } = await compileLesson(text);
    expect(frontMatter).toMatchObject({
      id: 'lesson-13',
      title: 'Dew: and frost',
      objectives: [{ id: 'first', skill: 'safety' }],
    });
    expect(outline.prose).toContain('‹');
  });

  it.each(registrations(lesson).map((one) => [one.file, one] as const))(
    'is entered in %s, at the end of its list',
    (file, registration) => {
      const source = readFileSync(file, 'utf8');
      const lines = registered(source, registration).split('\n');
      const entry = lines.indexOf(registration.entry);
      expect(lines[entry + 1]?.startsWith(registration.before)).toBe(true);
      expect(lines.length).toBe(source.split('\n').length + ('add' in registration ? 2 : 1));
    },
  );

  it('is not entered where the registry has another form', () => {
    expect(() => registered('export const a = 1;\n', { entry: '  a,', before: '];' })).toThrow(
      RangeError,
    );
  });
});
