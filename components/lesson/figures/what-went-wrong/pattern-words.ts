import type { FaultKind, PatternFacts } from './pattern-facts';

const deg = (value: number): string =>
  Math.abs(value) < 0.05 ? 'less than 0.1°' : `${Math.abs(value).toFixed(1)}°`;

const patterns: Readonly<Record<FaultKind, string>> = {
  zero: 'Everywhere too high by the same amount, and never to the side.',
  north: 'Everywhere to the right, and the less the higher the star. Heights are right.',
  lean: 'Too high in the east, too low in the west, drawn sideways in between.',
  clock: 'Round the pole: most for stars far from it, hardly at all close to it.',
  latitude:
    'In height in the south and the north, the other way round in the two; least due east and west.',
  bump: 'Nothing: before the alignment the leg had not been kicked.',
};

/** What the arrows show. */
export function patternWords(
  kind: FaultKind,
  stage: 'before' | 'after',
  facts: PatternFacts,
): string {
  const { outcome, mostDeg, leastDeg } = facts;
  if (stage === 'before')
    return mostDeg < 0.05
      ? 'Every slew ends on its star.'
      : `${patterns[kind]} From ${deg(leastDeg)} to ${deg(mostDeg)}.`;
  if (outcome !== null && outcome.kind !== 'agree') {
    const lean =
      outcome.kind === 'base-on-its-side' ? ` by ${outcome.baseTiltDeg.toFixed(1)}°` : '';
    return `The mount refuses the two stars: its base would have to lean${lean}. That is a clue as well.`;
  }
  return mostDeg < 0.05
    ? 'The two stars have taken it out: every go-to ends on its star.'
    : `The two stars could not take this out. Go-tos miss by ${deg(leastDeg)} to ${deg(mostDeg)}, differently in each part of the sky.`;
}
