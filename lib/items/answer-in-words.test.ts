import { expect, test } from 'vitest';
import { answerInWords } from './answer-in-words';
import type { ItemAnswer } from './item-answer';
import type { ItemFace } from './item-face';

const prompt = 'What now?';
const lettered = [
  { id: 'a', text: 'legs out' },
  { id: 'b', text: 'tray in' },
  { id: 'c', text: 'tube on' },
];
const drawing = { width: 320, height: 200, alternative: 'A tripod.', shapes: [] };
const match: ItemFace = {
  kind: 'match',
  prompt,
  left: lettered.slice(0, 2),
  right: [
    { id: 'x', text: 'first' },
    { id: 'y', text: 'second' },
  ],
};
const spot = { id: 'a', x: 1, y: 1, where: 'at the upper end' };

test.each<[ItemFace, ItemAnswer, string]>([
  [{ kind: 'choice', prompt, options: lettered }, { kind: 'choice', option: 'b' }, 'tray in'],
  [
    { kind: 'several', prompt, options: lettered },
    { kind: 'several', options: ['c', 'a'] },
    'tube on; legs out',
  ],
  [{ kind: 'several', prompt, options: lettered }, { kind: 'several', options: [] }, 'nothing'],
  [
    { kind: 'order', prompt, steps: lettered },
    { kind: 'order', steps: ['b', 'a', 'c'] },
    'tray in → legs out → tube on',
  ],
  [match, { kind: 'match', pairs: { a: 'y' } }, 'legs out – second; tray in – nothing'],
  [
    { kind: 'numeric', prompt, unit: 'degrees' },
    { kind: 'numeric', text: ' 12.5 ' },
    '12.5 degrees',
  ],
  [{ kind: 'numeric', prompt, unit: 'degrees' }, { kind: 'numeric', text: '−3°' }, '−3°'],
  [
    { kind: 'point', prompt, drawing, spots: [spot] },
    { kind: 'point', option: 'a' },
    'at the upper end',
  ],
  [{ kind: 'choice', prompt, options: lettered }, { kind: 'numeric', text: '3' }, 'nothing'],
])('%j answered by %j reads “%s”', (face, answer, said) => {
  expect(answerInWords(face, answer)).toBe(said);
});
