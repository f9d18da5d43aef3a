import type { SkyLight } from '../alignment/lights';
import type { Evening, Fault } from './faulty-evening';

/* What was brought to the middle was not what the computer asked for. */

const centring = (evening: Evening, centres: Evening['habits']['centres']): Evening => ({
  ...evening,
  habits: { ...evening.habits, centres },
});

export const swappedStars: Fault = {
  id: 'swapped-stars',
  cures: ['align-again-right-stars'],
  forms: (evening) => {
    const [first, second] = evening.habits.centres;
    return [centring(evening, [second, first])];
  },
};

/** The evening with another light taken for the first star, or for the second. */
function mistaking(evening: Evening, isOfKind: (light: SkyLight) => boolean): Evening[] {
  const [first, second] = evening.habits.centres;
  const [forFirst, forSecond] = evening.mistakable;
  return [
    ...forFirst.filter(isOfKind).map((light) => centring(evening, [light, second])),
    ...forSecond.filter(isOfKind).map((light) => centring(evening, [first, light])),
  ];
}

export const wrongStar: Fault = {
  id: 'wrong-star',
  cures: ['align-again-right-stars'],
  forms: (evening) => mistaking(evening, (light) => 'hip' in light),
};

export const planet: Fault = {
  id: 'planet',
  cures: ['align-again-right-stars'],
  forms: (evening) => mistaking(evening, (light) => 'planet' in light),
};
