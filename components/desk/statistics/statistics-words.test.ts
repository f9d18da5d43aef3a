import type { Reliability } from '@/lib/data/class-statistics-parts';
import { describe, expect, test } from 'vitest';
import type { AssignmentStatistics, PartStatistics } from '@/lib/data/class-statistics';
import {
  coefficientText,
  marksSentence,
  percentText,
  reliabilitySentences,
} from './statistics-words';

const assignment = (change: Partial<AssignmentStatistics>): AssignmentStatistics => ({
  id: 'a',
  title: 'A first pair',
  passMark: 70,
  marks: [],
  reached: 0,
  gateFailed: 0,
  excused: 0,
  withoutMark: 0,
  parts: [],
  ...change,
});

describe('how an assignment went', () => {
  test('is told in counts alone of fewer than ten', () => {
    const few = { marks: [40, 80, 90], reached: 2, withoutMark: 5, excused: 1 };
    expect(marksSentence(assignment(few))).toBe(
      'Of 8, 3 have a mark; 2 of them have reached the pass mark of 70. 1 student excused.',
    );
  });

  test('has its middle mark and middle half from ten on', () => {
    const ten = { marks: [10, 20, 30, 40, 50, 60, 70, 80, 90, 100], reached: 4, gateFailed: 1 };
    // Quartiles by the straight line between neighbours: 10 + 90·0.25 = 32.5.
    expect(marksSentence(assignment(ten))).toBe(
      'Of 10, 10 have a mark; 4 of them have reached the pass mark of 70. The middle mark is 55; the middle half lies between 32.5 and 77.5. For 1 student a failed safety gate stands: not yet, whatever the mark.',
    );
  });

  test('says so when nobody has a mark', () => {
    expect(marksSentence(assignment({ withoutMark: 12 }))).toBe('None of 12 has a mark yet.');
  });
});

describe('how far to rely on marks', () => {
  const found: Reliability = {
    from: 'own-questions',
    people: 31,
    items: 8,
    mean: 70,
    deviation: 15,
    reliability: 0.64,
    error: 9,
    kr20: null,
    kr21: null,
  };
  const part = (change: Partial<PartStatistics>): PartStatistics => ({
    partId: 'p',
    lab: 'lesson-questions',
    gateStandsFor: [],
    people: 31,
    criteria: [],
    gates: [],
    reliability: found,
    telescope: null,
    ...change,
  });

  test('is said in marks, and how firm that is', () => {
    expect(reliabilitySentences(part({}))).toEqual([
      'If the same students did another set of such questions, about two in three would come out within 9 marks of the mark they have now.',
      'Fair for a look at the class; for one student, use other evidence too.',
    ]);
  });

  test('blames no task for telling nobody apart where nearly all was right', () => {
    const nearlyAll = { ...found, mean: 96, reliability: 0.1 };
    expect(reliabilitySentences(part({ reliability: nearlyAll }))[1]).toBe(
      'Nearly everything was right: such marks cannot tell students apart, and need not.',
    );
  });

  test('has no figure of fewer than ten, nor where all totals are alike', () => {
    expect(reliabilitySentences(part({ people: 9 }))).toHaveLength(1);
    expect(reliabilitySentences(part({ reliability: null }))).toHaveLength(1);
  });
});

test('a coefficient is written without its nought, and minus as minus', () => {
  expect([0.714, -0.1, 1, -0.001, 0].map(coefficientText)).toEqual([
    '.71',
    '−.10',
    '1.00',
    '.00',
    '.00',
  ]);
  expect(percentText(-0.004)).toBe('0 %');
  expect(percentText(-0.25)).toBe('−25 %');
});
