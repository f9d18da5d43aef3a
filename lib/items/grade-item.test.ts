import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choice, match, numeric, order, point, several } from './build-item';
import { rightAnswer, wrongAnswers } from './answers-to-try';
import { drawItem } from './draw-item';
import { gradeItem } from './grade-item';
import type { Item, ItemBody } from './item';
import type { ItemAnswer } from './item-answer';
import type { ItemFamily } from './item-family';

const asked = (body: ItemBody): Item => ({
  family: 'a-family',
  template: 'a-template',
  generatorVersion: 1,
  ...body,
});
const common = { prompt: 'What now?', explanation: 'So it is.' };
const feedbackOf = (body: ItemBody, answer: ItemAnswer) => {
  const graded = gradeItem(asked(body), answer);
  if (!graded.ok) throw new Error(`refused: ${graded.refusal.code}`);
  return graded.feedback;
};

const compass = choice({
  ...common,
  right: { text: 'East', reason: 'The sky turns that way.' },
  wrong: [
    { text: 'South', reason: 'There it stands highest.', misconception: 'azimuth-from-south' },
    { text: 'West', reason: 'There it sets.' },
  ],
});
const tripod = order({
  ...common,
  steps: ['Legs', 'Tray', 'Mount', 'Tube'],
  rules: [
    { first: 0, then: 1, reason: 'the tray holds them.' },
    { first: 1, then: 2, reason: 'a mount on folding legs falls.' },
    { first: 2, then: 3, reason: 'the tube hangs on it.' },
  ],
});
const planks = several({
  ...common,
  right: [
    { text: 'Cap on', reason: 'It keeps the Sun out.' },
    { text: 'In the shade', reason: 'The Sun cannot come in.' },
  ],
  wrong: [
    { text: 'Alone', reason: 'An adult stands beside.' },
    { text: 'On the Sun', reason: 'Never.' },
  ],
});
const kits = match({
  ...common,
  pairs: [
    { left: 'Wren', right: 'lens', reason: 'it is a refractor.' },
    { left: 'Heron', right: 'mirror', reason: 'it is a reflector.' },
    { left: 'Owl', right: 'both', reason: 'it has a lens and mirrors.' },
  ],
  spare: ['neither'],
});
const azimuth = numeric({
  ...common,
  unit: 'degrees',
  key: 358,
  tolerance: { mode: 'absolute', full: 3, zero: 10 },
  wrapsAt360: true,
  slips: [{ gives: 178, reason: 'From south.', misconception: 'azimuth-from-south' }],
});

describe('a choice', () => {
  it('is told the reason of the one chosen, and names the idea behind it', () => {
    const south = compass.options.find(({ text }) => text === 'South')?.id ?? '';
    expect(feedbackOf(compass, { kind: 'choice', option: south })).toMatchObject({
      verdict: 'wrong',
      mark: 0,
      said: ['There it stands highest.'],
      misconceptions: ['azimuth-from-south'],
      right: 'East.',
      explanation: 'So it is.',
    });
  });

  it.each([
    [{ kind: 'choice', option: null }, 'no-answer'],
    [{ kind: 'choice', option: 'z' }, 'other-question'],
    [{ kind: 'numeric', text: '3' }, 'other-question'],
  ] as const)('uses nothing up for %j', (answer, code) => {
    expect(gradeItem(asked(compass), answer)).toEqual({ ok: false, refusal: { code } });
  });
});

describe('several at once', () => {
  it('counts a wrong tick against a right one, so that ticking all earns nothing', () => {
    const all = planks.options.map(({ id }) => id);
    expect(feedbackOf(planks, { kind: 'several', options: all }).mark).toBe(0);
    const [first = ''] = planks.options.filter(({ right }) => right).map(({ id }) => id);
    const half = feedbackOf(planks, { kind: 'several', options: [first] });
    expect(half.mark).toBe(0.5);
    expect(half.said).toEqual(['Also “In the shade”: The Sun cannot come in.']);
  });
});

describe('an order', () => {
  it('is right in every order that keeps the rules', () => {
    const free = order({
      ...common,
      steps: ['Legs', 'Tray', 'Lamp'],
      rules: [{ first: 0, then: 1, reason: 'the tray holds them.' }],
    });
    for (const steps of [
      ['a', 'b', 'c'],
      ['a', 'c', 'b'],
      ['c', 'a', 'b'],
    ])
      expect(feedbackOf(free, { kind: 'order', steps }).verdict).toBe('right');
    expect(feedbackOf(free, { kind: 'order', steps: ['b', 'c', 'a'] }).verdict).toBe('wrong');
  });

  it('says of each broken rule which step comes first, and why', () => {
    const { mark, said } = feedbackOf(tripod, { kind: 'order', steps: ['a', 'c', 'b', 'd'] });
    expect(mark).toBeCloseTo(1 / 3);
    expect(said).toEqual(['“Tray” comes before “Mount”: a mount on folding legs falls.']);
  });

  it('is not looked at while a step is missing or stands twice', () => {
    for (const steps of [
      ['a', 'b', 'c'],
      ['a', 'b', 'c', 'c'],
    ])
      expect(gradeItem(asked(tripod), { kind: 'order', steps })).toEqual({
        ok: false,
        refusal: { code: 'unfinished' },
      });
  });
});

