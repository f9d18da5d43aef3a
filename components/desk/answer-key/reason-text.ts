import type { AnswerKeyStar, Caution, UnusableReason } from '@/lib/pointing/answer-key';

const degrees = (value: number): string => `${value.toFixed(1)}°`;

/** Why a star does not serve, with the figures that decided it, short enough for a table. */
export function reasonText(reason: UnusableReason): string {
  switch (reason.code) {
    case 'no-name':
      return 'has no name to find it by';
    case 'too-faint':
      return `too faint: magnitude ${reason.magnitude.toFixed(1)}, limit ${reason.faintestMagnitude.toFixed(1)}`;
    case 'variable':
      return 'changes its brightness too much to be known by it';
    case 'too-low':
      return `too low: ${degrees(reason.altitudeDeg)}, at least ${degrees(reason.lowestAltitudeDeg)}`;
    case 'too-high':
      return `too high: ${degrees(reason.altitudeDeg)}, at most ${degrees(reason.highestAltitudeDeg)}`;
    case 'behind-horizon':
      return `behind the skyline: ${degrees(reason.altitudeDeg)}, needs ${degrees(reason.horizonAltitudeDeg + reason.marginDeg)} there`;
    case 'sky-too-bright':
      return `lost in the bright sky: looks like magnitude ${reason.seenAsMagnitude.toFixed(1)}, the eye reaches ${reason.nakedEyeLimit.toFixed(1)}`;
    case 'near-moon':
      return `${degrees(reason.distanceDeg)} from the Moon, at least ${degrees(reason.moonDistanceDeg)}`;
    case 'behind-cloud':
      return 'behind cloud';
  }
}

export function cautionText(caution: Caution): string {
  const difference = caution.fainterByMagnitudes;
  const looks =
    Math.abs(difference) < 0.05
      ? 'looks as bright'
      : `looks ${Math.abs(difference).toFixed(1)} mag ${difference > 0 ? 'fainter' : 'brighter'}`;
  return `${caution.neighbourName}, ${degrees(caution.separationDeg)} away, ${looks}`;
}

/**
 * Stars that a student might take and must not: bright enough to be noticed and above the ground,
 * brightest first. The key itself lists every star of the catalogue.
 */
export const temptingStars = (stars: readonly AnswerKeyStar[]): AnswerKeyStar[] =>
  stars
    .filter((star) => !star.usable && star.altitudeDeg > 0 && star.magnitude <= 2.6)
    .toSorted((a, b) => a.magnitude - b.magnitude);
