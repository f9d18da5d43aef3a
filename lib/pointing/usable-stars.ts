import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import { seenAsMagnitude } from '../sky/extinction';
import { horizonAltitudeDeg } from '../sky/horizon';
import type { UnusableReason } from './answer-key';
import type { Scenario } from './scenario';

/** What is judged: a star's place (refracted) and nature. */
export type JudgedStar = {
  azimuthDeg: number;
  altitudeDeg: number;
  magnitude: number;
  named: boolean;
  largeAmplitudeVariable: boolean;
};

/** How far every limit is moved in the star's favour; negative makes them stricter. */
export type Slack = { angleDeg: number; magnitudes: number };

export const noSlack: Slack = { angleDeg: 0, magnitudes: 0 };
/** What a student's choice is given at every limit: nobody measures finer by eye. */
export const deadBand: Slack = { angleDeg: 0.1, magnitudes: 0.05 };
/** For asking whether a night would still have a pair if every limit fell against the star. */
export const againstTheStar: Slack = { angleDeg: -0.1, magnitudes: -0.05 };

/** An alignment star must outshine the faintest visible one by this much to be found with ease. */
const visibilityMargin = 1;

/**
 * All that speaks against a star as an alignment star, in the order a learner would check it; empty
 * when it is usable. Limits are the scenario's, inclusive; below the horizon only what holds there
 * is named, since nothing shines through the ground.
 */
export function unusableReasons(
  star: JudgedStar,
  scenario: Pick<Scenario, 'settings' | 'sky' | 'horizon' | 'clouds'>,
  sky: { nakedEyeLimit: number; moonDirection: Vector3 },
  slack: Slack = noSlack,
): UnusableReason[] {
  const { settings } = scenario;
  const { azimuthDeg, altitudeDeg, magnitude } = star;
  const reasons: UnusableReason[] = [];
  if (!star.named) reasons.push({ code: 'no-name' });
  if (magnitude > settings.faintestMagnitude + slack.magnitudes) {
    reasons.push({
      code: 'too-faint',
      magnitude,
      faintestMagnitude: settings.faintestMagnitude,
    });
  }
  if (star.largeAmplitudeVariable) reasons.push({ code: 'variable' });
  if (altitudeDeg < settings.lowestAltitudeDeg - slack.angleDeg) {
    reasons.push({
      code: 'too-low',
      altitudeDeg,
      lowestAltitudeDeg: settings.lowestAltitudeDeg,
    });
  }
  if (altitudeDeg > settings.highestAltitudeDeg + slack.angleDeg) {
    reasons.push({
      code: 'too-high',
      altitudeDeg,
      highestAltitudeDeg: settings.highestAltitudeDeg,
    });
  }
  const skyline = horizonAltitudeDeg(scenario.horizon, azimuthDeg);
  const marginDeg = settings.horizonMarginDeg;
  if (altitudeDeg < skyline + marginDeg - slack.angleDeg) {
    reasons.push({ code: 'behind-horizon', altitudeDeg, horizonAltitudeDeg: skyline, marginDeg });
  }
  if (altitudeDeg < 0) return reasons;

  const seenAs = seenAsMagnitude(magnitude, scenario.sky.extinction, altitudeDeg);
  if (seenAs > sky.nakedEyeLimit - visibilityMargin + slack.magnitudes) {
    reasons.push({
      code: 'sky-too-bright',
      seenAsMagnitude: seenAs,
      nakedEyeLimit: sky.nakedEyeLimit,
    });
  }
  const direction = directionFromAzAlt(azimuthDeg, altitudeDeg);
  const fromMoon = separationDeg(direction, sky.moonDirection);
  if (fromMoon <= settings.moonDistanceDeg - slack.angleDeg) {
    reasons.push({
      code: 'near-moon',
      distanceDeg: fromMoon,
      moonDistanceDeg: settings.moonDistanceDeg,
    });
  }
  const hidden = scenario.clouds.some(
    (cloud) =>
      separationDeg(direction, directionFromAzAlt(cloud.azimuthDeg, cloud.altitudeDeg)) <=
      cloud.radiusDeg - slack.angleDeg,
  );
  if (hidden) reasons.push({ code: 'behind-cloud' });
  return reasons;
}
