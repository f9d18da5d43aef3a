import { legIndices, type TripodSite } from '../../levelling/tripod';
import { vialMm, type BubblePlace } from '../../levelling/vial';
import { degreesToRadians, radiansToDegrees } from '../../units/angle';
import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { legNames } from './leaning-head';
import { clockWords, figures } from './words';

const width = 320;
const height = 300;
const middle = { x: 160, y: 150 };
/** Drawing units for a millimetre of the vial. */
const perMm = 10;

type Place = Pick<BubblePlace, 'eastMm' | 'northMm'>;

/** Where a place in the vial lies in the drawing. */
export const spotAt = ({ eastMm, northMm }: Place): { x: number; y: number } => ({
  x: Math.round(10 * (middle.x + perMm * eastMm)) / 10,
  y: Math.round(10 * (middle.y - perMm * northMm)) / 10,
});

/** A place so far from the vial's middle, in a direction clockwise from the top. */
export const placeAt = (mm: number, clockwiseDeg: number): Place => ({
  eastMm: mm * Math.sin(degreesToRadians(clockwiseDeg)),
  northMm: mm * Math.cos(degreesToRadians(clockwiseDeg)),
});

/** "4 mm from the middle, towards half past 7"; to half a millimetre, as an eye reads it. */
export function placeWords({ eastMm, northMm }: Place): string {
  const mm = Math.round(2 * Math.hypot(eastMm, northMm)) / 2;
  if (mm === 0) return 'in the middle of the ring';
  const towards = clockWords(radiansToDegrees(Math.atan2(eastMm, northMm)));
  return `${figures(mm, 1)} mm from the middle, towards ${towards}`;
}

/** "Leg A stands at 2 o’clock, leg B at 6 o’clock, leg C at 10 o’clock." */
export const legsWords = (site: TripodSite): string =>
  `Leg ${legIndices
    .map((leg) => `${legNames[leg]} stands at ${clockWords(site.legs[leg].azimuthDeg)}`)
    .join(', leg ')}.`;

const bubbleShapes = (place: Place, look: 'full' | 'dashed'): Shape[] => {
  const { x, y } = spotAt(place);
  const r = perMm * vialMm.bubbleRadius;
  return look === 'full'
    ? [
        { kind: 'circle', cx: x, cy: y, r, fill: 'sky-lamp', stroke: 'on-sky', width: 2 },
        { kind: 'circle', cx: x, cy: y, r: 2, fill: 'sky' },
      ]
    : [{ kind: 'circle', cx: x, cy: y, r, stroke: 'on-sky', width: 2, dashed: true }];
};

/**
 * A round vial from above with the legs around it; circles every 2 mm, the ring of 3.5 mm strong.
 * `bubble` is full, `ghost` dashed: where it stood before.
 */
export function vialDrawing(vial: {
  site: TripodSite;
  bubble?: Place;
  ghost?: Place;
  alternative: string;
}): ItemDrawing {
  const circle = (r: number): Shape => ({
    kind: 'circle',
    cx: middle.x,
    cy: middle.y,
    r: perMm * r,
    stroke: 'sky-line',
    width: 1,
    dashed: true,
  });
  const labels = legIndices.flatMap((leg): Shape[] => {
    const azimuth = degreesToRadians(vial.site.legs[leg].azimuthDeg);
    const at = (r: number) => ({
      x: middle.x + r * Math.sin(azimuth),
      y: middle.y - r * Math.cos(azimuth),
    });
    const [from, to, name] = [at(perMm * vialMm.glassRadius), at(128), at(137)];
    return [
      { kind: 'line', x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke: 'ink', width: 6 },
      {
        kind: 'text',
        x: name.x,
        y: name.y + 6,
        text: legNames[leg],
        size: 17,
        tone: 'ink',
        anchor: 'middle',
        bold: true,
      },
    ];
  });
  return {
    width,
    height,
    alternative: vial.alternative,
    shapes: [
      {
        kind: 'circle',
        cx: middle.x,
        cy: middle.y,
        r: perMm * vialMm.glassRadius,
        fill: 'sky',
        stroke: 'strong',
        width: 3,
      },
      ...[2, 4, 6, 8, 10].map(circle),
      {
        kind: 'circle',
        cx: middle.x,
        cy: middle.y,
        r: perMm * vialMm.ringRadius,
        stroke: 'on-sky',
        width: 2.5,
      },
      ...(vial.ghost === undefined ? [] : bubbleShapes(vial.ghost, 'dashed')),
      ...(vial.bubble === undefined ? [] : bubbleShapes(vial.bubble, 'full')),
      ...labels,
    ],
  };
}

/** The same with its words made from what it shows. */
export const vialShowing = (site: TripodSite, bubble: Place, ghost?: Place): ItemDrawing =>
  vialDrawing({
    site,
    bubble,
    ...(ghost === undefined ? {} : { ghost }),
    alternative: `A round vial from above. ${legsWords(site)} ${
      ghost === undefined
        ? `The bubble stands ${placeWords(bubble)}.`
        : `Before, the bubble stood ${placeWords(ghost)}. Now it stands ${placeWords(bubble)}.`
    }`,
  });

/** A vial without its bubble, to point into. */
export const emptyVial = (site: TripodSite): ItemDrawing =>
  vialDrawing({ site, alternative: `A round vial from above. ${legsWords(site)}` });
