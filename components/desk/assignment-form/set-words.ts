import { counted } from '@/lib/wording/count-word';
import { attemptsInRules } from '../given-text';
import { readNumber } from '../read-number';
import type { AssignmentDraft, KitChoice, SiteChoice } from './assignment-draft';

/** What is set in each part of the form, in a few words. What was typed wrong is shown as it was typed. */

const notSet = 'not set yet';

export function placeWords(draft: AssignmentDraft): string {
  const { latitude, latitudeSide, longitude, longitudeSide } = draft;
  const name = draft.placeName.trim();
  if (name === '' && latitude === '') return notSet;
  const where =
    latitude === '' || longitude === ''
      ? 'no coordinates yet'
      : `${latitude}° ${latitudeSide}, ${longitude}° ${longitudeSide}`;
  return name === '' ? where : `${name} (${where})`;
}

export const horizonWords = (draft: AssignmentDraft, sites: readonly SiteChoice[]): string =>
  sites.find(({ id }) => id === draft.siteId)?.name ??
  (draft.horizon.points.length === 0
    ? 'level'
    : `own skyline, ${counted(draft.horizon.points.length, 'point', 'points')}`);

export const kitWords = (draft: AssignmentDraft, kits: readonly KitChoice[]): string =>
  `${kits.find(({ id }) => id === draft.kitId)?.name ?? 'own numbers'}, eyepiece ${draft.eyepiece.focalLengthMm} mm`;

export const skyWords = (draft: AssignmentDraft): string =>
  `stars to magnitude ${draft.sky.darkestLimitMagnitude}, alignment stars from ${draft.settings.lowestAltitudeDeg}° to ${draft.settings.highestAltitudeDeg}° up`;

export function attemptsWords({ attemptsAllowed, counting }: AssignmentDraft): string {
  const typed = attemptsAllowed.trim();
  const count = typed === '' ? null : readNumber(typed);
  return typeof count === 'string'
    ? `${typed} attempts, the ${counting} counts`
    : attemptsInRules(count, counting);
}

export function lateWords(draft: AssignmentDraft): string {
  const { dueDate, dueTime, graceMinutes, latePercentPerDay, latePercentCap } = draft;
  if (dueDate === '' && dueTime === '') return 'nothing is late without a due time';
  return `${graceMinutes} minutes of grace, ${lateCutWords(latePercentPerDay, latePercentCap)}`;
}

/** Percentages as they were typed. */
function lateCutWords(perDay: string, cap: string): string {
  return readNumber(perDay) === 0
    ? 'then nothing taken off'
    : `then ${perDay} % off a day, at most ${cap} %`;
}

export const bookWords = ({ weight, needsSignOff }: AssignmentDraft): string =>
  `${readNumber(weight) === 0 ? 'does not count in the mean' : `weight ${weight}`}, ${needsSignOff ? 'sign-off at the telescope needed' : 'no sign-off needed'}`;

const feedbacks = {
  'at-once': 'at once',
  'after-due': 'after the due time',
  'when-released': 'when you release it',
} as const;
export const feedbackWords = ({ feedback }: AssignmentDraft): string => feedbacks[feedback];
