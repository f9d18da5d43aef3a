import 'server-only';
import { bestStars, type OperatorStars } from '../alignment/operator-stars';
import { perfectLog, type OperatorOptions } from '../alignment/perfect-operator';
import type { RunInput } from '../alignment/run-input';
import { loadCatalogue } from '../content/sky-catalogue';
import type { RunSubmission } from '../grading/run-submission';
import type { AnswerKey } from '../pointing/answer-key';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import type { RunVariant } from '../variants/run-variant';
import type { DemoSkill } from './demo-choice';

/**
 * A run of that quality: by the true sky throughout; hurried, with the play left in the second star;
 * or set by a compass nobody corrected, on another star than the one that was meant, and believed. Null
 * on an evening that has no pair to align on.
 */
export function demoRun(
  variant: RunVariant,
  answerKey: AnswerKey,
  skill: DemoSkill,
): RunSubmission | null {
  const input: RunInput = { ...variant, catalogue: loadCatalogue() };
  const stars = bestStars(input);
  if (stars === null) return null;
  return { log: perfectLog(input, stars, slipsOf(skill, stars, answerKey)) };
}

/** The same run broken off when its first star was confirmed. */
export function demoRunBegun(variant: RunVariant, answerKey: AnswerKey): RunSubmission {
  const log = demoRun(variant, answerKey, 'middling')?.log ?? [];
  const first = log.findIndex((action) => action.do === 'this-is-the-star');
  return { log: log.slice(0, first + 1) };
}

function slipsOf(skill: DemoSkill, stars: OperatorStars, answerKey: AnswerKey): OperatorOptions {
  switch (skill) {
    case 'best':
      return {};
    case 'middling':
      return {
        startErrorDeg: { azimuth: 9, altitude: 3 },
        first: { offByShareOfField: 0.6, offTowardsDeg: 200 },
        second: { offByShareOfField: 0.5, offTowardsDeg: 80, againstFinalApproach: true },
      };
    case 'poor': {
      const hip = neighbourOf(stars[1], answerKey);
      return {
        startErrorDeg: { azimuth: 12, altitude: -4 },
        first: { offByShareOfField: 0.7, offTowardsDeg: 130 },
        second: hip === null ? { offByShareOfField: 0.9 } : { instead: { hip } },
        trust: true,
      };
    }
  }
}

/** The nearest star that somebody could take for the one that was meant; null where it stands alone. */
function neighbourOf(meant: number, { stars }: AnswerKey): number | null {
  const there = stars.find(({ hip }) => hip === meant);
  if (there === undefined) return null;
  const direction = directionFromAzAlt(there.azimuthDeg, there.altitudeDeg);
  const [nearest] = stars
    .filter(({ hip, altitudeDeg }) => hip !== meant && altitudeDeg > 5)
    .map(({ hip, azimuthDeg, altitudeDeg }) => ({
      hip,
      away: separationDeg(direction, directionFromAzAlt(azimuthDeg, altitudeDeg)),
    }))
    .filter(({ away }) => away < 20)
    .toSorted((a, b) => a.away - b.away);
  return nearest?.hip ?? null;
}
