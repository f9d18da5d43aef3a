import { describe, expect, test } from 'vitest';
import type { PairAdvice, PairFigures, PairStarResult } from '@/lib/grading/pair-result';
import type { UnusableReason } from '@/lib/pointing/answer-key';
import {
  adviceInWords,
  cautionInWords,
  errorInWords,
  hitRateInWords,
  noGeometryInWords,
  reasonInWords,
} from './pair-result-words';

const reasons: readonly [UnusableReason, readonly string[]][] = [
  [{ code: 'no-name' }, ['neither a name nor a letter']],
  [{ code: 'too-faint', magnitude: 3.21, faintestMagnitude: 2.5 }, ['3.2', '2.5']],
  [{ code: 'variable' }, ['changes']],
  [{ code: 'too-low', altitudeDeg: 12.4, lowestAltitudeDeg: 20 }, ['12°', '20°']],
  [{ code: 'too-high', altitudeDeg: 72.2, highestAltitudeDeg: 70 }, ['72°', '70°']],
  [
    { code: 'behind-horizon', altitudeDeg: 22, horizonAltitudeDeg: 24, marginDeg: 2 },
    ['22°', '24°', '2.0°'],
  ],
  [{ code: 'sky-too-bright', seenAsMagnitude: 2.9, nakedEyeLimit: 3.4 }, ['2.9', '3.4']],
  [{ code: 'near-moon', distanceDeg: 3.1, moonDistanceDeg: 5 }, ['3.1°', '5.0°']],
  [{ code: 'behind-cloud' }, ['behind cloud']],
];

test.each(reasons)('the reason %o is told with its figures', (reason, parts) => {
  const words = reasonInWords(reason);
  for (const part of parts) expect(words).toContain(part);
});

const star: PairStarResult = {
  hip: 11767,
  name: 'Polaris',
  azimuthDeg: 0,
  altitudeDeg: 54,
  usable: true,
  reasons: [],
  cautions: [],
  lookAlike: null,
  cautionNamed: false,
};
const caution = {
  neighbour: 'jupiter',
  neighbourName: 'Jupiter',
  separationDeg: 4.27,
  fainterByMagnitudes: -1.84,
} as const;

const advice: readonly [PairAdvice, readonly string[]][] = [
  [{ code: 'well-chosen' }, ['Well chosen']],
  [{ code: 'said-none-rightly' }, ['Right']],
  [{ code: 'said-none-wrongly', usablePairs: 7 }, ['7 pairs']],
  [{ code: 'there-was-none' }, ['no good pair', '40 of 100 marks at most']],
  [
    {
      code: 'star-unusable',
      hip: 11767,
      reason: { code: 'too-low', altitudeDeg: 11, lowestAltitudeDeg: 20 },
    },
    ['Polaris', '11°', '20°'],
  ],
  [
    { code: 'look-alike-missed', hip: 11767, caution },
    ['Polaris', 'Jupiter', '4.3°', '1.8 magnitudes brighter'],
  ],
  [{ code: 'too-close', separationDeg: 12.6 }, ['13°']],
  [{ code: 'same-azimuth', azimuthGapDeg: 6.4 }, ['6.4°']],
  [{ code: 'nearly-opposite', separationDeg: 163 }, ['163°']],
  [{ code: 'better-pair', hitRate: 0.816, bestHitRate: 0.969 }, ['82 of 100', '97']],
];

test.each(advice)('the advice %o names what it is about', (code, parts) => {
  const words = adviceInWords(code, { stars: [star], best: null });
  for (const part of parts) expect(words).toContain(part);
});

describe('nothing for how the two lie', () => {
  const none = { id: 'geometry', earned: 0, possible: 50 } as const;
  const pair: PairFigures = {
    stars: [1, 2],
    names: ['A', 'B'],
    positions: [star, star],
    separationDeg: 60,
    expectedErrorArcmin: 12,
    hitRate: 0.4,
  };

  test.each([
    [
      [
        { ...star, usable: true },
        { ...star, usable: false },
      ],
      pair,
      'both stars may serve',
    ],
    [[{ ...star, usable: true }], null, 'no two stars'],
    [[{ ...star, usable: true }], pair, 'half the best share'],
  ])('is explained (%#)', (stars, best, reason) => {
    expect(noGeometryInWords(none, { stars, best })).toContain(reason);
  });

  test('needs no explaining where something is earned, or beside another part', () => {
    const lacking = { stars: [{ ...star, usable: false }], best: null };
    expect(noGeometryInWords({ ...none, earned: 1 }, lacking)).toBeNull();
    expect(noGeometryInWords({ ...none, id: 'first-star' }, lacking)).toBeNull();
  });
});

describe('figures', () => {
  test('a neighbour that looks as bright is said to be so', () => {
    expect(cautionInWords({ ...caution, fainterByMagnitudes: 0.01 })).toContain('just as bright');
    expect(cautionInWords({ ...caution, fainterByMagnitudes: 0.5 })).toContain(
      'only 0.5 magnitudes fainter',
    );
  });

  test('errors are told in arcminutes, large ones in degrees, an undetermined one not at all', () => {
    expect(errorInWords(7.26)).toBe('7′');
    expect(errorInWords(26.4)).toBe('26′');
    expect(errorInWords(75)).toBe('1.3°');
    expect(errorInWords(192)).toBe('3.2°');
    expect(errorInWords(null)).toBe('cannot be told');
  });

  test('the hit rate is told as a count, beside the best pair’s', () => {
    const figures = (hitRate: number): PairFigures => ({
      stars: [1, 2],
      names: ['A', 'B'],
      positions: [star, star],
      separationDeg: 60,
      expectedErrorArcmin: 12,
      hitRate,
    });
    expect(hitRateInWords({ chosen: figures(0.82), best: figures(0.97) })).toBe(
      '82 of 100 targets would be in the eyepiece; with the best pair, 97.',
    );
    expect(hitRateInWords({ chosen: null, best: figures(0.97) })).toContain('97 of 100');
    expect(hitRateInWords({ chosen: null, best: null })).toBeNull();
  });
});
