import { describe, expect, it } from 'vitest';
import type { CheckItem, NumericItem } from './check-item';
import { faceOf, gradeCheckItem } from './grade-check-item';
import { lessonQuantities } from './lesson-quantities';
import { listLessons } from './lessons';
import { reckoningFrom } from './reckoning';

const engine = reckoningFrom(lessonQuantities, new Map(), []);
const azimuth: NumericItem = {
  id: 'azimuth',
  kind: 'numeric',
  prompt: 'Which azimuth?',
  unit: 'degrees',
  key: 358,
  fullWithin: 5,
  zeroBeyond: 15,
  wrapsAt360: true,
  reason: 'Almost north.',
  slips: [{ gives: 178, reason: 'You counted from south.' }],
};
const feedback = (item: CheckItem, answer: string, reveal = false) => {
  const outcome = gradeCheckItem(item, answer, engine, reveal);
  if (!outcome.ok) throw new Error(outcome.refusal.code);
  return outcome.feedback;
};

describe('a numeric answer', () => {
  it('is full within the band, nothing beyond it, and a straight line between', () => {
    expect(feedback(azimuth, '355').mark).toBe(1);
    expect(feedback(azimuth, '353').mark).toBe(1);
    expect(feedback(azimuth, '348').mark).toBeCloseTo(0.5, 12);
    expect(feedback(azimuth, '343').mark).toBe(0);
    expect(feedback(azimuth, '300').mark).toBe(0);
  });

  it('goes the short way round the circle', () => {
    expect(feedback(azimuth, '2').verdict).toBe('right');
    expect(feedback({ ...azimuth, wrapsAt360: false }, '2').verdict).toBe('wrong');
  });

  it('names a known slip instead of the distance', () => {
    expect(feedback(azimuth, '180').said).toBe('You counted from south.');
    expect(feedback(azimuth, '200').said).toBe('Not yet: 158 degrees away.');
  });

  it('says which way it is off where there is a way', () => {
    const altitude = { ...azimuth, key: 35, wrapsAt360: false, slips: [] };
    expect(feedback(altitude, '43').said).toBe('Close: 8 degrees too much.');
    expect(feedback(altitude, '10').said).toBe('Not yet: 25 degrees too little.');
  });

  it('keeps the answer to itself until it is right or asked for', () => {
    expect(feedback(azimuth, '200').answer).toBeNull();
    expect(feedback(azimuth, '200', true).answer).toBe('358 degrees. Almost north.');
    expect(feedback(azimuth, '358').answer).toBe('358 degrees. Almost north.');
  });
});

describe('an answer that cannot be looked at', () => {
  it('is refused with what is wrong', () => {
    expect(gradeCheckItem(azimuth, ' ', engine)).toEqual({
      ok: false,
      refusal: { code: 'no-answer' },
    });
    expect(gradeCheckItem(azimuth, 'north', engine)).toEqual({
      ok: false,
      refusal: { code: 'not-a-number' },
    });
  });
});

const items = (await listLessons()).flatMap((lesson) =>
  [...lesson.frontMatter.retrieval, ...lesson.frontMatter.checks].map(
    ({ item }) => [`${lesson.slug}: ${item.id}`, item, lesson.reckoning] as const,
  ),
);
const choices = items.flatMap(([name, item, reckoning]) =>
  item.kind === 'choice' ? [[name, item, reckoning] as const] : [],
);
const numerics = items.flatMap(([name, item, reckoning]) =>
  item.kind === 'numeric' ? [[name, item, reckoning] as const] : [],
);

describe('the questions of the lessons', () => {
  it.each(choices)('%s has one right answer, and every other is wrong', (_, item, reckoning) => {
    const verdicts = item.options.map((option) => {
      const outcome = gradeCheckItem(item, option.id, reckoning);
      return outcome.ok ? outcome.feedback.verdict : outcome.refusal.code;
    });
    expect(verdicts.filter((verdict) => verdict === 'right')).toHaveLength(1);
    expect(verdicts.filter((verdict) => verdict === 'wrong')).toHaveLength(verdicts.length - 1);
  });

  it.each(choices)('%s gives only reasons that the engine finds true', (_, item, reckoning) => {
    for (const condition of item.options.flatMap((option) => option.shownBy)) {
      expect(reckoning.holds(condition), condition).toBe(true);
    }
  });

  it.each(choices)('%s has a key that stands out by its measure', (_, item, reckoning) => {
    const measured = item.options.flatMap(({ id, measure }) =>
      measure === undefined ? [] : [{ id, value: reckoning.number(measure) }],
    );
    const key = measured.find(({ id }) => id === item.key);
    const rivals = measured.filter(({ id }) => id !== item.key).map(({ value }) => value);
    // By a fifth: nobody need compute to see it.
    if (key !== undefined) expect(0.8 * key.value).toBeGreaterThan(Math.max(...rivals));
  });

  it('shows by the engine why a distractor of the sky is wrong', () => {
    const sky = choices.filter(
      ([name, item]) =>
        name.startsWith('choosing-alignment-stars') &&
        item.options.some(({ measure, shownBy }) => measure !== undefined || shownBy.length > 0),
    );
    expect(sky.length).toBeGreaterThanOrEqual(6);
    for (const [name, item] of sky) {
      for (const option of item.options.filter(({ id }) => id !== item.key)) {
        const shown = option.shownBy.length > 0 || option.measure !== undefined;
        expect(shown, `${name}: ${option.id}`).toBe(true);
      }
    }
  });

  it.each(numerics)('%s takes its own key and none of its slips', (_, item, reckoning) => {
    const grade = (value: number | string) => {
      const number = typeof value === 'number' ? value : reckoning.number(value);
      const outcome = gradeCheckItem(item, String(number), reckoning);
      return outcome.ok ? outcome.feedback : null;
    };
    expect(grade(item.key)?.verdict).toBe('right');
    for (const slip of item.slips) {
      expect(grade(slip.gives)?.verdict).not.toBe('right');
      expect(grade(slip.gives)?.said).toBe(reckoning.fill(slip.reason));
    }
  });

  it.each(items)('%s goes to the page without key, reasons or measures', (_, item, reckoning) => {
    const face = faceOf(item, reckoning);
    expect(Object.keys(face).sort()).toEqual(
      item.kind === 'choice'
        ? ['id', 'kind', 'options', 'prompt']
        : ['id', 'kind', 'prompt', 'unit'],
    );
    const sent = JSON.stringify(face);
    const reasons =
      item.kind === 'choice' ? item.options.map(({ reason }) => reason) : [item.reason];
    for (const reason of reasons) expect(sent).not.toContain(reckoning.fill(reason));
    expect(sent).not.toContain('{{');
  });
});
