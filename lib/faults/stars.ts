import type { Evening, Fault, Light } from './faulty-evening';

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

/** The evening with another light of a kind taken for the first star, or for the second. */
function mistaking(evening: Evening, kind: Light['kind']): Evening[] {
  const [first, second] = evening.habits.centres;
  const [forFirst, forSecond] = evening.mistakable;
  return [
    ...forFirst
      .filter((light) => light.kind === kind)
      .map((light) => centring(evening, [light, second])),
    ...forSecond
      .filter((light) => light.kind === kind)
      .map((light) => centring(evening, [first, light])),
  ];
}

export const wrongStar: Fault = {
  id: 'wrong-star',
  cures: ['align-again-right-stars'],
  forms: (evening) => mistaking(evening, 'star'),
};

export const planet: Fault = {
  id: 'planet',
  cures: ['align-again-right-stars'],
  forms: (evening) => mistaking(evening, 'planet'),
};
