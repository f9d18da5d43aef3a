import { describe, expect, it } from 'vitest';
import { choice, point } from './build-item';
import { problemsOfDrawings } from './check-drawing';
import type { ItemDrawing, Shape } from '../drawings/drawing';

const drawn = (shapes: readonly Shape[]): ItemDrawing => ({
  width: 320,
  height: 200,
  alternative: 'A drawing.',
  shapes,
});
const text = (x: number, y: number, words: string, size = 14): Shape => ({
  kind: 'text',
  x,
  y,
  text: words,
  size,
});
const wrong = [
  { text: 'no', reason: 'No.' },
  { text: 'perhaps', reason: 'No.' },
];
const shown = (shapes: readonly Shape[]): string[] =>
  problemsOfDrawings(
    choice({
      prompt: 'Is it?',
      explanation: 'It is.',
      drawing: drawn(shapes),
      right: { text: 'yes', reason: 'Yes.' },
      wrong,
    }),
  );
const pointedAt = (
  shapes: readonly Shape[],
  [right, ...others]: readonly [{ x: number; y: number }, ...{ x: number; y: number }[]],
): string[] =>
  problemsOfDrawings(
    point({
      prompt: 'Which?',
      explanation: 'That.',
      drawing: drawn(shapes),
      right: { ...right, where: 'here', reason: 'Yes.' },
      wrong: others.map((spot, n) => ({ ...spot, where: `there ${String(n)}`, reason: 'No.' })),
    }),
  );

describe('what cannot be read in a drawing', () => {
  it('is nothing where two words stand apart', () => {
    expect(shown([text(10, 100, 'socket'), text(200, 100, 'switch')])).toEqual([]);
  });

  it('is a word over another', () => {
    expect(shown([text(10, 100, 'socket'), text(30, 104, 'switch')])).toEqual([
      '“socket” and “switch” lie over each other.',
    ]);
  });

  it('is a word that runs out of it, on any side', () => {
    for (const [x, y] of [
      [300, 100],
      [-20, 100],
      [100, 4],
      [100, 205],
    ] as const) {
      expect(shown([text(x, y, 'socket')])).toEqual(['“socket” runs out of the drawing.']);
    }
  });

  it('is a word in small type', () => {
    expect(shown([text(10, 100, 'socket', 9)])).toEqual(['“socket” is too small for a phone.']);
  });

  it('is a word that a ring cuts in two', () => {
    expect(pointedAt([text(60, 105, 'socket')], [{ x: 60, y: 100 }])).toEqual([
      'The ring “here” cuts through “socket”.',
    ]);
  });

  it('is no word that a ring goes round', () => {
    expect(pointedAt([text(96, 105, '2')], [{ x: 100, y: 100 }])).toEqual([]);
  });

  it('is no word at one corner of a ring, as its letter goes to another', () => {
    const atCorner = [text(112, 92, 'NE')];
    expect(pointedAt(atCorner, [{ x: 100, y: 100 }])).toEqual([]);
    const atAll = [
      text(112, 92, 'NE'),
      text(72, 92, 'NW'),
      text(112, 118, 'SE'),
      text(72, 118, 'SW'),
    ];
    expect(pointedAt(atAll, [{ x: 100, y: 100 }])).toContain(
      'The letter of the ring “here” lies over “NE”.',
    );
  });

  it('is two rings over each other', () => {
    expect(
      pointedAt(
        [],
        [
          { x: 100, y: 100 },
          { x: 110, y: 100 },
        ],
      ),
    ).toEqual(['The rings “here” and “there 0” lie over each other.']);
  });
});
