import type { TubeType } from '../optics/image-orientation';
import { isMirror, lightTrain, type LightPart } from '../optics/light-path';
import type { DrawnTube } from './tube-drawing';

export const kindName: Readonly<Record<TubeType, string>> = {
  refractor: 'refractor',
  reflector: 'reflector',
  'maksutov-cassegrain': 'Maksutov-Cassegrain',
};

export const partName: Readonly<Record<LightPart, string>> = {
  lens: 'the front lens',
  corrector: 'the curved window in front',
  'main-mirror': 'the main mirror',
  'small-mirror': 'the mirror spot on the window',
  'flat-mirror': 'the small flat mirror',
  prism: 'the erecting prism',
  diagonal: 'the star diagonal',
  eyepiece: 'the eyepiece',
};

/** What one sees of each kind from outside. */
export const looks: Readonly<Record<TubeType, string>> = {
  refractor: 'A refractor has a lens in front and the eyepiece at its back.',
  reflector:
    'A reflector is open in front, has its mirror at the back and its eyepiece at the side.',
  'maksutov-cassegrain':
    'A Maksutov-Cassegrain is short, closed by a curved window, and has its eyepiece at the back.',
};

/** Something that is so of some tubes and not of others; told by the light’s own path. */
export type Trait = {
  /** After “It …”. */
  text: string;
  holds: (tube: DrawnTube) => boolean;
  /** How it is with this tube. */
  why: (tube: DrawnTube) => string;
};

const meets = (tube: DrawnTube, ...parts: readonly LightPart[]): boolean =>
  lightTrain(tube).elements.some(({ part }) => parts.includes(part));

const front: Readonly<Record<TubeType, string>> = {
  refractor: 'A lens closes its front.',
  reflector: 'Its front is open; the light falls straight down to the mirror.',
  'maksutov-cassegrain': 'A curved window closes its front.',
};
const eyepieceSits = (tube: DrawnTube): string =>
  lightTrain(tube).focus.xMm > tube.lengthMm
    ? 'Its light comes to focus behind its back end.'
    : 'A flat mirror throws its light out at the side, near the front.';
const gathers = (tube: DrawnTube): string =>
  meets(tube, 'main-mirror')
    ? 'A hollow mirror at its back gathers the light.'
    : 'The lens in front gathers the light.';

export const traits: readonly Trait[] = [
  {
    text: 'lets the light in through glass',
    holds: (tube) => meets(tube, 'lens', 'corrector'),
    why: ({ tubeType }) => front[tubeType],
  },
  {
    text: 'has an open front, with no glass in it',
    holds: (tube) => !meets(tube, 'lens', 'corrector'),
    why: ({ tubeType }) => front[tubeType],
  },
  {
    text: 'has its eyepiece at the side, near the front',
    holds: (tube) => lightTrain(tube).focus.xMm < tube.lengthMm / 2,
    why: eyepieceSits,
  },
  {
    text: 'is looked into from behind its back end',
    holds: (tube) => lightTrain(tube).focus.xMm > tube.lengthMm,
    why: eyepieceSits,
  },
  {
    text: 'gathers its light with a lens',
    holds: (tube) => meets(tube, 'lens'),
    why: gathers,
  },
  {
    text: 'gathers its light with a hollow mirror',
    holds: (tube) => meets(tube, 'main-mirror'),
    why: gathers,
  },
  {
    text: 'is less than half as long as its focal length',
    holds: ({ lengthMm, focalLengthMm }) => lengthMm < focalLengthMm / 2,
    why: ({ lengthMm, focalLengthMm }) =>
      `Its tube is ${String(lengthMm)} mm long, its focal length is ${String(focalLengthMm)} mm.`,
  },
  {
    text: 'has a small mirror standing in the middle of its light',
    holds: (tube) => lightTrain(tube).shadowRadiusMm > 0,
    why: (tube) =>
      lightTrain(tube).shadowRadiusMm > 0
        ? `A mirror ${String(Math.round(2 * lightTrain(tube).shadowRadiusMm))} mm wide stands in its light.`
        : 'Nothing stands in its light.',
  },
  {
    text: 'has a hole in the middle of its main mirror',
    holds: (tube) => meets(tube, 'small-mirror'),
    why: (tube) =>
      meets(tube, 'small-mirror')
        ? 'Its light comes back out through that hole.'
        : meets(tube, 'main-mirror')
          ? 'Its mirror is whole: the light leaves at the side.'
          : 'It has no mirror in the tube at all.',
  },
  {
    text: 'needs no mirror inside its tube',
    holds: (tube) =>
      !lightTrain(tube).elements.some(({ part }) => isMirror(part) && part !== 'diagonal'),
    why: (tube) =>
      meets(tube, 'main-mirror')
        ? 'Mirrors inside the tube do the work.'
        : 'Its lens does the work; the prism sits behind the tube.',
  },
];

/** Said so that the drawing can be followed without being seen, and names nothing’s purpose. */
export function cutOpenInWords(tube: DrawnTube, facing: 'left' | 'right'): string {
  const far = facing === 'left' ? 'right' : 'left';
  const inside: Readonly<Record<TubeType, string>> = {
    refractor: `A lens stands inside the ${facing}-hand end. Behind the ${far}-hand end a prism slants upward, and above it sits an eyepiece.`,
    reflector: `The ${facing}-hand end is open. Inside the ${far}-hand end a hollow mirror looks back along the tube. Near the ${facing}-hand end a small mirror stands slantwise on the axis, and above it an eyepiece sits on a short pipe in the wall.`,
    'maksutov-cassegrain': `A curved window with a mirror spot in its middle closes the ${facing}-hand end. Inside the ${far}-hand end stands a mirror with a hole. Behind it a slanting mirror stands outside the tube, and above that sits an eyepiece.`,
  };
  return `${tube.name}’s tube cut open, seen from the side, its front to the ${facing}. ${inside[tube.tubeType]}`;
}
