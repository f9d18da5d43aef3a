import type { TubeType } from './image-orientation';

/** A tube as its light sees it, millimetres. */
export type TubeOptics = {
  tubeType: TubeType;
  focalLengthMm: number;
  apertureMm: number;
  lengthMm: number;
};

/** What light meets on its way, by what it is for. */
export type LightPart =
  | 'lens'
  | 'corrector'
  | 'main-mirror'
  | 'small-mirror'
  | 'flat-mirror'
  | 'prism'
  | 'diagonal'
  | 'eyepiece';

/** Seen from the side: x from the tube's front end towards its back, y upward from its axis. */
export type Spot = { xMm: number; yMm: number };

type Element = { part: LightPart; at: Spot; halfMm: number } & (
  | { does: 'bend'; focalMm: number; reflects: boolean }
  /** A flat mirror by its normal, of length one. */
  | { does: 'fold'; normal: Spot }
);

/** Everything that light meets, in its order. */
export type LightTrain = {
  elements: readonly Element[];
  /** Where the light of a star in the middle of the field meets. */
  focus: Spot;
  /** Radius of what stands in the light at the front; nought for a lens alone. */
  shadowRadiusMm: number;
};

/** The eyepiece of low power that each of our telescopes has. */
const eyepieceFocalMm = 25;
const eyepieceHalfMm = 14;

const plus = (a: Spot, k: number, b: Spot): Spot => ({
  xMm: a.xMm + k * b.xMm,
  yMm: a.yMm + k * b.yMm,
});
const times = (a: Spot, b: Spot): number => a.xMm * b.xMm + a.yMm * b.yMm;
const reflected = (v: Spot, normal: Spot): Spot => plus(v, -2 * times(v, normal), normal);

const back: Spot = { xMm: 1, yMm: 0 };
const front: Spot = { xMm: -1, yMm: 0 };
const up: Spot = { xMm: 0, yMm: 1 };
const slantingUp: Spot = { xMm: Math.SQRT1_2, yMm: Math.SQRT1_2 };
const onAxis = (xMm: number): Spot => ({ xMm, yMm: 0 });

/** The normal of the flat mirror that turns one direction into another. */
function normalBetween(from: Spot, to: Spot): Spot {
  const difference = plus(to, -1, from);
  const length = Math.hypot(difference.xMm, difference.yMm);
  return { xMm: difference.xMm / length, yMm: difference.yMm / length };
}

const eyepieceBehind = (focus: Spot, way: Spot): Element => ({
  part: 'eyepiece',
  at: plus(focus, eyepieceFocalMm, way),
  halfMm: eyepieceHalfMm,
  does: 'bend',
  focalMm: eyepieceFocalMm,
  reflects: false,
});

/**
 * Where lenses and mirrors stand in a tube of these sizes. A plausible build from memory, so that light
 * comes to focus behind the back of a refractor and a Maksutov-Cassegrain and beside the front of a
 * reflector. The erecting prism, in which light is thrown back several times, is drawn as one bend.
 */
export function lightTrain(tube: TubeOptics): LightTrain {
  switch (tube.tubeType) {
    case 'refractor':
      return refractor(tube);
    case 'reflector':
      return reflector(tube);
    case 'maksutov-cassegrain':
      return closedTube(tube);
  }
}

function refractor({ focalLengthMm, apertureMm, lengthMm }: TubeOptics): LightTrain {
  const lensAt = lengthMm + 110 - focalLengthMm;
  const prismAt = lengthMm + 65;
  const focus = plus(onAxis(prismAt), lensAt + focalLengthMm - prismAt, slantingUp);
  return {
    focus,
    shadowRadiusMm: 0,
    elements: [
      {
        part: 'lens',
        at: onAxis(lensAt),
        halfMm: apertureMm / 2,
        does: 'bend',
        focalMm: focalLengthMm,
        reflects: false,
      },
      {
        part: 'prism',
        at: onAxis(prismAt),
        halfMm: 16,
        does: 'fold',
        normal: normalBetween(back, slantingUp),
      },
      eyepieceBehind(focus, slantingUp),
    ],
  };
}

/** How far the focus of a reflector stands from its tube's axis, beyond half the aperture. */
const sideways = 90;

function reflector({ focalLengthMm, apertureMm, lengthMm }: TubeOptics): LightTrain {
  const mirrorAt = lengthMm - 20;
  const toFocus = apertureMm / 2 + sideways;
  const flatAt = mirrorAt - (focalLengthMm - toFocus);
  const focus = plus(onAxis(flatAt), toFocus, up);
  // The cone of light is that wide where the flat mirror cuts it; slanting, the mirror is √2 as long.
  const shadowRadiusMm = ((apertureMm / 2) * toFocus) / focalLengthMm;
  return {
    focus,
    shadowRadiusMm,
    elements: [
      {
        part: 'main-mirror',
        at: onAxis(mirrorAt),
        halfMm: apertureMm / 2,
        does: 'bend',
        focalMm: focalLengthMm,
        reflects: true,
      },
      {
        part: 'flat-mirror',
        at: onAxis(flatAt),
        halfMm: shadowRadiusMm * Math.SQRT2,
        does: 'fold',
        normal: normalBetween(front, up),
      },
      eyepieceBehind(focus, up),
    ],
  };
}

