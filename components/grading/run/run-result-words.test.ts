import { describe, expect, test } from 'vitest';
import type { RunAdvice, RunResult, RunStarResult } from '@/lib/grading/run-result';
import {
  achievedInWords,
  approachInWords,
  beforeConfirmText,
  besideInWords,
  confirmedInWords,
  judgementInWords,
  runAdviceInWords,
  runCriterionInWords,
  startInWords,
  sunGateInWords,
  thirdInWords,
} from './run-result-words';

/** One of each code: the compiler refuses a list that lacks one. */
const advice: {
  [Code in RunAdvice['code']]: [Omit<Extract<RunAdvice, { code: Code }>, 'code'>, string[]];
} = {
  'well-done': [{}, ['Nothing to change']],
  sun: [{ distanceDeg: 12.34 }, ['12.3°', 'would blind', 'caps stay on']],
  'start-position': [
    { azimuthErrorDeg: -8.25, altitudeErrorDeg: 0.1 },
    ['8.3° off north', 'first slew'],
  ],
  'start-by-compass': [{ declinationDeg: -12.7 }, ['12.7° west of true north', 'to the right']],
  'planet-for-star': [
    { which: 2, planet: 'Jupiter', name: 'Capella' },
    ['second star', 'Jupiter as Capella', 'twinkle'],
  ],
  'wrong-star': [
    { which: 1, reallyName: 'Menkalinan', name: 'Capella', separationDeg: 7.64 },
    ['Menkalinan as Capella', '7.6° apart'],
  ],
  'empty-field': [{ which: 1, name: 'Capella', offsetArcmin: 96 }, ['Capella', '1.6°', 'Look in']],
  'off-centre': [
    { which: 2, offsetArcmin: 31, shareOfRadius: 0.41 },
    ['second star', '31′', '4 tenths'],
  ],
  'final-approach': [{ which: 1, backlashArcmin: 4.6 }, ['first star', '5′', 'final approach']],
  pair: [{ hitRate: 0.52, bestHitRate: 0.91 }, ['52 of 100', 'the best pair 91']],
  'trusted-a-bad-one': [{ hitRate: 0.03 }, ['3 of 100', 'third star']],
  'doubted-a-good-one': [{ hitRate: 0.88 }, ['88 of 100', 'trust']],
  slow: [{ minutes: 14.2, minutesAllowed: 10 }, ['14 min', '10 min']],
};

test.each(Object.entries(advice))('%s: says what was so and what to do', (code, [facts, parts]) => {
  // The facts belong to the code: the type of the list above has checked it.
  const words = runAdviceInWords({ code, ...facts } as RunAdvice);
  for (const part of parts) expect(words).toContain(part);
  expect(words).not.toMatch(/undefined|NaN|Infinity/);
  expect(words).toMatch(/[.:]$/);
});

const star: RunStarResult = {
  hip: 24608,
  name: 'Capella',
  azimuthDeg: 60,
  altitudeDeg: 40,
  reallyId: 'hip-24608',
  reallyName: 'Capella',
  right: true,
  offsetArcmin: 6.2,
  fieldRadiusArcmin: 75,
  backlashArcmin: 0,
  finalApproachKept: true,
  path: [],
};