describe('a match', () => {
  it('loses twice the share of its wrong pairs, as an order does of its broken rules', () => {
    const right = rightAnswer(asked(kits));
    if (right.kind !== 'match') throw new Error('a match is answered by pairs');
    const pairs = { ...right.pairs, a: right.pairs['b'] ?? '' };
    const { mark, said } = feedbackOf(kits, { kind: 'match', pairs });
    expect(mark).toBeCloseTo(1 / 3);
    expect(said).toEqual(['Wren – lens: it is a refractor.']);
  });
});

describe('a number', () => {
  it.each([
    ['358', 1],
    ['1°', 1],
    ['355,0', 1],
    ['4.5', 0.5],
    ['8', 0],
    ['−2', 1],
  ])('%s earns %f, across north too', (text, mark) => {
    expect(feedbackOf(azimuth, { kind: 'numeric', text }).mark).toBeCloseTo(mark);
  });

  it('names a known slip', () => {
    expect(feedbackOf(azimuth, { kind: 'numeric', text: '178' })).toMatchObject({
      said: ['From south.'],
      misconceptions: ['azimuth-from-south'],
      right: '358 degrees.',
    });
  });

  it('gives no more than half for a known slip, however near to the key it leads', () => {
    const near = { ...azimuth, slips: [{ gives: 353.5, reason: 'Read from the wrong end.' }] };
    expect(feedbackOf(near, { kind: 'numeric', text: '354.5' })).toMatchObject({
      mark: 0.5,
      said: ['Read from the wrong end.'],
    });
    // Without the slip: half a degree beyond full marks, of seven to nothing.
    expect(feedbackOf(azimuth, { kind: 'numeric', text: '354.5' }).mark).toBeCloseTo(6.5 / 7);
    // What is right stays right.
    expect(feedbackOf(near, { kind: 'numeric', text: '356' }).mark).toBe(1);
  });

  it('may be right within a share of itself', () => {
    const hours = numeric({
      ...common,
      unit: 'hours',
      key: 8,
      tolerance: { mode: 'relative', full: 0.1, zero: 0.5 },
    });
    expect(feedbackOf(hours, { kind: 'numeric', text: '8.8' }).mark).toBe(1);
    expect(feedbackOf(hours, { kind: 'numeric', text: '10.4 h' }).mark).toBeCloseTo(0.5);
    expect(feedbackOf(hours, { kind: 'numeric', text: '10.4' }).said).toEqual([
      'Close: 2 hours too much.',
    ]);
  });
});

const spots = point({
  ...common,
  drawing: { width: 320, height: 100, alternative: 'A tube.', shapes: [] },
  right: { x: 10, y: 50, where: 'at the left end', reason: 'There the light comes in.' },
  wrong: [
    { x: 300, y: 50, where: 'at the right end', reason: 'That is the eyepiece.' },
    { x: 150, y: 20, where: 'on top', reason: 'That is the finder.' },
  ],
});

describe('a drawn question', () => {
  const bodies = { compass, tripod, planks, kits, azimuth, spots };
  const family: ItemFamily = {
    id: 'all-kinds',
    lesson: 'level-enough',
    objective: 'any',
    skill: 'level',
    title: 'All kinds',
    version: 1,
    templates: Object.fromEntries(Object.entries(bodies).map(([name, body]) => [name, () => body])),
  };
  const world = { kits: [], catalogue: { version: 'none', stars: [], figures: [] } };

  it('keeps its key through shuffling, whatever its kind and seed', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...Object.keys(bodies)), (seed, template) => {
        const item = drawItem(family, template, { seed, world });
        const right = gradeItem(item, rightAnswer(item));
        expect(right.ok && right.feedback.mark).toBe(1);
        for (const answer of wrongAnswers(item)) {
          const wrong = gradeItem(item, answer);
          expect(wrong.ok && wrong.feedback.mark).toBeLessThan(1);
        }
      }),
    );
  });

  it('has its right option at every place about equally often', () => {
    const keys = Array.from({ length: 600 }, (_, n) => {
      const item = drawItem(family, 'compass', { seed: String(n), world });
      return item.kind === 'choice' ? item.key : '';
    });
    for (const place of ['a', 'b', 'c']) {
      // Four standard errors of a share of one in three among 600.
      expect(Math.abs(keys.filter((key) => key === place).length - 200)).toBeLessThan(
        4 * Math.sqrt(600 * (1 / 3) * (2 / 3)),
      );
    }
  });
});
