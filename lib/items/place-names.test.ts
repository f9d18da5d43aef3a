import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxRound, placeNames } from './place-names';
import { boxesOverlap, textBox } from './text-box';

const within = { left: 0, right: 320, top: 0, bottom: 320 };
const look = { size: 13 };
const boxesOf = (
  dots: readonly { name: string; x: number; y: number }[],
  keepFree = dots.map((dot) => boxRound(dot, 5)),
) =>
  placeNames(
    dots.map((dot) => ({ ...dot, r: 5 })),
    { look, keepFree, within },
  ).map(textBox);

describe('names beside dots', () => {
  it('stand to the right where there is room', () => {
    const [box] = boxesOf([{ name: 'Vega', x: 100, y: 100 }]);
    expect(box?.left).toBe(109);
    // As high as its dot, but for half of the tails.
    expect(Math.abs(((box?.top ?? 0) + (box?.bottom ?? 0)) / 2 - 100)).toBeLessThan(2);
  });

  it('stay inside the drawing', () => {
    const [box] = boxesOf([{ name: 'Alpheratz', x: 310, y: 100 }]);
    expect(box?.right).toBeLessThan(310);
  });

  it('hide neither each other nor a dot, for two stars as close as charts have them', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 80, max: 240 }),
        fc.integer({ min: 80, max: 240 }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        fc.integer({ min: 14, max: 60 }),
        (x, y, angle, far) => {
          const dots = [
            { name: 'Betelgeuse', x, y },
            { name: 'Aldebaran', x: x + far * Math.cos(angle), y: y + far * Math.sin(angle) },
          ];
          const boxes = boxesOf(dots);
          const [one, other] = boxes;
          if (one === undefined || other === undefined) throw new Error('two names were placed');
          expect(boxesOverlap(one, other)).toBe(false);
          for (const box of boxes) {
            for (const dot of dots) expect(boxesOverlap(box, boxRound(dot, 4))).toBe(false);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