/**
 * Two curved mirrors behind a weak lens. With the mirrors d apart and the focus b behind the main one,
 * its focal length is f₁ = dF/(F − d − b) and the small one's −pq/(q − p) with p = f₁ − d, q = d + b:
 * the two-mirror formulas of any book of telescope optics, from memory. The lens has no power here; its
 * work is to mend what a sphere gets wrong, which a first-order ray does not show.
 */
function closedTube({ focalLengthMm, apertureMm, lengthMm }: TubeOptics): LightTrain {
  const [smallAt, mirrorAt, diagonalAt] = [30, lengthMm - 30, lengthMm + 50];
  const apart = mirrorAt - smallAt;
  const behind = 140;
  const mainFocal = (apart * focalLengthMm) / (focalLengthMm - apart - behind);
  const [p, q] = [mainFocal - apart, apart + behind];
  const shadowRadiusMm = ((apertureMm / 2) * p) / mainFocal;
  const focus = plus(onAxis(diagonalAt), behind - (diagonalAt - mirrorAt), up);
  return {
    focus,
    shadowRadiusMm,
    elements: [
      {
        part: 'corrector',
        at: onAxis(smallAt - 8),
        halfMm: apertureMm / 2,
        does: 'bend',
        focalMm: Infinity,
        reflects: false,
      },
      {
        part: 'main-mirror',
        at: onAxis(mirrorAt),
        halfMm: apertureMm / 2,
        does: 'bend',
        focalMm: mainFocal,
        reflects: true,
      },
      {
        part: 'small-mirror',
        at: onAxis(smallAt),
        halfMm: shadowRadiusMm,
        does: 'bend',
        focalMm: (-p * q) / (q - p),
        reflects: true,
      },
      {
        part: 'diagonal',
        at: onAxis(diagonalAt),
        halfMm: 20,
        does: 'fold',
        normal: normalBetween(back, up),
      },
      eyepieceBehind(focus, up),
    ],
  };
}

export type LightRay = {
  points: readonly Spot[];
  met: readonly LightPart[];
  ends: 'in-the-eye' | 'on-the-card' | 'in-the-shadow';
};

/** Where rays begin, before the front end, and how far behind the eyepiece an eye waits. */
const [beforeFrontMm, toEyeMm] = [90, 30];

/**
 * The way of one ray, to first order: each lens or mirror bends it by height over focal length, and flat
 * mirrors throw it back at its own angle (any first book of optics). It meets the first lens or mirror
 * `heightMm` above the axis and comes from a star `tilt` (a slope, small) below the middle. Light above
 * `cardDownToMm` is stopped by a card in front; light in the shadow of the small mirror ends at its back.
 */
export function lightRay(
  train: LightTrain,
  { heightMm, tilt = 0, cardDownToMm = Infinity }: RayStart,
): LightRay {
  const [first] = train.elements;
  const firstAt = first?.at.xMm ?? 0;
  const start = { xMm: -beforeFrontMm, yMm: heightMm - tilt * (firstAt + beforeFrontMm) };
  const points: Spot[] = [start];
  const met: LightPart[] = [];
  const stopAt = (xMm: number) => plus(start, xMm - start.xMm, { xMm: 1, yMm: tilt });
  if (heightMm > cardDownToMm) return { points: [start, stopAt(-30)], met, ends: 'on-the-card' };
  if (Math.abs(heightMm) < train.shadowRadiusMm)
    return { points: [start, stopAt(shadowAtMm(train))], met, ends: 'in-the-shadow' };

  let [along, across] = [back, up];
  let way = plus(along, tilt, across);
  let from = start;
  for (const element of train.elements) {
    const facing = element.does === 'fold' ? element.normal : along;
    const step = times(plus(element.at, -1, from), facing) / times(way, facing);
    from = plus(from, step, way);
    points.push(from);
    met.push(element.part);
    if (element.does === 'fold') {
      [along, across, way] = [along, across, way].map((v) => reflected(v, element.normal)) as [
        Spot,
        Spot,
        Spot,
      ];
    } else {
      const slope =
        times(way, across) - times(plus(from, -1, element.at), across) / element.focalMm;
      along = element.reflects ? plus({ xMm: 0, yMm: 0 }, -1, along) : along;
      way = plus(along, slope, across);
    }
  }
  points.push(plus(from, toEyeMm, way));
  return { points, met, ends: 'in-the-eye' };
}

type RayStart = { heightMm: number; tilt?: number; cardDownToMm?: number };

/** Where the shadow of the small mirror begins. */
function shadowAtMm({ elements }: LightTrain): number {
  const small = elements.find(({ part }) => part === 'flat-mirror' || part === 'small-mirror');
  return small?.at.xMm ?? 0;
}

/** Parts that throw light back; a prism counts as a pair of mirrors and a bit, so it is left out. */
const mirrors: ReadonlySet<LightPart> = new Set([
  'main-mirror',
  'small-mirror',
  'flat-mirror',
  'diagonal',
] satisfies LightPart[]);
export const isMirror = (part: LightPart): boolean => mirrors.has(part);
