import { describe, expect, it } from 'vitest';
import { skills, type Skill } from '../course/skills';
import type { Mastery } from './mastery';
import { nextSteps } from './next-steps';

const everywhere = (
  state: Mastery['state'],
  change: Partial<Record<Skill, Partial<Parameters<typeof nextSteps>[0][number]>>> = {},
) => skills.map((skill) => ({ skill, state, inARow: 0, signedOff: false, ...change[skill] }));

describe('next steps', () => {
  it('are none for who has shown all of it, indoors and out', () => {
    const done = everywhere('kept').map((one) => ({ ...one, signedOff: true }));
    expect(nextSteps(done, [{ title: 'A first pair', state: 'complete' }])).toEqual([]);
  });

  it('name the first skill of an evening that is not mastered, and what is still to be passed', () => {
    const standings = everywhere('mastered', {
      power: { state: 'practising', inARow: 2 },
      align: { state: 'not-started' },
    }).map((one) => ({ ...one, signedOff: true }));
    expect(nextSteps(standings, [])).toEqual([{ do: 'practise', skill: 'power', toGo: 1 }]);
  });

  it('show at the telescope what is mastered and not signed off, reviews or not', () => {
    const standings = everywhere('kept', {
      level: { state: 'review-due' },
      kit: { signedOff: true },
    });
    const [review, outside] = nextSteps(standings, []);
    expect(review).toEqual({ do: 'review', skill: 'level', toGo: 1 });
    expect(outside).toEqual({ do: 'show-outside', skills: skills.slice(1) });
  });

  it('put work that was given back before missing work, and that before what is not passed', () => {
    const work = [
      { title: 'Three', state: 'not-yet' },
      { title: 'Two', state: 'missing' },
      { title: 'One', state: 'returned' },
    ];
    const done = everywhere('kept').map((one) => ({ ...one, signedOff: true }));
    expect(nextSteps(done, work).map((step) => 'title' in step && step.title)).toEqual([
      'One',
      'Two',
      'Three',
    ]);
  });

  it('are five at most, and what lies ahead is among them', () => {
    const work = skills.map((title) => ({ title, state: 'missing' }));
    const steps = nextSteps(everywhere('practising', { kit: { state: 'kept' } }), work);
    expect(steps).toHaveLength(5);
    expect(steps.map((step) => step.do).slice(-2)).toEqual(['practise', 'show-outside']);
  });
});
