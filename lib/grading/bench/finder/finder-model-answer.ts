import { settingAfter, settingAtFirst, type SettingAction } from '../../../finder/setting';
import { turnsToMove } from '../../../finder/adjusters';
import { minus, parallaxOf, sizeArcmin, tubeMoved } from '../../../finder/sights';
import { asSeen } from '../../../optics/image-orientation';
import type { FinderVariant } from '../../../variants/bench/finder/finder-variant';
import { bestByDay, clockwiseDeg, leftOver } from './finder-criteria';
import { aimsOf, settingStartOf, type NamedAim } from './finder-replay';
import { emptyFinderDraft, type FinderAnswers, type FinderSubmission } from './finder-submission';

/** What an operator who makes no mistake hands in. */
export function finderModelAnswer(variant: FinderVariant): FinderSubmission {
  return { actions: actionsFor(variant), answers: answersFor(variant) };
}

function actionsFor(variant: FinderVariant): SettingAction[] {
  const [light] = aimsOf(variant, true);
  const careful: SettingAction[] = [
    { do: 'companion', who: 'adult' },
    { do: 'stand', where: 'building-shadow' },
  ];
  switch (variant.template) {
    case 'free-target':
    case 'near-then-predict':
      return [...careful, ...setOn(variant, dayTarget(variant), []), cap];
    case 'far-ones-by-the-sun': {
      const byDay = dayTarget(variant);
      const serves =
        sizeArcmin(parallaxOf(variant.finder, byDay.distanceM)) <=
        leftOver[0] * variant.eyepieces.high.radiusArcmin;
      return serves || light === undefined
        ? [...careful, ...setOn(variant, byDay, []), cap]
        : [wait, ...setOn(variant, light, [wait])];
    }
    case 'day-then-dusk': {
      const day = [...careful, ...setOn(variant, dayTarget(variant), []), cap, wait];
      return light === undefined
        ? day
        : [...day, unlock, ...setOn(variant, light, [...day, unlock])];
    }
    case 'set-by-another':
      return light === undefined ? [] : [unlock, ...setOn(variant, light, [unlock])];
  }
}

const cap: SettingAction = { do: 'caps', on: true };
const wait: SettingAction = { do: 'wait' };
const unlock: SettingAction = { do: 'lock', on: false };

function dayTarget(variant: FinderVariant): NamedAim {
  const given = variant.day?.targets.find(({ id }) => id === variant.givenTargetId);
  const target = given ?? bestByDay(variant);
  if (target === null) throw new Error('a task by day has something clear of the Sun');
  return target;
}

/** Turned there with the caps on, found in the wide view, centred in the narrow one, the dot brought to it. */
function setOn(
  variant: FinderVariant,
  target: NamedAim,
  before: readonly SettingAction[],
): SettingAction[] {
  const start = settingStartOf(variant);
  const so = before.reduce(
    (state, action) => settingAfter(state, action, start) ?? state,
    settingAtFirst(start),
  );
  const landing = variant.landings[target.id] ?? { rightArcmin: 0, upArcmin: 0 };
  const there = tubeMoved(target, minus({ rightArcmin: 0, upArcmin: 0 }, landing));
  const wanted = parallaxOf(variant.finder, target.distanceM);
  const [one, two] = turnsToMove(minus(wanted, so.dot), variant.adjusters);
  const { azimuthDeg, altitudeDeg } = target;
  return [
    ...(target.id === variant.givenTargetId ? [] : [{ do: 'choose' as const, target: target.id }]),
    { do: 'eyepiece', which: 'low' },
    { do: 'move', ...there },
    { do: 'caps', on: false },
    { do: 'move', azimuthDeg, altitudeDeg },
    { do: 'eyepiece', which: 'high' },
    { do: 'turn', screw: 0, toTurns: hundredths(so.turns[0] + one) },
    { do: 'turn', screw: 1, toTurns: hundredths(so.turns[1] + two) },
    { do: 'lock', on: true },
  ];
}

const hundredths = (turns: number): number => Math.round(turns * 100) / 100;

function answersFor(variant: FinderVariant): FinderAnswers {
  const { answers } = emptyFinderDraft;
  const { template, eyepieces, finder, orientation, setOnBefore } = variant;
  if (template === 'set-by-another') {
    return {
      ...answers,
      offArcmin: Math.round(sizeArcmin(variant.dotAtFirst)),
      setOnM: setOnBefore?.distanceM ?? null,
    };
  }
  if (template !== 'near-then-predict') return answers;
  const star = parallaxOf(finder, dayTarget(variant).distanceM);
  const offArcmin = sizeArcmin(star);
  const hour = Math.round(clockwiseDeg(asSeen(star, orientation)) / 30) % 12;
  return {
    offArcmin: Math.round(offArcmin),
    towardsHour: hour === 0 ? 12 : hour,
    inLow: offArcmin < eyepieces.low.radiusArcmin,
    inHigh: offArcmin < eyepieces.high.radiusArcmin,
    setOnM: null,
  };
}
