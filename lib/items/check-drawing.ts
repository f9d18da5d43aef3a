import type { ItemDrawing } from '../drawings/drawing';
import type { ItemBody } from './item';
import { cornersOfNames, nameAt, nameRadius, ringRadius } from './ring-names';
import { boxesOverlap, reachOf, textBox, type Box } from './text-box';

/** So much of a text may lie outside or below a ring: its box is an estimate. In a drawing's units. */
const slack = 1.5;
/** Rims may cross a little; the list under the drawing is there for fingers that miss (WCAG 2.2, 2.5.8). */
const leastBetweenSpots = 20;
/** Below that nobody reads it on a phone (drawing.ts). */
const leastTextSize = 12;

/** Everything that cannot be read or pressed in a question's drawings, in sentences to its author. */
export function problemsOfDrawings(item: ItemBody): string[] {
  const drawings = [item.drawing, item.afterwards].filter((one) => one !== undefined);
  return [...drawings.flatMap(problemsOfTexts), ...problemsOfSpots(item)];
}

const textsIn = ({ shapes }: ItemDrawing) =>
  shapes.flatMap((shape) =>
    shape.kind === 'text'
      ? [{ text: shape.text, box: textBox(shape), size: shape.size ?? 14 }]
      : [],
  );

function problemsOfTexts(drawing: ItemDrawing): string[] {
  const { width, height } = drawing;
  const texts = textsIn(drawing);
  const runsOut = ({ left, right, top, bottom }: Box): boolean =>
    Math.min(left, top, width - right, height - bottom) < -slack;
  return [
    ...texts.flatMap(({ text, box, size }) => [
      ...(runsOut(box) ? [`“${text}” runs out of the drawing.`] : []),
      ...(size < (leastTextSize * width) / 320 ? [`“${text}” is too small for a phone.`] : []),
    ]),
    ...hiddenTexts(drawing).map((text) => `Something is drawn over “${text}”.`),
    ...texts.flatMap((one, index) =>
      texts
        .slice(index + 1)
        .filter(({ box }) => boxesOverlap(one.box, box))
        .map(({ text }) => `“${one.text}” and “${text}” lie over each other.`),
    ),
  ];
}

/** Texts over which something filled was drawn afterwards. */
function hiddenTexts({ shapes }: ItemDrawing): string[] {
  return shapes.flatMap((shape, index) => {
    if (shape.kind !== 'text') return [];
    const box = textBox(shape);
    const covers = shapes.slice(index + 1).some((later) => {
      if (later.kind === 'circle')
        return (
          later.fill !== undefined && reachOf({ x: later.cx, y: later.cy }, box) < later.r - slack
        );
      if (later.kind !== 'rect' || later.fill === undefined || later.turnDeg !== undefined)
        return false;
      const { x, y, w, h } = later;
      return boxesOverlap(box, { left: x, right: x + w, top: y, bottom: y + h });
    });
    return covers ? [shape.text] : [];
  });
}

/** Rings that hide a text or each other. */
function problemsOfSpots(item: ItemBody): string[] {
  if (item.kind !== 'point') return [];
  const { drawing, spots } = item;
  const unit = drawing.width / 320;
  const texts = textsIn(drawing);
  const corners = cornersOfNames(drawing, spots);
  return spots.flatMap((spot, index) => {
    const corner = corners[index];
    const name = corner === undefined ? spot : nameAt(spot, corner, unit);
    return [
      ...texts
        .filter(({ box }) => reachOf(name, box) < nameRadius * unit - slack)
        .map(({ text }) => `The letter of the ring “${spot.where}” lies over “${text}”.`),
      ...texts
        .filter(({ box }) => crossesRim(spot, box, ringRadius * unit))
        .map(({ text }) => `The ring “${spot.where}” cuts through “${text}”.`),
      ...spots
        .slice(index + 1)
        .filter(({ x, y }) => Math.hypot(x - spot.x, y - spot.y) < leastBetweenSpots * unit)
        .map(({ where }) => `The rings “${spot.where}” and “${where}” lie over each other.`),
    ];
  });
}

/** The rim runs through the box: part of it lies within, part without. */
function crossesRim(spot: { x: number; y: number }, box: Box, radius: number): boolean {
  const farthest = Math.max(
    ...[box.left, box.right].flatMap((x) =>
      [box.top, box.bottom].map((y) => Math.hypot(x - spot.x, y - spot.y)),
    ),
  );
  return reachOf(spot, box) < radius - 2 * slack && farthest > radius + 2 * slack;
}
