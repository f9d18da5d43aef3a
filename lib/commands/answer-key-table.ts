import type { AnswerKey, AnswerKeyStar, UnusableReason } from '../pointing/answer-key';
import type { Scenario } from '../pointing/scenario';
import type { SkyFrame } from '../sky/sky-frame';
import { rows } from './table-rows';

const pairsShown = 20;

/** The answer key as tables for people: usable stars, bright stars that are not, best pairs. */
export function answerKeyTable(scenario: Scenario, frame: SkyFrame, key: AnswerKey): string {
  const names = new Map(key.stars.map((star) => [star.hip, star.name]));
  const usable = key.stars.filter((star) => star.usable);
  const passedOver = key.stars.filter(
    (star) =>
      !star.usable && star.altitudeDeg > 0 && star.magnitude <= scenario.settings.faintestMagnitude,
  );
  const fixed = (value: number, digits: number) => value.toFixed(digits);
  const place = (star: AnswerKeyStar) => [
    star.name,
    fixed(star.azimuthDeg, 1),
    fixed(star.altitudeDeg, 1),
    fixed(star.magnitude, 2),
  ];
  const sections = [
    `${scenario.localTime} ${scenario.timeZone} (${key.instant}), naked-eye limit ${fixed(key.nakedEyeLimit, 1)}`,
    ...(frame.sun.altitudeDeg > -0.833
      ? ['CAUTION: the Sun is up. Tubes and finders stay capped until sunset.']
      : []),
    `Usable stars: ${usable.length}`,
    rows(
      ['star', 'azimuth', 'altitude', 'V', 'could be mistaken for'],
      usable.map((star) => [
        ...place(star),
        star.cautions.map((caution) => caution.neighbourName).join(', '),
      ]),
    ),
    `Bright stars that are up but will not do: ${passedOver.length}`,
    rows(
      ['star', 'azimuth', 'altitude', 'V', 'why not'],
      passedOver.map((star) => [...place(star), star.reasons.map(inWords).join('; ')]),
    ),
    key.pairs.length === 0
      ? 'No pair of usable stars.'
      : `Best pairs (${Math.min(pairsShown, key.pairs.length)} of ${key.pairs.length})`,
    rows(
      ['first star', 'second star', 'apart', 'error', 'in the eyepiece', 'mark'],
      key.pairs
        .slice(0, pairsShown)
        .map((pair) => [
          names.get(pair.stars[0]) ?? '',
          names.get(pair.stars[1]) ?? '',
          `${fixed(pair.separationDeg, 1)}°`,
          pair.expectedErrorArcmin === null
            ? 'undetermined'
            : `${fixed(pair.expectedErrorArcmin, 1)}′`,
          `${fixed(100 * pair.hitRate, 1)} %`,
          fixed(pair.mark, 1),
        ]),
    ),
  ];
  return sections.filter((section) => section !== '').join('\n\n');
}

function inWords(reason: UnusableReason): string {
  switch (reason.code) {
    case 'no-name':
      return 'has no name or letter';
    case 'too-faint':
      return `fainter than ${reason.faintestMagnitude}`;
    case 'variable':
      return 'brightness varies much';
    case 'too-low':
      return `below ${reason.lowestAltitudeDeg}°`;
    case 'too-high':
      return `above ${reason.highestAltitudeDeg}°`;
    case 'behind-horizon':
      return `not ${reason.marginDeg}° clear of the skyline (${reason.horizonAltitudeDeg.toFixed(1)}°)`;
    case 'sky-too-bright':
      return `looks like ${reason.seenAsMagnitude.toFixed(1)}, too near the limit ${reason.nakedEyeLimit.toFixed(1)}`;
    case 'near-moon':
      return `${reason.distanceDeg.toFixed(1)}° from the Moon`;
    case 'behind-cloud':
      return 'behind cloud';
  }
}
