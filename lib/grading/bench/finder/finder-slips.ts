import type { SettingState } from '../../../finder/setting';
import { dotResidualArcmin } from '../../../finder/dot-residual';
import { sizeArcmin } from '../../../finder/sights';
import type { FinderVariant } from '../../../variants/bench/finder/finder-variant';
import {
  apartDeg,
  askedSizeArcmin,
  bestByDay,
  bySun,
  centringShare,
  checkedHigh,
  clockwiseDeg,
  dotShare,
  fieldJudgedRightly,
  lockedByDay,
  searchedLow,
  sizeShare,
  targetShare,
} from './finder-criteria';
import type { FinderSlip } from './finder-result';
import { sightsAt, type FinderSights } from './finder-sights';
import type { FinderAnswers } from './finder-submission';

type Work = {
  variant: FinderVariant;
  state: SettingState;
  sights: FinderSights;
  answers: FinderAnswers;
};

/** What went wrong and how far, worst first: the choice, then the hand, then the steps. */
export const finderSlips = (work: Work): FinderSlip[] => [
  ...choiceSlips(work),
  ...answerSlips(work),
  ...handSlips(work),
  ...stepSlips(work),
];

function choiceSlips({ variant, state, sights }: Work): FinderSlip[] {
  const { template, eyepieces } = variant;
  if (template === 'near-then-predict' || template === 'set-by-another') return [];
  const slips: FinderSlip[] = [];
  if (template === 'day-then-dusk') {
    if (!sights.moment.dusk) slips.push({ code: 'not-refined' });
    const dayLock = lockedByDay(state);
    const bySunlight = dayLock === null ? null : sightsAt(variant, dayLock);
    if (bySunlight === null) slips.push({ code: 'day-left-out' });
    else slips.push(...dayChoice(variant, bySunlight));
    return slips;
  }
  const { target, parallax } = sights;
  if (bySun(sights)) slips.push(...dayChoice(variant, sights));
  else if (target.distanceM !== null && targetShare(sights, eyepieces.high.radiusArcmin) < 1) {
    slips.push({
      code: 'near-target',
      name: target.name,
      distanceM: target.distanceM,
      parallaxArcmin: sizeArcmin(parallax),
    });
  }
  return slips;
}

function dayChoice(
  variant: FinderVariant,
  sights: Pick<FinderSights, 'target' | 'fromSunDeg'>,
): FinderSlip[] {
  const { name, distanceM } = sights.target;
  if (bySun(sights)) {
    return [{ code: 'target-by-the-sun', name, fromSunDeg: sights.fromSunDeg ?? 0 }];
  }
  const best = bestByDay(variant);
  return best !== null && distanceM !== null && distanceM < best.distanceM
    ? [{ code: 'nearer-than-needed', name, distanceM, betterName: best.name }]
    : [];
}

function handSlips({ variant, state, sights }: Work): FinderSlip[] {
  const { target, offCentre, gap } = sights;
  const fieldRadiusArcmin = variant.eyepieces.high.radiusArcmin;
  const off = offCentre === null ? 180 * 60 : sizeArcmin(offCentre);
  const beside = gap === null ? 180 * 60 : sizeArcmin(gap);
  const badlyCentred = centringShare(sights, fieldRadiusArcmin) < 1;
  const dotOff = dotShare(sights) < 1;
  const untouched = state.turns[0] === 0 && state.turns[1] === 0;
  // The dot was brought to the target by the tube, which is what a finder is for once it is set.
  if (untouched && off > fieldRadiusArcmin && beside < off / 2) {
    return [{ code: 'tube-moved-to-the-dot', name: target.name, offArcmin: off }];
  }
  return [
    ...(badlyCentred
      ? [{ code: 'not-centred' as const, name: target.name, offArcmin: off, fieldRadiusArcmin }]
      : []),
    ...(dotOff
      ? [{ code: 'dot-beside-target' as const, name: target.name, gapArcmin: beside }]
      : []),
  ];
}

function stepSlips({ variant, state, sights }: Work): FinderSlip[] {
  const { low, high } = variant.eyepieces;
  const slips: FinderSlip[] = [];
  if (sights.moment.capsOn) slips.push({ code: 'locked-under-the-cap' });
  else if (!checkedHigh(variant, sights)) slips.push({ code: 'not-checked-in-high-power' });
  if (state.searchedWith !== null && !searchedLow(variant, state)) {
    slips.push({
      code: 'high-power-first',
      lowRadiusArcmin: low.radiusArcmin,
      highRadiusArcmin: high.radiusArcmin,
    });
  }
  return slips;
}

function answerSlips({ variant, sights, answers }: Work): FinderSlip[] {
  const { template, setOnBefore, eyepieces } = variant;
  const slips: FinderSlip[] = [];
  if (template === 'set-by-another' && setOnBefore !== null) {
    const { setOnM } = answers;
    const reallyM = setOnBefore.distanceM;
    if (setOnM !== null && setOnM !== reallyM) {
      const apartMm = Math.hypot(variant.finder.rightMm, variant.finder.upMm);
      slips.push({
        code: 'cause-misjudged',
        saidM: setOnM,
        reallyM,
        saidArcmin: dotResidualArcmin({ apartMm, distanceM: setOnM }),
        reallyArcmin: dotResidualArcmin({ apartMm, distanceM: reallyM }),
      });
    }
    return [...slips, ...sizeSlip(variant, sights, answers)];
  }
  if (template !== 'near-then-predict') return slips;
  slips.push(...directionSlip(sights, answers), ...sizeSlip(variant, sights, answers));
  for (const which of ['low', 'high'] as const) {
    if (fieldJudgedRightly(variant, sights, answers, which)) continue;
    const { focalLengthMm, radiusArcmin } = eyepieces[which];
    const reallyArcmin = sizeArcmin(sights.parallax);
    slips.push({
      code: 'field-misjudged',
      eyepieceMm: focalLengthMm,
      radiusArcmin,
      reallyArcmin,
      tookTheWholeField: reallyArcmin > radiusArcmin && reallyArcmin < 2 * radiusArcmin,
    });
  }
  return slips;
}

function sizeSlip(
  variant: FinderVariant,
  sights: FinderSights,
  answers: FinderAnswers,
): FinderSlip[] {
  const saidArcmin = answers.offArcmin;
  const reallyArcmin = askedSizeArcmin(variant, sights);
  if (saidArcmin === null) return [];
  return sizeShare(variant, sights, answers) < 1
    ? [{ code: 'size-misjudged', saidArcmin, reallyArcmin }]
    : [];
}

/** An answer this near to a known mistake is that mistake, degrees: half an hour of the clock's face and a little. */
const sameDeg = 20;

function directionSlip(
  { starInEyepiece, parallax }: FinderSights,
  { towardsHour }: FinderAnswers,
): FinderSlip[] {
  if (starInEyepiece === null || towardsHour === null) return [];
  const saidDeg = towardsHour * 30;
  const reallyDeg = clockwiseDeg(starInEyepiece);
  if (apartDeg(saidDeg, reallyDeg) <= sameDeg) return [];
  const reallyHour = Math.round(reallyDeg / 30) % 12 || 12;
  const hours = { saidHour: towardsHour, reallyHour };
  // On the sky, before the tube has turned or mirrored it.
  if (apartDeg(saidDeg, clockwiseDeg(parallax)) <= sameDeg) {
    return [{ code: 'not-as-the-eyepiece-shows', ...hours }];
  }
  if (apartDeg(saidDeg, reallyDeg + 180) <= sameDeg) return [{ code: 'wrong-side', ...hours }];
  return [{ code: 'direction-misjudged', ...hours }];
}
