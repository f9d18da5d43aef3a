import { describe, expect, it } from 'vitest';
import { changeWords, outcomeWords, pieceWords } from './piece-words';

const lab = { kind: 'lab', attemptId: 'a', title: 'A first pair', template: 'free-pair' } as const;
const pair = { ...lab, lab: 'pick-the-pair', from: 'mark' } as const;
const shown = (mark: number): string => String(mark);
const half = { mark: 50, passMark: 70, passed: false };

describe('a piece of evidence in words', () => {
  it('names the lab and the kind of task', () => {
    expect(pieceWords({ source: pair, about: null })).toBe('Pick the pair: choose any two');
    const gates = { ...lab, lab: 'power', from: 'gates' } as const;
    expect(pieceWords({ source: gates, about: null })).toMatch(/^Safety gates of Power: /);
  });

  it('names what a question was about, and its family where the bank no longer knows it', () => {
    const source = { kind: 'question', questionId: 'q', family: 'which-leg' } as const;
    expect(pieceWords({ source, about: 'Which leg to turn' })).toBe('Question: which leg to turn');
    expect(pieceWords({ source, about: null })).toBe('Question: which-leg');
    const item = { kind: 'item', attemptId: 'a', family: 'which-leg', title: 'Week 3' } as const;
    expect(pieceWords({ source: item, about: 'Which leg to turn' })).toBe(
      'Question of “Week 3”: which leg to turn',
    );
  });

  it('says a mark with what it takes to pass, and what is so or not without one', () => {
    expect(outcomeWords({ ...half, source: pair }, shown)).toBe('50 of 100, 70 to pass');
    expect(outcomeWords({ ...half, source: { ...pair, from: 'gates' } }, shown)).toBe(
      'a gate failed',
    );
    const rehearsal = { ...pair, lab: 'dress-rehearsal', from: 'rehearsal' } as const;
    expect(outcomeWords({ ...half, source: rehearsal, passed: true }, shown)).toBe('shown');
  });

  it('says what it changed', () => {
    expect(changeWords({ inARow: 2 })).toBe('2 in a row');
    expect(changeWords('mastery')).toBe('3 in a row: mastered');
    expect(changeWords('review')).toBe('passes a review');
  });
});
