import { angleInWords, angleWordsFor } from '@/components/sky/angle-words';
import type { RunRefusal, RunStage, RunView } from '@/lib/alignment/run-state';
import type { AlignmentOutcome } from '@/lib/pointing/pointing-model';

/** Why something was not done, and what can be done instead. */
export function refusalInWords(refusal: RunRefusal, nameOf: (hip: number) => string): string {
  switch (refusal.code) {
    case 'not-now':
      return 'That is not what comes next.';
    case 'still-moving':
      return 'The mount is still driving. Wait until it stands, or stop it.';
    case 'out-of-order':
      return 'One thing after the other: that came too early.';
    case 'not-in-this-sky':
      return `${nameOf(refusal.hip)} is not in the mount’s list.`;
    case 'not-proposed':
      return `The mount has not proposed ${nameOf(refusal.hip)}. Take its star, or ask for another.`;
    case 'same-star-twice':
      return 'You have confirmed that star already. The second must be another one.';
    case 'below-the-horizon':
      return 'The mount believes that this star is below the horizon, and does not drive there.';
    case 'no-more-proposals':
      return 'The mount has no further star to propose.';
    case 'may-not-pause':
      return 'In this check the sky does not stand still.';
    case 'does-not-add-up':
      return 'What the axes read does not follow from the moves. Load the page again: what was saved is kept.';
  }
}

/** What is to be done now, as a heading. */
export const stageTitles: Readonly<Record<RunStage, string>> = {
  'start-position': 'Set the start position',
  'choose-first': 'Choose the first star',
  'centre-first': 'Centre the first star',
  'choose-second': 'Choose the second star',
  'centre-second': 'Centre the second star',
  result: 'What the two stars say',
  'check-third': 'Check on a third star',
  judged: 'Your judgement',
};

/** The steps in order, for the line that shows how far one has come. */
export const stageSteps: readonly { label: string; stages: readonly RunStage[] }[] = [
  { label: 'Start', stages: ['start-position'] },
  { label: 'First', stages: ['choose-first', 'centre-first'] },
  { label: 'Second', stages: ['choose-second', 'centre-second'] },
  { label: 'Result', stages: ['result', 'check-third'] },
  { label: 'Hand in', stages: ['judged'] },
];

/** What centring asks for, while the mount drives and once it stands. */
export const centringTask = (moving: boolean): string =>
  `${
    moving
      ? 'The mount is on its way. When it stands, find the star'
      : 'The mount has stopped where it believes the star is. Find the star'
  }: bring it to the dot by eye, then look through the finder, then into the eyepiece. Bring it to the middle and press “This is the star”.`;

/** Whether there is an alignment to judge. */
export const judgeable = (stage: RunStage): boolean =>
  stage === 'result' || stage === 'check-third' || stage === 'judged';

/** What is left to do when nothing moves any more. */
export const afterwardsInWords = (canJudge: boolean): string =>
  canJudge
    ? 'Judge what you have.'
    : 'A run can be handed in once two stars are confirmed: begin it again from the start.';

/** Why a move was not made, while nothing moves at all. */
export function standsStillInWords({
  held,
  paused,
  stage,
}: {
  held: boolean;
  paused: boolean;
  stage: RunStage;
}): string {
  if (held) return 'Here the tube moves in steps.';
  if (paused) return 'The sky stands still. Let it go on first.';
  return `Two hours under the sky are over. ${afterwardsInWords(judgeable(stage))}`;
}

/** Why the record did not take something. */
export function notTakenInWords(
  refusal: RunRefusal | 'too-many' | 'too-far',
  stage: RunStage,
  nameOf: (hip: number) => string,
): string {
  switch (refusal) {
    case 'too-many':
      return `There have been too many moves. ${afterwardsInWords(judgeable(stage))}`;
    case 'too-far':
      return 'That is more than can be asked for at once.';
    default:
      return refusalInWords(refusal, nameOf);
  }
}

/** What is asked of the learner, by whose choice the star is. */
export const choosingTask = {
  own: 'Pick a star in the sky that you know. Then tell the mount its name.',
  given: 'This star is given. The next one is your choice.',
  proposed:
    'The mount proposes a star. It knows nothing of trees, roofs and clouds: ask for another one when something is in the way.',
} as const;

export const judgingQuestion = 'Would you observe with this alignment?';

export type OutcomeWords = {
  tone: 'good' | 'caution';
  title: string;
  text: string;
};

