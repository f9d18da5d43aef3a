import { expect, it } from 'vitest';
import {
  spoiltFacts,
  startingThird,
} from '@/components/lesson/figures/align-on-two-stars/spoilt-facts';
import { alignOnTwoStarsQuantities } from '@/lib/content/quantities/align-on-two-stars';
import type { ReckoningSources } from '@/lib/content/reckoning';
import { loadKits } from '@/lib/content/sky-catalogue';

/** The lesson on aligning tells in its text what its figure shows: two reckonings of one mount. */
it('the text of the lesson on aligning says what its figure shows', () => {
  const wren = loadKits().find(({ id }) => id === 'wren');
  if (wren === undefined) throw new Error('no Wren');
  const refuse = (): never => {
    throw new Error('not asked for here');
  };
  const sources: ReckoningSources = {
    kit: () => wren,
    place: (word) => {
      const [azimuthDeg = NaN, altitudeDeg = NaN] = word.split('/').map(Number);
      return { azimuthDeg, altitudeDeg, magnitude: null };
    },
    star: refuse,
    sky: refuse,
    figure: refuse,
  };
  const ask = (name: string, ...words: string[]) =>
    alignOnTwoStarsQuantities[name]?.value(words, sources);
  const shown = (spoil: 'wrong' | 'edge') =>
    spoiltFacts({ computer: 'solved-zero', fieldRadiusArcmin: 27 }, spoil, startingThird);
  expect(ask('two-star-hits', 'wren', '224.6/42.8')).toBeCloseTo(shown('wrong').hits ?? NaN, 6);
  expect(ask('two-star-hits', 'wren', '220/44.55')).toBeCloseTo(shown('edge').hits ?? NaN, 6);
  expect(ask('third-miss', '224.6/42.8', '320/35')).toBeCloseTo(
    (shown('wrong').thirdMissArcmin ?? NaN) / 60,
    6,
  );
});
