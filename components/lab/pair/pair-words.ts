import type { PairTask } from './pair-lab-sky';
import {
  brightnessInWords,
  positionInWords,
  roundedAltitudeDeg,
  roundedAzimuthDeg,
} from '@/components/sky/position-words';
import type { SkyLight } from '@/components/sky/sky-lights';

/** What is to be done, in the learner's terms. Any night may have no good pair. */
export const taskWords: Readonly<Record<PairTask, { title: string; text: string }>> = {
  'free-pair': {
    title: 'Choose two alignment stars',
    text: 'Find two stars that would make this telescope point well over the whole sky. Mind how high they stand, what covers or surrounds them, and how they lie to each other.',
  },
  partner: {
    title: 'Find the best partner',
    text: 'The first star is given. Find the second one that makes the best pair with it.',
  },
  'mount-proposes': {
    title: 'Take or refuse what the mount proposes',
    text: 'The mount proposes one star after another. It knows neither your skyline nor the clouds, and it does not know what lies nearby. Keep two good ones.',
  },
};

/** "azimuth 135°, altitude 40°", to the 5° that an eye can judge. */
export const degreesInWords = (light: Pick<SkyLight, 'azimuthDeg' | 'altitudeDeg'>): string =>
  `azimuth about ${roundedAzimuthDeg(light.azimuthDeg)}°, altitude about ${roundedAltitudeDeg(light.altitudeDeg)}°`;

/** How a light shines: the one thing that tells a planet from a star at a glance. */
export const shineInWords = (light: SkyLight): string =>
  light.twinkles ? 'It twinkles.' : 'It shines steadily: it does not twinkle.';

/** Everything an eye can tell of a light. */
export function lightInWords(light: SkyLight): string {
  const veil = light.veiled ? ' It glimmers through cloud.' : '';
  return `${positionInWords(light.azimuthDeg, light.altitudeDeg)}; ${brightnessInWords(light.seenAs)}. ${shineInWords(light)}${veil}`;
}

export const planetIsNoStar =
  'That light does not twinkle: it is no star. It can be named as a look-alike.';

export const ordinalOf = (index: number): 'first' | 'second' => (index === 0 ? 'first' : 'second');
