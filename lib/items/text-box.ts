import type { Shape } from '../drawings/drawing';

type Text = Extract<Shape, { kind: 'text' }>;
export type Box = { left: number; right: number; top: number; bottom: number };

/**
 * Advance widths of Source Sans 3, regular, with tabular figures, in hundredths of the type size, as a
 * browser measures them (the font is bundled: @fontsource-variable/source-sans-3 5.3).
 */
const widths: readonly (readonly [number, string])[] = [
  [20, ' '],
  [26, "ijlI.,:;'’′"],
  [30, 'ft()!'],
  [34, 'r°/-'],
  [43, 'csz?″“”'],
  [47, 'vxyL–J'],
  [50, '0123456789aegkFY−+=×'],
  [54, 'bdhnopquVXEASTZC'],
  [60, 'BKPRDG'],
  [66, 'HNOQU'],
  [73, 'wM'],
  [83, 'mW%½→—'],
];
const widthOf = new Map(
  widths.flatMap(([width, signs]) => Array.from(signs, (sign): [string, number] => [sign, width])),
);
/** A sign that is not in the table is taken for a broad one. */
const unknownWidth = 60;
/** Semibold, against regular; measured on a word. */
const boldIsWider = 1.04;

/** The ground a text takes in its drawing: from the top of its capitals to the foot of its tails. */
export function textBox({ x, y, text, size = 14, anchor = 'start', bold = false }: Text): Box {
  const hundredths = Array.from(text).reduce(
    (sum, sign) => sum + (widthOf.get(sign) ?? unknownWidth),
    0,
  );
  const width = (hundredths / 100) * size * (bold ? boldIsWider : 1);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - 0.68 * size, bottom: y + 0.2 * size };
}

/** Boxes may touch by this much: letters seldom fill them. In a drawing's units. */
const mayTouch = 1.5;

export const boxesOverlap = (one: Box, other: Box): boolean =>
  Math.min(one.right, other.right) - Math.max(one.left, other.left) > mayTouch &&
  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > mayTouch;

/** How far a point is from a box; 0 inside. */
export const reachOf = ({ x, y }: { x: number; y: number }, box: Box): number =>
  Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom));
