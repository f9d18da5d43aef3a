import { describe, expect, it } from 'vitest';
import { faultyEvening } from '@/tests/support/faulty-evening';
import type { FaultAnswerKey } from '../variants/fault-variant';
import { gradeFault } from './grade-fault';
import { faultSubmissionSchema, type FaultSubmission } from './fault-submission';
import { faultGrader, faultGraderVersion } from './graders';

const variant = faultyEvening({
  open: ['first'],
  faults: ['tube-slips', 'clutch-unlocked', 'planet', 'date', 'supply-reset'],
  cures: [
    'balance-and-tighten-the-tube',
    'lock-the-clutches-and-align-again',
    'correct-date',
    'fresh-cells-and-align-again',
    'align-again-right-stars',
  ],
});
const answerKey: FaultAnswerKey = {
  lab: 'what-went-wrong',
  fault: 'tube-slips',
  alike: ['tube-slips', 'clutch-unlocked'],
  cures: {
    'tube-slips': ['balance-and-tighten-the-tube'],
    'clutch-unlocked': ['lock-the-clutches-and-align-again'],
  },
  tellTales: { planet: 'outcome', date: 'card', 'supply-reset': 'test-slew' },
  testSlewsIf: {
    planet: [
      { hip: 24608, name: 'Capella', rightDeg: 0.4, upDeg: -0.1 },
      { hip: 11767, name: 'Polaris', rightDeg: 0.1, upDeg: 0 },
    ],
    // Day and month exchanged: Capella is believed to be down.
    date: [{ hip: 11767, name: 'Polaris', rightDeg: -1, upDeg: 0.6 }],
  },
};
const right: FaultSubmission = {
  looked: [],
  testSlew: null,
  fault: 'tube-slips',
  cure: 'balance-and-tighten-the-tube',
};
const grade = (changes: Partial<FaultSubmission>) =>
  gradeFault({ variant, answerKey, submission: { ...right, ...changes } });
function result(changes: Partial<FaultSubmission>) {
  const grading = grade(changes);
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
}

describe('the mark', () => {
  it('is 60 for the fault, 30 for the cure and 10 for having looked at nothing else', () => {
    expect(result({}).criteria).toEqual([
      { id: 'fault', earned: 60, possible: 60 },
      { id: 'cure', earned: 30, possible: 30 },
      { id: 'looks', earned: 10, possible: 10 },
    ]);
    expect(result({}).total).toBe(100);
  });

  it('is full for a fault that shows the same, with its own cure', () => {
    const alike = result({
      fault: 'clutch-unlocked',
      cure: 'lock-the-clutches-and-align-again',
    });
    expect(alike.total).toBe(100);
    expect(alike.tellTale).toBeNull();
  });

  it('loses 2 a look beyond what was told and 2 for the test slew', () => {
    const [test] = variant.testSlews;
    expect(test).toBeDefined();
    expect(result({ looked: ['second', 'card'] }).total).toBe(96);
    expect(result({ testSlew: test?.hip ?? null }).total).toBe(98);
    expect(
      result({
        looked: ['second', 'outcome', 'later', 'card', 'observations'],
        testSlew: test?.hip ?? null,
      }).total,
    ).toBe(90);
  });

  it('charges neither what was open nor the same look twice', () => {
    const looked = result({ looked: ['first', 'card', 'card'] });
    expect(looked.total).toBe(98);
    expect(looked.looked).toEqual(['card']);
  });

  it('keeps the cure’s marks for what would have put the evening right', () => {
    expect(result({ fault: 'planet' }).total).toBe(40);
    expect(result({ fault: 'planet', cure: 'align-again-right-stars' }).total).toBe(10);
    // The cure of a look-alike that was not named cures nothing.
    expect(result({ fault: 'planet', cure: 'lock-the-clutches-and-align-again' }).total).toBe(10);
    expect(result({ cure: 'lock-the-clutches-and-align-again' }).total).toBe(70);
  });
});

describe('the result', () => {
  it('names what would have told the two apart', () => {
    expect(result({ fault: 'planet' }).tellTale).toBe('outcome');
    expect(result({ fault: 'supply-reset' }).tellTale).toBe('test-slew');
    expect(result({}).tellTale).toBeNull();
  });

  it('tells where the test slew would have landed by the fault that was named', () => {
    expect(result({ fault: 'planet', testSlew: 11767 }).namedSlew).toMatchObject({
      name: 'Polaris',
      rightDeg: 0.1,
    });
    // Without a test slew the first on offer stands in.
    expect(result({ fault: 'planet' }).namedSlew?.name).toBe('Capella');
    expect(result({ fault: 'date', testSlew: 24608 }).namedSlew).toBeNull();
    expect(result({})).not.toHaveProperty('namedSlew');
  });

  it('tells the fault, its look-alikes and the right cures', () => {
    expect(result({ fault: 'date' })).toMatchObject({
      named: 'date',
      fault: 'tube-slips',
      alike: ['tube-slips', 'clutch-unlocked'],
      rightCures: ['balance-and-tighten-the-tube'],
      graderVersion: faultGraderVersion,
    });
  });
});

describe('what was not offered', () => {
  it.each([
    ['a fault', { fault: 'latitude' }],
    ['a cure', { cure: 'level-the-base' }],
    ['a star for the test slew', { testSlew: 1 }],
  ] as const)('is refused: %s', (_, changes) => {
    expect(grade(changes)).toEqual({ ok: false, refusal: { code: 'not-offered' } });
  });
});

it('the schema lets a submission through and a score not', () => {
  expect(faultSubmissionSchema.safeParse(right).success).toBe(true);
  expect(faultSubmissionSchema.safeParse({ ...right, total: 100 }).success).toBe(false);
});

it('every version that ever marked is still there', () => {
  expect(faultGrader(faultGraderVersion)).toBe(gradeFault);
  expect(faultGrader(0)).toBeUndefined();
});