describe('a star', () => {
  test('is told in one sentence by what was really in the eyepiece', () => {
    expect(confirmedInWords(star, 6.2)).toBe(
      'It was the right star: Capella, 6′ from the middle of the eyepiece.',
    );
    const wrong = { ...star, right: false, reallyName: 'Jupiter', reallyId: 'jupiter' } as const;
    expect(confirmedInWords(wrong, 456)).toBe(
      'It was the wrong star: Jupiter was in the eyepiece, and Capella was 7.6° away.',
    );
    expect(confirmedInWords(wrong, null)).toBe(
      'It was the wrong star: Jupiter was in the eyepiece.',
    );
  });

  test('that was not there is told by how far away it stood, against the field and in its unit', () => {
    const empty = { ...star, right: false, reallyName: null, reallyId: null, offsetArcmin: 180 };
    expect(confirmedInWords({ ...empty, fieldRadiusArcmin: 27 }, 180)).toBe(
      'No star was in the eyepiece, only empty sky: Capella was 3.0° away, and the eyepiece shows what lies within 0.5° of its middle.',
    );
    expect(confirmedInWords({ ...empty, offsetArcmin: 44, fieldRadiusArcmin: 27 }, 44)).toMatch(
      /was 44′ away, .* within 27′ of/,
    );
  });

  test('that was missed is told by where it stood, right or left and up or down', () => {
    expect(besideInWords({ rightArcmin: -126, upArcmin: 24 })).toBe('2.1° to the left and 0.4° up');
    expect(besideInWords({ rightArcmin: 12, upArcmin: -3 })).toBe('12′ to the right and 3′ down');
    expect(besideInWords({ rightArcmin: 1, upArcmin: -375 })).toBe('6.3° down');
  });

  test('whose last moves went the wrong way is told what the play took', () => {
    expect(approachInWords(star)).toMatch(/^Kept/);
    expect(approachInWords({ ...star, finalApproachKept: false, backlashArcmin: 3.8 })).toBe(
      'Not kept: the gears lay on the other side, and the readings are 4′ off.',
    );
  });
});

describe('the alignment', () => {
  test('is held against the best hand with the same telescope and stars', () => {
    expect(achievedInWords({ achievedHitRate: 0.79, perfectHitRate: 0.84 })).toBe(
      'With your alignment 79 of 100 targets would be in the eyepiece; the best hand would have got 84 with this telescope and these two stars.',
    );
    expect(achievedInWords({ achievedHitRate: 0.86, perfectHitRate: 0.84 })).toMatch(
      /no hand could have done better/,
    );
    expect(achievedInWords({ achievedHitRate: null, perfectHitRate: 0.84 })).toMatch(
      /^There is no alignment to go by; the best hand would have got 84/,
    );
    expect(achievedInWords({ achievedHitRate: null, perfectHitRate: null })).toBeNull();
  });

  test('was judged rightly, wrongly, or could be judged either way', () => {
    expect(judgementInWords({ trusted: true, deserved: 'trust' })).toBe(
      'You would have trusted it. It deserved trust, so you judged it rightly.',
    );
    expect(judgementInWords({ trusted: true, deserved: 'doubt' })).toBe(
      'You would have trusted it. It deserved doubt.',
    );
    expect(judgementInWords({ trusted: false, deserved: 'either' })).toMatch(/either judgement/);
  });

  test('is tested by the third star, in the field or out of it', () => {
    const third = { hip: 1, name: 'Deneb', missArcmin: 9, inField: true, fieldRadiusArcmin: 27 };
    expect(thirdInWords(third)).toMatch(/^Deneb was in the eyepiece, 9′/);
    expect(thirdInWords({ ...third, missArcmin: 90, inField: false })).toMatch(
      /missed it by 1\.5°, and the field reaches 0\.5°/,
    );
  });
});

test('the start is told with its side and its height', () => {
  const start = { azimuthErrorDeg: 0, altitudeErrorDeg: 0, declinationDeg: 0 };
  expect(startInWords(start)).toBe('The tube faced true north and was level.');
  expect(startInWords({ ...start, azimuthErrorDeg: -7.5, altitudeErrorDeg: 1.2 })).toBe(
    'The tube faced 7.5° to the left of true north, 1.2° above level.',
  );
});

test('the Sun’s gate names when, how near, and why', () => {
  const words = sunGateInWords({ id: 'sun', atMs: 95_000, distanceDeg: 21.4 });
  for (const part of ['1 min 35 s', '21.4°', '30°', 'blinds', 'not yet'])
    expect(words).toContain(part);
});

test('the moments of a replay are told back from the confirm', () => {
  expect(beforeConfirmText(0)).toBe('When it was confirmed');
  expect(beforeConfirmText(72)).toBe('1 min 12 s before it was confirmed');
});

const ids: readonly RunResult['criteria'][number]['id'][] = [
  'start-position',
  'first-star',
  'first-centring',
  'second-star',
  'second-centring',
  'pair',
  'judgement',
  'time',
];
test('every part of the mark has a name of its own', () => {
  const names = ids.map((id) => runCriterionInWords({ id, earned: 0, possible: 1 }, { stars: [] }));
  expect(new Set(names).size).toBe(ids.length);
});