/** What the pointing computer found, without telling whether it may be trusted. */
export function outcomeInWords(
  outcome: AlignmentOutcome,
  computer: 'fixed-zero' | 'solved-zero',
): OutcomeWords {
  switch (outcome.kind) {
    case 'agree':
      return {
        tone: 'good',
        title: `These two agree to ${Math.abs(outcome.mismatchArcmin) < 1 ? '1′ or better' : angleInWords(outcome.mismatchArcmin)}`,
        text: agreementInWords(outcome, computer),
      };
    case 'disagree':
      return {
        tone: 'caution',
        title: `These two disagree by ${angleInWords(outcome.mismatchArcmin)}`,
        text: 'The angle between the two places is not the angle between the two stars. Was one of them another star?',
      };
    case 'absurd-zero':
      return {
        tone: 'caution',
        title: 'These two do not fit together',
        text:
          outcome.altitudeZeroDeg === null
            ? 'Wherever level lay at the start, the angle between the two places is not the angle between the two stars. Was one of them another star?'
            : `They would fit if the tube had stood ${angleInWords(outcome.altitudeZeroDeg * 60)} off level at the start. Had it? Or was one of them another star?`,
      };
    case 'base-on-its-side':
      return {
        tone: 'caution',
        title: 'The base would lie on its side: are the two stars swapped?',
        text: `The angle between them is right, but the base would lean over by ${angleInWords(outcome.baseTiltDeg * 60)}.`,
      };
    case 'undetermined':
      return {
        tone: 'caution',
        title: 'These two leave it open how the mount stands',
        text: 'They lie too close together, right opposite, or in the same direction. Another pair is needed.',
      };
  }
}

function agreementInWords(
  { model, baseTiltDeg }: Extract<AlignmentOutcome, { kind: 'agree' }>,
  computer: 'fixed-zero' | 'solved-zero',
): string {
  const zeroArcmin = model.altitudeZeroDeg * 60;
  const tiltArcmin = baseTiltDeg * 60;
  if (computer === 'fixed-zero')
    return `The angle between your two stars is the one it should be. The base would stand ${angleInWords(tiltArcmin)} off level.`;
  const inWords = angleWordsFor(zeroArcmin, tiltArcmin);
  return `This mount worked out from them that its tube stood ${inWords(zeroArcmin)} off level at the start. With that left open, two stars almost always agree: only a third one can tell. The base would stand ${inWords(tiltArcmin)} off level.`;
}

/** Whole minutes under the sky. */
export const minutesInWords = (minutes: number): string =>
  minutes === 0
    ? 'less than a minute under the sky'
    : minutes === 1
      ? 'one minute under the sky'
      : `${minutes} minutes under the sky`;

/** How long a run may take where time counts. A student's own share of more time can end on a part of a minute. */
export const allowedInWords = (minutes: number): string => {
  const whole = Math.floor(minutes);
  const part = { 0.25: '¼', 0.5: '½', 0.75: '¾' }[minutes - whole] ?? '';
  return `full marks for time up to ${whole}${part} minutes`;
};

/** What the mount says when it stands again. */
export function arrivedInWords(
  { stage, targetHip }: Pick<RunView, 'stage' | 'targetHip'>,
  nameOf: (hip: number) => string,
): string {
  const centring = stage === 'centre-first' || stage === 'centre-second' || stage === 'check-third';
  return centring && targetHip !== null
    ? `The mount stands. ${nameOf(targetHip)} is what it was sent to.`
    : 'The mount stands.';
}

/**
 * What a map's margin says of the needle, and whether the pole star helps: below 10° north it is too
 * low to find. A hand cannot read a compass to half a degree.
 */
export function declinationInWords(declinationDeg: number, latitudeDeg: number): string {
  const size = Math.abs(declinationDeg);
  const poleStar =
    latitudeDeg >= 10
      ? ' The pole star shows true north itself.'
      : latitudeDeg < 0
        ? ' The pole star never rises here.'
        : '';
  if (size < 0.5)
    return `Here a compass needle points to true north, as near as one can read it.${poleStar}`;
  const side = declinationDeg > 0 ? 'east' : 'west';
  return `Here a compass needle points ${size < 1 ? 'about 1' : size.toFixed(1)}° ${side} of true north.${poleStar}`;
}

/** "right and up" */
export const approachInWords = (approach: { azimuth: 1 | -1; altitude: 1 | -1 }): string =>
  `${approach.azimuth > 0 ? 'right' : 'left'} and ${approach.altitude > 0 ? 'up' : 'down'}`;

/** Which way round a view is. The finder's window has no glass that turns anything. */
export function wayRoundInWords(
  view: 'finder' | 'eyepiece',
  kit: { name: string; orientation: 'true' | 'mirrored' | 'turned' },
): string {
  if (view === 'finder') return 'The finder shows the sky as it is';
  return `${kit.name} ${wayRound[kit.orientation]}`;
}

const wayRound = {
  true: 'shows the sky as it is',
  mirrored: 'exchanges left and right',
  turned: 'turns the picture upside down',
} as const;
