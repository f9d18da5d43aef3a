import { lightTrain, type LightRay, type LightTrain, type Spot } from '../optics/light-path';
import type { TubeOptics } from '../optics/light-path';
import type { Shape } from './drawing';

/** A telescope as it is drawn open, so that one sees its light. */
export type DrawnTube = TubeOptics & { name: string; diameterMm: number };

type TubeView = {
  /** Where the front end points to on the page. */
  facing: 'left' | 'right';
  rays: readonly LightRay[];
  /** A card over the front from above down to here. */
  cardDownToMm?: number;
  /** Room on the page, in the drawing's units. */
  width?: number;
  height?: number;
};

export type DrawnTubeShapes = {
  width: number;
  height: number;
  shapes: Shape[];
  /** A place of the tube on the page. */
  place: (spot: Spot) => { x: number; y: number };
};

/** What the picture spans, millimetres: light before the front, an eye behind the eyepiece. */
function extent(tube: DrawnTube, train: LightTrain) {
  const half = tube.diameterMm / 2 + 12;
  const eye = train.focus;
  return {
    left: -85,
    right: Math.max(tube.lengthMm, eye.xMm + 60) + 15,
    top: Math.max(half, eye.yMm + 75),
    bottom: -half,
  };
}

/** The tube cut open, seen from the side, with the ways of some rays. Drawn on the sky's own dark. */
export function drawTube(tube: DrawnTube, view: TubeView): DrawnTubeShapes {
  const { facing, rays, cardDownToMm, width = 320, height = 190 } = view;
  const train = lightTrain(tube);
  const box = extent(tube, train);
  const scale = Math.min(
    (width - 8) / (box.right - box.left),
    (height - 8) / (box.top - box.bottom),
  );
  const place = ({ xMm, yMm }: Spot) => {
    const across = (xMm - (box.left + box.right) / 2) * scale;
    return {
      x: round(width / 2 + (facing === 'left' ? across : -across)),
      y: round(height / 2 - (yMm - (box.top + box.bottom) / 2) * scale),
    };
  };
  const pen = penOf(place);
  const shapes: Shape[] = [
    { kind: 'rect', x: 0, y: 0, w: width, h: height, fill: 'sky' },
    ...walls(tube, train, pen),
    ...rays.map(({ points }) => pen.through(points, { stroke: 'sky-lamp', width: 1.2 })),
    ...train.elements.flatMap((element) => partShapes(tube, element, pen)),
    ...(cardDownToMm === undefined || cardDownToMm >= tube.apertureMm / 2
      ? []
      : [
          pen.through(
            [
              { xMm: -30, yMm: tube.diameterMm / 2 + 8 },
              { xMm: -30, yMm: cardDownToMm },
            ],
            { stroke: 'on-sky', width: 6 },
          ),
        ]),
  ];
  return { width, height, shapes, place };
}

const round = (value: number): number => Math.round(value * 10) / 10;

type Look = {
  stroke?: 'on-sky' | 'on-sky-soft' | 'sky-lamp' | 'sky-line';
  width?: number;
  fill?: 'on-sky-soft' | 'sky-line' | 'land';
  dashed?: boolean;
  closed?: boolean;
};
type Pen = {
  through: (spots: readonly Spot[], look: Look) => Shape;
  curve: (from: Spot, over: Spot, to: Spot, look: Look) => Shape;
};

function penOf(place: DrawnTubeShapes['place']): Pen {
  const at = (spot: Spot) => `${String(place(spot).x)} ${String(place(spot).y)}`;
  const path = (d: string, { closed = false, ...paint }: Look): Shape => ({
    kind: 'path',
    d: closed ? `${d} Z` : d,
    ...paint,
  });
  return {
    through: (spots, look) => path(`M${spots.map(at).join(' L')}`, look),
    curve: (from, over, to, look) => path(`M${at(from)} Q${at(over)} ${at(to)}`, look),
  };
}

const at = (xMm: number, yMm: number): Spot => ({ xMm, yMm });
const wall: Look = { stroke: 'on-sky', width: 2.5 };

