import { describe, expect, it, test } from 'vitest';
import { labs } from '../variants/labs';
import { skills } from '../course/skills';
import { evidenceOf } from './attempt-evidence';
import { labOfSkill, skillsOfLab } from './lab-skills';

const at = new Date('2026-11-02T10:00:00Z');
const work = { template: 'any', total: 90, passMark: 70, gateFailed: false, at };

describe('a lab that was handed in', () => {
  it('tells of its skill by its mark, under the assignment’s own pass mark', () => {
    expect(evidenceOf({ ...work, lab: 'field' })).toEqual([
      {
        skill: 'field',
        template: 'field/any',
        mark: 90,
        passMark: 70,
        gateFailed: false,
        at,
        from: 'mark',
      },
    ]);
  });

  it('tells of two skills where it is about two', () => {
    const told = evidenceOf({ ...work, lab: 'put-it-together' }).map(({ skill }) => skill);
    expect(told).toEqual(['kit', 'assemble', 'safety']);
  });

  it('tells against safety when a gate failed, whatever the mark, and is not passed itself', () => {
    const told = evidenceOf({ ...work, lab: 'power', total: 100, gateFailed: true });
    expect(told).toMatchObject([
      { skill: 'power', mark: 100, gateFailed: true },
      { skill: 'safety', mark: 0, passMark: 100, gateFailed: true, from: 'gates' },
    ]);
  });

  it('tells for safety when it passed without one', () => {
    expect(evidenceOf({ ...work, lab: 'alignment-run' })).toMatchObject([
      { skill: 'align' },
      { skill: 'safety', mark: 100, gateFailed: false },
    ]);
  });

  it('tells nothing of safety when it passed nothing and failed no gate', () => {
    const told = evidenceOf({ ...work, lab: 'balance', total: 12 });
    expect(told.map(({ skill }) => skill)).toEqual(['balance']);
  });

  it('tells nothing of safety where nothing can hurt anybody', () => {
    for (const lab of ['field', 'clock-and-place', 'pick-the-pair', 'what-went-wrong'] as const) {
      expect(evidenceOf({ ...work, lab }).map(({ skill }) => skill)).toEqual(skillsOfLab[lab]);
    }
  });
});

test('a rehearsal tells of each skill whether it was shown', () => {
  const told = evidenceOf({
    ...work,
    lab: 'dress-rehearsal',
    total: 85,
    gateFailed: true,
    skills: [
      { skill: 'level', shown: true },
      { skill: 'align', shown: false },
      { skill: 'safety', shown: false },
    ],
  });
  expect(told).toMatchObject([
    { skill: 'level', mark: 100, passMark: 100, gateFailed: false, from: 'rehearsal' },
    { skill: 'align', mark: 0, passMark: 100, gateFailed: false },
    { skill: 'safety', mark: 0, passMark: 100, gateFailed: true },
  ]);
});

test('a set of questions tells of each question by itself, judged as in practice whatever the set’s pass mark', () => {
  const told = evidenceOf({
    ...work,
    lab: 'lesson-questions',
    total: 50,
    items: [
      { family: 'which-leg', template: 'point', skill: 'level', mark: 100 },
      { family: 'how-far-off', template: 'number', skill: 'align', mark: 0 },
    ],
  });
  expect(told).toMatchObject([
    { skill: 'level', template: 'which-leg/point', mark: 100, passMark: 80, from: 'item' },
    { skill: 'align', template: 'how-far-off/number', mark: 0, passMark: 80, from: 'item' },
  ]);
});

test('every skill has a lab, and every lab but the whole evening and the questions has its skills', () => {
  for (const skill of skills) expect(labs).toContain(labOfSkill[skill]);
  for (const [lab, told] of Object.entries(skillsOfLab)) {
    for (const skill of told) expect(labOfSkill[skill]).toBe(lab);
  }
});
