import { describe, expect, it } from 'vitest';
import { moved, ringNames } from './answers';
import { postedAnswer } from './posted-answer';

const form = (fields: readonly (readonly [string, string])[]) => {
  const data = new FormData();
  for (const [name, value] of fields) data.append(name, value);
  return data;
};
const posted = (kind: Parameters<typeof postedAnswer>[0], ...fields: [string, string][]) =>
  postedAnswer(kind, form(fields), 'answer');

describe('a posted answer', () => {
  it.each(['choice', 'point'] as const)('to a %s is the option that was taken', (kind) => {
    expect(posted(kind, ['answer', 'b'])).toEqual({ answer: { kind, option: 'b' }, moved: false });
  });

  it('to a choice is none when nothing was taken', () => {
    expect(posted('choice')?.answer).toEqual({ kind: 'choice', option: null });
  });

  it('may tick several', () => {
    expect(posted('several', ['answer', 'a'], ['answer', 'c'])?.answer).toEqual({
      kind: 'several',
      options: ['a', 'c'],
    });
  });

  it('keeps a number as it was typed', () => {
    expect(posted('numeric', ['answer', ' 12,5° '])?.answer).toEqual({
      kind: 'numeric',
      text: ' 12,5° ',
    });
  });

  it('leaves out of a match what has no partner yet', () => {
    const fields: [string, string][] = [
      ['answer-a', 'c'],
      ['answer-b', ''],
      ['answer-move', 'b'],
    ];
    expect(posted('match', ...fields)?.answer).toEqual({ kind: 'match', pairs: { a: 'c' } });
  });

  it('takes the steps of an order from top to bottom', () => {
    expect(posted('order', ['answer', 'c'], ['answer', 'a'], ['answer', 'b'])).toEqual({
      answer: { kind: 'order', steps: ['c', 'a', 'b'] },
      moved: false,
    });
  });

  it('shifts a step when a page without script asks for it', () => {
    const steps: [string, string][] = [
      ['answer', 'c'],
      ['answer', 'a'],
      ['answer', 'b'],
    ];
    expect(posted('order', ...steps, ['answer-move', 'b up'])).toEqual({
      answer: { kind: 'order', steps: ['c', 'b', 'a'] },
      moved: true,
    });
    expect(posted('order', ...steps, ['answer-move', 'c down'])?.answer).toEqual({
      kind: 'order',
      steps: ['a', 'c', 'b'],
    });
  });

  it('cannot be read when it is no letter or of great length', () => {
    expect(posted('choice', ['answer', 'first'])).toBeNull();
    expect(posted('numeric', ['answer', '1'.repeat(41)])).toBeNull();
  });
});

describe('moving a step', () => {
  it('leaves the order alone at either end, and for a step that is not there', () => {
    expect(moved(['a', 'b'], 'a', -1)).toEqual(['a', 'b']);
    expect(moved(['a', 'b'], 'b', 1)).toEqual(['a', 'b']);
    expect(moved(['a', 'b'], 'z', 1)).toEqual(['a', 'b']);
  });
});

describe('the names of rings', () => {
  const face = (...written: string[]) => ({
    kind: 'point' as const,
    prompt: 'Point at it.',
    drawing: {
      width: 320,
      height: 200,
      alternative: 'A drawing.',
      shapes: written.map((text) => ({ kind: 'text' as const, x: 0, y: 0, text })),
    },
    spots: ['a', 'b', 'c'].map((id) => ({ id, x: 0, y: 0, where: id })),
  });

  it('are letters', () => {
    expect([...ringNames(face('north', '30°')).values()]).toEqual(['A', 'B', 'C']);
  });

  it('are none that the drawing has written on it', () => {
    expect([...ringNames(face('A', 'B', 'C')).values()]).toEqual(['P', 'Q', 'R']);
    expect([...ringNames(face('B', 'Q')).values()]).toEqual(['K', 'L', 'M']);
  });
});
