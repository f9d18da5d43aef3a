import { afterAll } from '../../../balance/handle-tube';
import { tubeInClamp } from '../../../balance/tube-in-clamp';
import {
  formInstantMs,
  formProblem,
  latitudeDegOf,
  longitudeDegOf,
} from '../../../clock/mount-form';
import type { MountForm } from '../../../clock/mount-form';
import { startOf, tiltOfHead } from '../../../levelling/tripod';
import { act, replay } from '../../../levelling/tripod-actions';
import type { HandedOn } from '../../../rehearsal/handed-on';
import { clockAndPlaceSlip, type ClockAndPlace } from '../../../rehearsal/slips';
import type { ClockAndPlaceVariant } from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import type { DressRehearsalVariant } from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import type { LevelVariant } from '../../../variants/bench/level/level-variant';
import type { ClockAndPlaceDraft } from '../clock-and-place/clock-and-place-submission';
import { formAsItStands, fullForm } from '../clock-and-place/clock-and-place-work';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';
import { replayOf } from '../finder/finder-replay';
import type { LevelDraft } from '../level/level-submission';
import { powerHandedOn } from './rehearsal-power';

/** What all benches have left behind, as they stand now; one that was never touched is as it was found. */
export function handedOnBy(
  { benches }: DressRehearsalVariant,
  work: Pick<DressRehearsalSubmission, 'benches' | 'clutchesLocked'>,
): HandedOn {
  const { balance } = benches;
  const tube = afterAll(balance, work.benches.balance.actions);
  const finder = replayOf(benches.finder, work.benches.finder.actions);
  const built = [...benches['put-it-together'].done, ...work.benches['put-it-together'].order];
  const head = headAsLeft(benches.level, work.benches.level);
  return {
    tripod: {
      legsSpread: built.includes('spread-legs') && built.includes('lock-spreader'),
      legLocksFirm: built.includes('lock-legs') && head.legs.every(({ open }) => !open),
    },
    tilt: tiltOfHead(benches.level.site, head),
    tube: {
      clamped: tubeInClamp(balance, tube),
      holdingTorqueNm: balance.holdingTorqueNm,
    },
    dot: finder?.state.dot ?? benches.finder.dotAtFirst,
    power: powerHandedOn(benches.power, work.benches.power),
    clockAndPlace: enteredBeside(benches['clock-and-place'], work.benches['clock-and-place']),
    clutchesLocked: work.clutchesLocked,
  };
}

/** The tripod in the end, the tube on it in any case: without it there is nothing to align. */
function headAsLeft({ site }: LevelVariant, { actions }: LevelDraft) {
  const last = replay(site, actions)?.at(-1) ?? startOf(site);
  const loaded = last.tubeOn ? null : act(site, last, { do: 'tube-on' });
  return loaded?.ok === true ? loaded.state : last;
}

function enteredBeside(
  variant: ClockAndPlaceVariant,
  draft: ClockAndPlaceDraft,
): HandedOn['clockAndPlace'] {
  const form = fullForm(formAsItStands(variant, draft));
  if (form === null || formProblem(form) !== null) return null;
  const believed = inNumbers(form, variant);
  const actual = inNumbers(variant.right, variant);
  return believed && actual && clockAndPlaceSlip(believed, actual);
}

function inNumbers(
  form: MountForm,
  { summerTimeMinutes }: ClockAndPlaceVariant,
): ClockAndPlace | null {
  const instantMs = formInstantMs(form, summerTimeMinutes);
  return instantMs === null
    ? null
    : { instantMs, latitudeDeg: latitudeDegOf(form), longitudeDeg: longitudeDegOf(form) };
}