function walls(tube: DrawnTube, { focus, elements }: LightTrain, pen: Pen): Shape[] {
  const { lengthMm, tubeType, diameterMm } = tube;
  const half = diameterMm / 2;
  const both = (fromMm: number, toMm: number, yMm: number) =>
    [1, -1].map((side) => pen.through([at(fromMm, side * yMm), at(toMm, side * yMm)], wall));
  const across = (xMm: number, fromMm: number, toMm: number) =>
    [1, -1].map((side) => pen.through([at(xMm, side * fromMm), at(xMm, side * toMm)], wall));
  switch (tubeType) {
    case 'refractor': {
      const lensAt = elements[0]?.at.xMm ?? 0;
      return [
        ...both(0, lensAt + 20, half + 6),
        ...both(lensAt + 20, lengthMm, half),
        ...across(lensAt + 20, half, half + 6),
        ...across(lengthMm, 20, half),
        ...both(lengthMm, lengthMm + 45, 20),
      ];
    }
    case 'reflector': {
      const gap = 26;
      const side = (fromMm: number, toMm: number) =>
        pen.through([at(fromMm, half), at(toMm, half)], wall);
      return [
        ...[side(0, focus.xMm - gap), side(focus.xMm + gap, lengthMm)],
        pen.through([at(0, -half), at(lengthMm, -half), at(lengthMm, half)], wall),
        ...[-gap, gap].map((beside) =>
          pen.through([at(focus.xMm + beside, half), at(focus.xMm + beside, focus.yMm - 18)], wall),
        ),
      ];
    }
    case 'maksutov-cassegrain':
      return [
        ...both(0, lengthMm, half),
        ...across(lengthMm, 22, half),
        ...both(lengthMm, lengthMm + 22, 20),
      ];
  }
}

function partShapes(tube: DrawnTube, element: LightTrain['elements'][number], pen: Pen): Shape[] {
  const { part, at: middle, halfMm } = element;
  const off = (xMm: number, yMm: number) => at(middle.xMm + xMm, middle.yMm + yMm);
  const mirror: Look = { stroke: 'on-sky-soft', width: 5 };
  switch (part) {
    case 'lens':
    case 'corrector': {
      const bulge = part === 'lens' ? 16 : 22;
      const way = part === 'lens' ? -1 : 1;
      const look: Look = { stroke: 'on-sky', width: 1.5 };
      return [
        pen.curve(off(0, halfMm), off(-bulge * -way, 0), off(0, -halfMm), look),
        pen.curve(off(6, halfMm), off(6 + bulge, 0), off(6, -halfMm), look),
      ];
    }
    case 'main-mirror': {
      const hollow = pen.curve(off(-6, halfMm), off(8, 0), off(-6, -halfMm), mirror);
      if (tube.tubeType === 'reflector') return [hollow];
      // The light comes back through a hole in its middle.
      const hole = 20;
      return [1, -1].map((side) =>
        pen.through([off(-6, side * halfMm), off(0, side * hole)], mirror),
      );
    }
    case 'small-mirror':
      return [pen.curve(off(-2, halfMm), off(6, 0), off(-2, -halfMm), mirror)];
    case 'flat-mirror':
    case 'prism':
    case 'diagonal': {
      if (element.does !== 'fold') return [];
      const { xMm: nx, yMm: ny } = element.normal;
      const long = Math.min(halfMm, 26);
      return [pen.through([off(-ny * long, nx * long), off(ny * long, -nx * long)], mirror)];
    }
    case 'eyepiece':
      return eyepieceShapes(tube, middle, pen);
  }
}

function eyepieceShapes(tube: DrawnTube, middle: Spot, pen: Pen): Shape[] {
  const c = Math.SQRT1_2;
  const [along, across] =
    tube.tubeType === 'refractor' ? [at(c, c), at(c, -c)] : [at(0, 1), at(1, 0)];
  const corner = (a: number, b: number) =>
    at(middle.xMm + a * along.xMm + b * across.xMm, middle.yMm + a * along.yMm + b * across.yMm);
  return [
    pen.through([corner(-14, 15), corner(10, 15), corner(10, -15), corner(-14, -15)], {
      stroke: 'on-sky',
      width: 2,
      closed: true,
    }),
  ];
}
