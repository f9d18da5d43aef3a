import type { Shape } from '../drawings/drawing';
import { boxesOverlap, textBox, type Box } from './text-box';

type Text = Extract<Shape, { kind: 'text' }>;
type Look = Pick<Text, 'size' | 'tone' | 'bold'>;
/** A name, the dot it belongs to and how far the dot reaches. */
type NamedDot = { name: string; x: number; y: number; r: number };

/** Beside the dot first, then over and under it; the last ones are a little farther off. */
const sides = [
  { right: 1, down: 0 },
  { right: -1, down: 0 },
  { right: 0, down: -1 },
  { right: 0, down: 1 },
  { right: 0.75, down: -0.75 },
  { right: -0.75, down: -0.75 },
  { right: 0.75, down: 0.75 },
  { right: -0.75, down: 0.75 },
] as const;

/**
 * Names of dots in a drawing, each where it lies over no other name and over nothing of `keepFree`; where
 * there is no such place, where it lies over least.
 */
export function placeNames(
  dots: readonly NamedDot[],
  { look, keepFree, within }: { look: Look; keepFree: readonly Box[]; within: Box },
): Text[] {
  const taken: Box[] = [...keepFree];
  return dots.map((dot) => {
    const tries = [4, 9].flatMap((gap) =>
      sides.map((side) => textBesideDot(dot, { look, side, gap })),
    );
    const costs = tries.map((text) => {
      const box = textBox(text);
      const out =
        box.left < within.left ||
        box.right > within.right ||
        box.top < within.top ||
        box.bottom > within.bottom;
      return taken.filter((other) => boxesOverlap(box, other)).length + (out ? 2 : 0);
    });
    const best = tries[costs.indexOf(Math.min(...costs))];
    if (best === undefined) throw new Error('there are places beside a dot');
    taken.push(textBox(best));
    return best;
  });
}

function textBesideDot(
  { name, x, y, r }: NamedDot,
  { look, side, gap }: { look: Look; side: (typeof sides)[number]; gap: number },
): Text {
  const { size = 14 } = look;
  const { right, down } = side;
  const anchor = right > 0 ? 'start' : right < 0 ? 'end' : 'middle';
  // A base line so far below the middle of the letters.
  const toBase = 0.35 * size;
  const half = 0.45 * size;
  const across = Math.abs(right) === 1 ? r + gap : 0.7 * (r + gap);
  return {
    kind: 'text',
    x: round(x + Math.sign(right) * (right === 0 ? 0 : across)),
    y: round(
      y + toBase + Math.sign(down) * (down === 0 ? 0 : r + gap + half - (right === 0 ? 0 : 5)),
    ),
    text: name,
    anchor,
    ...look,
  };
}

const round = (value: number): number => Math.round(10 * value) / 10;

/** The square round a dot. */
export const boxRound = ({ x, y }: { x: number; y: number }, r: number): Box => ({
  left: x - r,
  right: x + r,
  top: y - r,
  bottom: y + r,
});
